using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>A current-voltage curve as text: two charts over the same volts, the input's limits on them, and the points that matter.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class CurveScreen(TextWriter writer, TerminalStyle style)
{
    private const char Taken = 'O';
    private const char Hill = '^';
    private const char Curve = '█';
    private const char Under = '░';
    private const char LimitAcross = '─';
    private const char LimitUpright = '│';
    private const int Rows = 13;

    /// <summary>Writes the charts and the points.</summary>
    public void Write(CurveResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        if (VerdictSentence.Warning(result) is { } warning)
        {
            PlanScreen.WriteVerdict(writer, result.Verdict, warning, style);
            writer.WriteLine();
        }

        string wiring = DesignsTable.Text(result.Assignment.Wiring);
        TextFlow.Write(writer, "", $"{result.Input.Name}: {wiring}, {MeterTable.At(result.Assignment.Conditions)}.", style.Width, style.Strong);
        double maxV = CurveChart.RoundAbove(result.VoltageV[^1]);
        writer.WriteLine();
        writer.WriteLine("Amps over volts");
        WriteChart(result, maxV, result.CurrentA, "A", point => point.CurrentA, result.Assignment.Operating.CurrentA, result.Input.DrawLimitA);
        writer.WriteLine();
        writer.WriteLine("Watts over volts");
        WriteChart(result, maxV, result.PowerW, "W", point => point.PowerW, result.Assignment.Operating.PowerW, result.Input.MaxPower?.Figure);
        writer.WriteLine();
        WriteKey(result, maxV);
        writer.WriteLine();
        WritePoints(result);
    }

    /// <summary>Writes one line: the most power and what the input takes of it, or what is against connecting it.</summary>
    public void WriteShort(CurveResult result)
    {
        if (VerdictSentence.Warning(result) is { } warning)
        {
            PlanScreen.WriteVerdict(writer, result.Verdict, warning, style);
        }

        if (result.Verdict == Level.Stop)
        {
            return;
        }

        CurvePoint top = result.MaximumPower;
        writer.WriteLine(
            $"Most power {Figures.Of(top.PowerW, "W")} at {Figures.Of(top.VoltageV, "V")}; {result.Input.Name} takes {Figures.Of(result.Assignment.Operating.PowerW, "W")}.");
    }

    private void WriteChart(
        CurveResult result,
        double maxV,
        IReadOnlyList<double> values,
        string unit,
        Func<CurvePoint, double> height,
        double taken,
        double? limit)
    {
        CurveChart chart = new(style.Width - 12, Rows, maxV, CurveChart.RoundAbove(values.Max()));
        chart.Line(result.VoltageV, values, Curve, Under);
        if (limit is { } level)
        {
            chart.Level(level, LimitAcross);
        }

        foreach (double volts in Window(result.Input))
        {
            chart.Upright(volts, LimitUpright);
        }

        foreach (CurvePoint hill in result.LocalMaxima)
        {
            chart.Mark(hill.VoltageV, height(hill), Hill);
        }

        if (IsTaken(result))
        {
            chart.Mark(result.Assignment.Operating.VoltageV, taken, Taken);
        }

        chart.Write(writer, unit);
    }

    private static bool IsTaken(CurveResult result) => result.Verdict != Level.Stop && result.Assignment.Operating.PowerW > 0;

    private void WriteKey(CurveResult result, double maxV)
    {
        DcInput input = result.Input;
        List<string> key = IsTaken(result) ? [$"{Taken} what the input takes"] : [];
        key.Add($"{Hill} a hill of power");
        if (input.DrawLimitA is not null || input.MaxPower is not null)
        {
            key.Add($"{LimitAcross} across, its limit in amps or watts");
        }

        double[] window = [.. Window(input)];
        if (Array.Exists(window, volts => volts <= maxV))
        {
            key.Add($"{LimitUpright} upright, the ends of its voltage window");
        }

        TextFlow.Write(writer, "  ", string.Join("; ", key) + ".", style.Width);
        TextFlow.Write(writer, "  ", $"Voltage limit of the input: {Figures.Stated(input.MaxVoltageV, "V")}.", style.Width);
    }

    private void WritePoints(CurveResult result)
    {
        OperatingPoint taken = result.Assignment.Operating;
        TextTable table = new(false, true, true, true, false);
        table.Add(["", "volts", "amps", "watts", ""]);
        table.Add(["short circuit", Figures.Of(0, "V"), Figures.Of(result.CurrentA[0], "A"), Figures.Of(0, "W"), ""]);
        foreach (CurvePoint hill in result.LocalMaxima)
        {
            table.Add(Row(hill == result.MaximumPower ? "most power" : "lower hill", hill.VoltageV, hill.CurrentA, hill.PowerW, ""));
        }

        table.Add(result.Verdict == Level.Stop
            ? ["taken", "–", "–", "–", "do not connect it"]
            : Row("taken", taken.VoltageV, taken.CurrentA, taken.PowerW, MeterTable.HeldInShort(result.Assignment)));
        table.Add(["open circuit", Figures.Of(result.VoltageV[^1], "V"), Figures.Of(0, "A"), Figures.Of(0, "W"), ""]);
        table.Write(writer, 2, style.Width, wrapped: 4);
    }

    private static string[] Row(string what, double volts, double amps, double watts, string remark) =>
        [what, Figures.Of(volts, "V"), Figures.Of(amps, "A"), Figures.Of(watts, "W"), remark];

    private static IEnumerable<double> Window(DcInput input)
    {
        if (input.TrackingMinV is { } low)
        {
            yield return low;
        }

        yield return input.TrackingMaxV ?? input.MaxVoltageV;
    }
}

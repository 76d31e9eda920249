using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>What a meter will show at one input: before connecting, and once connected.</summary>
public static class MeterTable
{
    /// <summary>Share of the power that a simple tracker may miss before it is worth a line.</summary>
    private const double WorthSaying = 0.005;

    /// <summary>Writes the table of one connected input.</summary>
    public static void Write(TextWriter writer, Assignment assignment, TerminalStyle style)
    {
        TextTable table = new(false, true, false);
        foreach ((string what, string figure, string remark) in Rows(assignment))
        {
            table.Add([what, figure, remark]);
        }

        table.Write(writer, 2, style.Width, wrapped: 2);
        OperatingPoint point = assignment.Operating;
        if (assignment.Verdict != Level.Stop && point.FirstHillPowerW < point.PowerW * (1 - WorthSaying))
        {
            string hill = $"This array has more than one hill of power. A simple tracker that stops at the first one takes {Figures.Of(point.FirstHillPowerW, "W")}.";
            TextFlow.Write(writer, "  ", hill, style.Width);
        }
    }

    /// <summary>What the meter shows, a line a figure: what is measured, the figure, a remark. What belongs to the line above is indented.</summary>
    public static IEnumerable<(string What, string Figure, string Remark)> Rows(Assignment assignment)
    {
        OperatingPoint point = assignment.Operating;
        yield return ("Before connecting, open leads", Figures.Of(assignment.VocStcV, "V"), "in full sun, cells at 25 °C");
        yield return ("  at the coldest", $"{Figures.Number(assignment.VocColdV, 2)} V", "what the voltage limit is held against");
        if (assignment.VocWeather is { } weather)
        {
            yield return (weather.IsOfFile ? "  highest in the weather file" : "  highest in a usual year", $"{Figures.Number(weather.VoltageV, 2)} V", $"{weather.Ends:MM-dd HH:mm}, {Figures.Of(weather.Conditions.IrradianceWPerM2, "W/m²")}, cells at {Figures.Of(weather.Conditions.CellC, "°C")}, by the circuit model");
        }

        yield return ("  leads shorted", Figures.Of(assignment.IscStcA, "A"), $"and {Figures.Of(assignment.IscDesignA, "A")} in the strongest sun");
        if (assignment.Verdict == Level.Stop)
        {
            yield return ("Once connected", "–", "do not connect it");
        }
        else if (point.LimitedBy is LimitedBy.Off or LimitedBy.AboveWindow)
        {
            yield return ("Once connected", Figures.Of(0, "A"), HeldBy(point.LimitedBy));
        }
        else
        {
            yield return ("Once connected, volts", Figures.Of(point.VoltageV, "V"), At(assignment.Conditions));
            yield return ("  amps", Figures.Of(point.CurrentA, "A"), HeldBy(assignment));
            yield return ("  watts", Figures.Of(point.PowerW, "W"), Missed(assignment));
        }
    }

    /// <summary>What holds the input where it is, in words: by itself, and together with the other inputs of its unit.</summary>
    public static string HeldBy(Assignment assignment) => assignment.HeldByUnit is { } held
        ? $"by itself, {HeldBy(assignment.Operating.LimitedBy)}; but {held.Unit} takes at most {Figures.Of(held.MaxW, "W")} of the {Figures.Of(held.OfferedW, "W")} at its inputs, so amps and watts will read less"
        : HeldBy(assignment.Operating.LimitedBy);

    /// <summary>The same in a few words, for the curve of one input.</summary>
    public static string HeldInShort(Assignment assignment) => assignment.HeldByUnit is { } held
        ? $"with the other inputs {held.Unit} holds it back"
        : HeldBy(assignment.Operating.LimitedBy);

    /// <summary>What holds the input where it is, in words.</summary>
    public static string HeldBy(LimitedBy limit) => limit switch
    {
        LimitedBy.None => "nothing holds it back",
        LimitedBy.Current => "held by the input's current limit",
        LimitedBy.Power => "held by the input's power limit",
        LimitedBy.Voltage => "held at the end of the input's voltage window",
        LimitedBy.AboveWindow => "not known: its limit would hold it above its window; counted as nothing",
        _ => "the input does not start",
    };

    /// <summary>Conditions in words.</summary>
    public static string At(Conditions sun) => $"at {Figures.Of(sun.IrradianceWPerM2, "W/m²")}, cells at {Figures.Of(sun.CellC, "°C")}";

    private static string Missed(Assignment assignment)
    {
        OperatingPoint point = assignment.Operating;
        string alone = assignment.HeldByUnit is null ? "" : "by itself, ";
        return point.UnlimitedPowerW - point.PowerW > 0.5
            ? $"{alone}of the {Figures.Of(point.UnlimitedPowerW, "W")} the panels could give"
            : $"{alone}all that the panels can give";
    }
}

using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;
using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>What the chart of a curve says in words.</summary>
internal static class CurveWords
{
    /// <summary>Whether the input takes anything that may be marked.</summary>
    public static bool IsTaken(CurveResult result) => result.Verdict != Level.Stop && result.Assignment.Operating.PowerW > 0;

    /// <summary>Whether the input takes the power of this hill, so that one mark serves both.</summary>
    public static bool IsTakenAt(CurveResult result, CurvePoint hill) =>
        IsTaken(result) && IsSame(result, hill, result.Assignment.Operating.VoltageV);

    /// <summary>All of it.</summary>
    /// <param name="result">The curve.</param>
    /// <param name="isDrawn">Which of the input's limits the chart shows; the others are named below it.</param>
    public static ChartWords Of(CurveResult result, (bool Volts, bool Amps, bool Watts) isDrawn)
    {
        string wiring = $"{result.Input.Name}: {DesignsTable.Text(result.Assignment.Wiring)}";
        string sun = MeterTable.At(result.Assignment.Conditions);
        string? warning = VerdictSentence.Warning(result);
        return new ChartWords
        {
            Title = $"{result.Plan.Name}: amps and watts over volts",
            Description = $"{wiring}, {sun}. {Points(result)} {Taken(result)} Limits of the input: {string.Join(", ", Limits(result.Input, default))}, {Window(result.Input)}.{(warning is null ? "" : " " + warning)}",
            Heading = result.Plan.Name,
            Warning = warning,
            Details = [wiring, $"{char.ToUpperInvariant(sun[0])}{sun[1..]}."],
            Keys = [.. Keys(result, isDrawn)],
        };
    }

    private static IEnumerable<ChartKey> Keys(CurveResult result, (bool Volts, bool Amps, bool Watts) isDrawn)
    {
        yield return IsTaken(result)
            ? ChartKey.Mark($"what the input takes; {MeterTable.HeldInShort(result.Assignment)}", MarkerType.Circle, 5, ChartColors.Ink)
            : ChartKey.Nothing(Taken(result));
        if (result.LocalMaxima.Any(hill => !IsTakenAt(result, hill)))
        {
            yield return ChartKey.Mark("a hill of power", MarkerType.Triangle, 5, ChartColors.Card);
        }

        yield return ChartKey.Mark($"open leads at the coldest, {Figures.Of(result.Assignment.VocColdV, "V")}", MarkerType.Diamond, 5, ChartColors.Card);
        if (isDrawn.Volts)
        {
            yield return ChartKey.Edge($"voltage limit {Figures.Stated(result.Input.MaxVoltageV, "V")}");
        }

        if (result.Input.TrackingMinV is not null || result.Input.TrackingMaxV is not null)
        {
            yield return ChartKey.Line(Window(result.Input), ChartColors.Ink, 1.5, LineStyle.LongDash);
        }

        if (isDrawn.Amps)
        {
            yield return ChartKey.Line("current limit: level in amps, sloping in watts", ChartColors.Ink, 1.5, LineStyle.Dash);
        }

        if (isDrawn.Watts)
        {
            yield return ChartKey.Line("power limit: level in watts, bent in amps", ChartColors.Ink, 1.5, LineStyle.Dot);
        }

        foreach (string limit in Limits(result.Input, isDrawn))
        {
            yield return ChartKey.Nothing($"{limit}, far outside this picture");
        }
    }

    private static string Points(CurveResult result)
    {
        CurvePoint top = result.MaximumPower;
        IEnumerable<string> others = result.LocalMaxima.Where(hill => !IsSame(result, hill, top.VoltageV)).Select(hill => $"{Figures.Of(hill.PowerW, "W")} at {Figures.Of(hill.VoltageV, "V")}");
        string lower = string.Join(", ", others);
        return $"Short circuit {Figures.Of(result.CurrentA[0], "A")}, open circuit {Figures.Of(result.VoltageV[^1], "V")}, at the coldest {Figures.Of(result.Assignment.VocColdV, "V")}. "
            + $"Most power {Figures.Of(top.PowerW, "W")} at {Figures.Of(top.VoltageV, "V")}{(lower.Length > 0 ? $"; lower hills {lower}" : "")}.";
    }

    private static string Taken(CurveResult result)
    {
        OperatingPoint taken = result.Assignment.Operating;
        return IsTaken(result) ? $"The input takes {Figures.Of(taken.PowerW, "W")} at {Figures.Of(taken.VoltageV, "V")} and {Figures.Of(taken.CurrentA, "A")}; {MeterTable.HeldInShort(result.Assignment)}."
            : result.Verdict == Level.Stop ? "Nothing is taken: do not connect it."
            : "Nothing is taken: the input does not start.";
    }

    /// <summary>The limits that are stated, less those of some kinds.</summary>
    private static IEnumerable<string> Limits(DcInput input, (bool Volts, bool Amps, bool Watts) without)
    {
        if (!without.Volts)
        {
            yield return $"voltage limit {Figures.Stated(input.MaxVoltageV, "V")}";
        }

        if (!without.Amps && input.DrawLimitA is { } amps)
        {
            yield return $"current limit {Figures.Stated(amps, "A")}";
        }

        if (!without.Watts && input.MaxPower?.Figure is { } watts)
        {
            yield return $"power limit {Figures.Stated(watts, "W")}";
        }

    }

    private static bool IsSame(CurveResult result, CurvePoint hill, double voltageV) => Math.Abs(hill.VoltageV - voltageV) < 0.002 * result.VoltageV[^1];

    private static string Window(DcInput input) =>
        $"voltage window {Figures.Stated(input.TrackingMinV ?? 0, "V")} to {Figures.Stated(input.TrackingMaxV ?? input.MaxVoltageV, "V")}";
}

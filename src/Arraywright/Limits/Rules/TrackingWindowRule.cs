using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>Voltage at maximum power when hot, dim and cold, against the window the tracker works in. Outside, it works off the peak and loses watts.</summary>
internal sealed class TrackingWindowRule : IRule
{
    public RuleCard Card { get; } = new(
        "tracking_window",
        "Voltage at maximum power when hot, when dim and when cold against the tracking window; asks when a limit would hold the array above it, stops only when the input takes nothing in any of them",
        "practice; IEC 61853-1 for the dim point; the input's stated window",
        Level.Stop);

    /// <summary>Maximum power at one extreme, and its room to one end of the window.</summary>
    private sealed record Extreme(string When, Conditions Conditions, double VoltageV, double LimitV, double MarginPercent);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        if (context.Input is { TrackingMinV: null, TrackingMaxV: null })
        {
            yield break;
        }

        Extreme[] extremes =
        [
            .. Rooms(context, "hot", context.Temperatures.HotBright),
            .. Rooms(context, "dim", CellExtremes.Dim),
            .. Rooms(context, "cold", context.Temperatures.ColdBright),
        ];
        Extreme worst = extremes.MinBy(extreme => extreme.MarginPercent)!;
        OperatingPoint[] points = [.. extremes.Select(extreme => extreme.Conditions).Distinct().Select(context.Physics.Operating)];
        bool isAbove = points.Any(point => point.LimitedBy == LimitedBy.AboveWindow);
        bool nothing = !isAbove && points.All(point => !(point.PowerW > 0));
        yield return new Finding(
            Card.Name,
            "Voltage at maximum power against the tracking window",
            nothing ? Level.Stop : isAbove ? Level.Ask : Level.Go,
            worst.VoltageV,
            worst.LimitV,
            "V",
            $"{string.Join(", ", extremes.Select(e => $"{e.When} {Figures.Result(e.VoltageV, e.LimitV, "V")}").Distinct())}; window {Window(context)}",
            "circuit model; the input's stated window",
            nothing ? "It takes nothing when hot, dim or cold: the array's voltage does not fit this input."
            : isAbove ? $"To hold its current or power limit the input would let the array rise above {Figures.Label(context.Input.TrackingMaxV ?? context.Input.MaxVoltageV, "V")}. Whether it works on there is not stated: nothing is counted of it."
            : worst.MarginPercent < 0 ? Outside(context, worst)
            : AboveWindowAtRest(context))
        {
            MarginPercent = worst.MarginPercent,
        };
    }

    private static IEnumerable<Extreme> Rooms(RuleContext context, string when, Conditions conditions)
    {
        double voltageV = context.Physics.MaximumPowerPoint(context.Wiring, conditions).VoltageV;
        if (context.Input.TrackingMinV is > 0 and { } minV)
        {
            yield return new Extreme(when, conditions, voltageV, minV, (voltageV - minV) / minV * 100);
        }

        double maxV = context.Input.TrackingMaxV ?? context.Input.MaxVoltageV;
        yield return new Extreme(when, conditions, voltageV, maxV, (maxV - voltageV) / maxV * 100);
    }

    private static string Outside(RuleContext context, Extreme worst)
    {
        OperatingPoint point = context.Physics.Operating(worst.Conditions);
        string side = worst.VoltageV < worst.LimitV ? "below" : "above";
        return $"When {worst.When}, the best voltage lies {side} the window: {Figures.Result(point.UnlimitedPowerW - point.PowerW, "W")} of {Figures.Result(point.UnlimitedPowerW, "W")} are lost then.";
    }

    /// <summary>A cold open circuit above the window is no harm as long as it is under the hard limit, which another rule judges.</summary>
    private static string? AboveWindowAtRest(RuleContext context) =>
        context.Input.TrackingMaxV is { } maxV && ColdVoltage.Of(context) is var coldV && Figures.Over(coldV, maxV) && !Figures.Over(coldV, context.Input.MaxVoltageV)
            ? $"Cold and unloaded it rests at {Figures.Result(coldV, maxV, "V")}, above the window but within the highest voltage: no harm."
            : null;

    private static string Window(RuleContext context) =>
        $"{Figures.Plain(context.Input.TrackingMinV ?? 0)} to {Figures.Label(context.Input.TrackingMaxV ?? context.Input.MaxVoltageV, "V")}";
}

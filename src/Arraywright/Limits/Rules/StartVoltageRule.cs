namespace Arraywright.Limits.Rules;

/// <summary>Open-circuit voltage when hot, bright and dim, against the voltage the input needs to start. Too little is no danger: it earns nothing.</summary>
internal sealed class StartVoltageRule : IRule
{
    public RuleCard Card { get; } = new(
        "start_voltage",
        "Open-circuit voltage of the lowest string when hot and dim against the input's start voltage; stops only when even the highest never starts it at standard conditions",
        "practice; the input's stated start voltage",
        Level.Stop);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        if (context.Input.StartVoltageV is not { } startV)
        {
            yield break;
        }

        double standardV = LabelSums.OpenCircuitV(context.Wiring, context.Stock);
        double hotV = LowestV(context, context.Temperatures.HotBright);
        double hotDimV = LowestV(context, context.Temperatures.HotDim);
        bool never = Figures.Under(standardV, startV);
        yield return new Finding(
            Card.Name,
            "Open-circuit voltage when hot and dim against the start voltage",
            never ? Level.Stop : Level.Go,
            hotDimV,
            startV,
            "V",
            $"{Describe(context.Temperatures.HotDim)}: {Figures.Result(hotDimV, startV, "V")}; {Describe(context.Temperatures.HotBright)}: {Figures.Result(hotV, startV, "V")}",
            "circuit model; the input's stated start voltage",
            never ? $"It will not start: {Figures.Result(standardV, startV, "V")} even at standard conditions. Put more panels in series."
            : Figures.Under(hotV, startV) ? "On a hot day it does not start, even in full sun. More panels in series would."
            : Figures.Under(hotDimV, startV) ? "On a hot day it starts late and stops early: dim light does not reach the start voltage."
            : null)
        {
            MarginPercent = startV > 0 ? (hotDimV - startV) / startV * 100 : null,
        };
    }

    /// <summary>The lowest string: higher ones beside it only help.</summary>
    private static double LowestV(RuleContext context, Conditions conditions) =>
        context.Wiring.LowestV(name => context.Physics.OpenCircuitV(name, conditions));

    private static string Describe(Conditions conditions) =>
        $"{Figures.Label(conditions.IrradianceWPerM2, "W/m²")}, cell {Figures.Celsius(conditions.CellC)}";
}

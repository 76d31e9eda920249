using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What strings may be and what may stand beside them: the rules' own limits, ahead of any whole wiring.</summary>
public static class StringAllowance
{
    /// <summary>Most label short-circuit amps that the strings beside a string may offer together.</summary>
    /// <param name="alone">The string by itself on the input.</param>
    /// <param name="worst">The worst that the rules may say: <see cref="Level.Go"/> or <see cref="Level.Ask"/>.</param>
    /// <returns>A; infinite where nothing is held, negative where it may not be connected at all.</returns>
    public static double BesideA(RuleContext alone, Level worst) =>
        SystemVoltageRule.LevelOf(alone.Wiring, alone) > worst ? double.NegativeInfinity : BackFeedRule.MostBesideA(alone, worst);

    /// <summary>The most that <see cref="BesideA(RuleContext, Level)"/> gives for any string that holds a panel, A.</summary>
    public static double BesideA(Panel panel, Level worst) => BackFeedRule.MostBesideA(panel, worst);

    /// <summary>Cold volts that no string with a panel may pass, V; infinite where nothing is held.</summary>
    public static double SystemV(Panel panel, Level worst) => SystemVoltageRule.MostV(panel, worst);
}

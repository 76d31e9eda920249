using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What may be connected beside one string: the rules' own limits, ahead of any whole wiring.</summary>
public static class StringAllowance
{
    /// <summary>Most label short-circuit amps that the strings beside a string may offer together.</summary>
    /// <param name="alone">The string by itself on the input.</param>
    /// <param name="worst">The worst that the rules may say: <see cref="Level.Go"/> or <see cref="Level.Ask"/>.</param>
    /// <returns>A; infinite where nothing is held, negative where it may not be connected at all.</returns>
    public static double BesideA(RuleContext alone, Level worst) =>
        worst == Level.Go && SystemVoltageRule.Asks(alone.Wiring, alone) ? double.NegativeInfinity : BackFeedRule.MostBesideA(alone, worst);
}

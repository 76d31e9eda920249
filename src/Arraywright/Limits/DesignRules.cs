using System.Collections.Immutable;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>Every rule a wiring on an input is judged by, in the order their findings are shown.</summary>
public static class DesignRules
{
    internal static ImmutableArray<IRule> All { get; } =
    [
        new ColdVoltageRule(),
        new SystemVoltageRule(),
        new ShortCircuitCurrentRule(),
        new StrongSunCurrentRule(),
        new DrawLimitRule(),
        new PowerLimitRule(),
        new StartVoltageRule(),
        new TrackingWindowRule(),
        new BackFeedRule(),
        new UnequalStringsRule(),
        new UnequalSeriesRule(),
    ];

    /// <summary>What every rule says of a wiring on an input, in rule order. What belongs to a whole unit is judged by <see cref="UnitRules"/>.</summary>
    public static ImmutableArray<Finding> Judge(RuleContext context) => [.. All.SelectMany(rule => rule.Judge(context))];
}

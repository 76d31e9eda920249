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
        new StatedPartsRule(),
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

    /// <summary>The fuse that each string must have, A; null for a string that needs none, or for which none is made.</summary>
    public static ImmutableArray<double?> StringFusesA(RuleContext context)
    {
        var fusesA = new double?[context.Wiring.Strings.Length];
        foreach (StringFuse fuse in new FuseNeeds(context).Fuses)
        {
            fusesA[fuse.String] = fuse.SizeA;
        }

        return [.. fusesA];
    }

    /// <summary>The worst that the rules say, looked for no further than past <paramref name="enough"/>; rules that could not say worse are not run.</summary>
    public static Level Worst(RuleContext context, Level enough)
    {
        Level worst = Level.Go;
        foreach (IRule rule in All)
        {
            if (rule.Card.Worst <= enough)
            {
                continue;
            }

            foreach (Finding finding in rule.Judge(context))
            {
                worst = finding.Level > worst ? finding.Level : worst;
            }

            if (worst > enough)
            {
                break;
            }
        }

        return worst;
    }
}

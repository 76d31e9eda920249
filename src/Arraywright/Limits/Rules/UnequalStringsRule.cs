using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>Unequal strings side by side share one voltage: how far apart they are, and what it costs.</summary>
internal sealed class UnequalStringsRule : IRule
{
    /// <summary>Strings this close together in voltage lose next to nothing; common practice, no standard behind it.</summary>
    private const double CloseEnoughPercent = 5;

    public RuleCard Card { get; } = new(
        "unequal_strings",
        "How far apart the voltages of strings side by side are, against 5 %, and the watts it costs at standard conditions; notes a string that would be fed backwards",
        "circuit model; 5 % is common practice, no standard behind it",
        Level.Go);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        ImmutableArray<Wiring> strings = context.Wiring.Strings;
        if (strings.Length < 2)
        {
            yield break;
        }

        (double VoltageV, double CurrentA, double PowerW)[] own = [.. strings.Select(part => context.Physics.MaximumPowerPoint(part, Conditions.Standard))];
        double highestV = own.Max(point => point.VoltageV);
        double lowestV = own.Min(point => point.VoltageV);
        double apartPercent = highestV > 0 ? (highestV - lowestV) / highestV * 100 : 0;
        double apartW = own.Sum(point => point.PowerW);
        double togetherW = context.Physics.MaximumPowerPoint(context.Wiring, Conditions.Standard).PowerW;
        if (apartPercent < 0.05 && apartW - togetherW < 0.5)
        {
            yield break;
        }

        yield return new Finding(
            Card.Name,
            "How far apart the strings' best voltages are",
            Level.Go,
            apartPercent,
            null,
            "%",
            $"({Figures.Result(highestV, "V")} - {Figures.Result(lowestV, "V")}) / {Figures.Result(highestV, "V")} = {Figures.Result(apartPercent, CloseEnoughPercent, "%")}; up to {CloseEnoughPercent} % costs next to nothing",
            Card.Source,
            $"Apart the strings would give {Figures.Result(apartW, "W")}, together {Figures.Result(togetherW, "W")}: {Figures.Result(Math.Max(0, apartW - togetherW), "W")} is the cost. {FedBackwards(context, strings)}".TrimEnd());
    }

    /// <summary>A string whose open circuit lies below another's best voltage takes current instead of giving it.</summary>
    private static string? FedBackwards(RuleContext context, ImmutableArray<Wiring> strings)
    {
        foreach ((string when, Conditions conditions) in new[] { ("At standard conditions", Conditions.Standard), ("When hot", context.Temperatures.HotBright), ("When cold", context.Temperatures.ColdBright) })
        {
            double[] bestV = [.. strings.Select(part => context.Physics.MaximumPowerPoint(part, conditions).VoltageV)];
            double[] restV = [.. strings.Select(part => part.LowestV(name => context.Physics.OpenCircuitV(name, conditions)))];
            int weak = Array.IndexOf(restV, restV.Min());
            int strong = Array.IndexOf(bestV, bestV.Max());
            if (restV[weak] < bestV[strong])
            {
                return $"{when} string {weak + 1} rests at {Figures.Result(restV[weak], "V")}, below string {strong + 1}'s best {Figures.Result(bestV[strong], "V")}: there it would be fed backwards.";
            }
        }

        return null;
    }
}

using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>Unequal panels in series share one current: how far apart they are, and what it costs.</summary>
internal sealed class UnequalSeriesRule : IRule
{
    /// <summary>Panels this close together in current lose next to nothing; common practice, no standard behind it.</summary>
    private const double CloseEnoughPercent = 5;

    public RuleCard Card { get; } = new(
        "unequal_series",
        "How far apart the currents of panels in series are, against 5 %, and the watts it costs at standard conditions",
        "circuit model; 5 % is common practice, no standard behind it",
        Level.Go);

    /// <summary>One series of the tree: its parts' best currents, and what joining them costs.</summary>
    private sealed record Joined(double HighestA, double LowestA, double ApartW, double TogetherW)
    {
        public double ApartPercent => HighestA > 0 ? (HighestA - LowestA) / HighestA * 100 : 0;

        public double CostW => Math.Max(0, ApartW - TogetherW);
    }

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        Joined[] uneven = [.. SeriesOf(context.Wiring).Select(series => Join(context, series)).Where(joined => joined.ApartPercent >= 0.05 || joined.CostW >= 0.5)];
        if (uneven.MaxBy(joined => joined.CostW) is not { } worst)
        {
            yield break;
        }

        yield return new Finding(
            Card.Name,
            "How far apart the best currents of panels in series are",
            Level.Go,
            worst.ApartPercent,
            null,
            "%",
            $"({Figures.Result(worst.HighestA, "A")} - {Figures.Result(worst.LowestA, "A")}) / {Figures.Result(worst.HighestA, "A")} = {Figures.Result(worst.ApartPercent, CloseEnoughPercent, "%")}; up to {CloseEnoughPercent} % costs next to nothing",
            Card.Source,
            $"Each alone they would give {Figures.Result(uneven.Sum(joined => joined.ApartW), "W")}, in series {Figures.Result(uneven.Sum(joined => joined.TogetherW), "W")}: {Figures.Result(uneven.Sum(joined => joined.CostW), "W")} is the cost.");
    }

    private static Joined Join(RuleContext context, Wiring.Series series)
    {
        (double VoltageV, double CurrentA, double PowerW)[] own = [.. series.Parts.Select(part => context.Physics.MaximumPowerPoint(part, Conditions.Standard))];
        return new Joined(
            own.Max(point => point.CurrentA),
            own.Min(point => point.CurrentA),
            own.Sum(point => point.PowerW),
            context.Physics.MaximumPowerPoint(series, Conditions.Standard).PowerW);
    }

    private static IEnumerable<Wiring.Series> SeriesOf(Wiring wiring) => wiring switch
    {
        Wiring.Series series => [series, .. series.Parts.SelectMany(SeriesOf)],
        Wiring.Parallel parallel => parallel.Parts.SelectMany(SeriesOf),
        _ => [],
    };
}

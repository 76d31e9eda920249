namespace Arraywright.Limits.Rules;

/// <summary>The same current in strong sun, shown beside the verdict: under a cloud's edge the sun passes 1000 W/m².</summary>
internal sealed class StrongSunCurrentRule : IRule
{
    /// <summary>NEC 690.8(A)(1); IEC 60364-7-712 asks the same at least.</summary>
    public const double Factor = 1.25;

    public RuleCard Card { get; } = new(
        "strong_sun_current",
        "The same current times 1.25, beside what the array may offer; noted, not judged, since ratings speak of standard conditions",
        "NFPA 70 (NEC) 690.8(A)(1); IEC 60364-7-712",
        Level.Go);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        double standardA = LabelSums.ShortCircuitA(context.Wiring, context.Stock);
        double strongA = Factor * standardA;
        double? allowedA = OfferedCurrent.To(context.Input)?.Limit.Allowed;
        bool passes = allowedA is not null && Figures.Over(strongA, allowedA.Value);
        yield return new Finding(
            Card.Name,
            "Short-circuit current in strong sun",
            Level.Go,
            strongA,
            allowedA,
            "A",
            $"1.25 × {Figures.Result(standardA, "A")} = {(allowedA is null ? Figures.Result(strongA, "A") : Figures.Result(strongA, allowedA.Value, "A"))}",
            Card.Source,
            passes ? "Strong sun can pass the figure for a while. Ratings are meant at standard conditions unless the maker says otherwise." : null);
    }
}

using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>The array's current at maximum power against what the input draws at most: above, it clips.</summary>
internal sealed class DrawLimitRule : IRule
{
    public RuleCard Card { get; } = new(
        "draw_limit",
        "Current at maximum power (labels or circuit, the larger) against what the input draws at most; clipping when manual or maker say so or the array may offer it, else asked",
        "practice: an input takes what it can of what is offered; the evidence stated for the input",
        Level.Ask);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        double labelA = LabelSums.MaximumPowerA(context.Wiring, context.Stock);
        double circuitA = context.Physics.MaximumPowerPoint(context.Wiring, Conditions.Standard).CurrentA;
        double currentA = Math.Max(labelA, circuitA);
        Limit? limit = context.Input.MaxCurrent ?? context.Input.RatedCurrent;
        string working = $"labels {Figures.Result(labelA, "A")}, circuit {Figures.Result(circuitA, "A")}";
        Finding finding = new(
            Card.Name,
            "Current at maximum power against what the input draws at most",
            Level.Go,
            currentA,
            limit?.Figure,
            "A",
            limit is null ? $"{working}; no drawn current is stated" : $"{working}; limit {OfferedCurrent.Written(limit, "A")}",
            limit is null ? "panel labels and circuit" : $"panel labels and circuit; limit: {OfferedCurrent.Word(limit)}");
        yield return limit is null || !Figures.Over(currentA, limit.Figure) ? finding
            : Cleared(context, limit, currentA) ? finding with { Note = "Clipping, not danger. " + Clipping.Cut(context.Physics.Operating(Conditions.Standard)) }
            : finding with { Level = Level.Ask, Note = Unclear(limit) };
    }

    private static bool Cleared(RuleContext context, Limit limit, double currentA)
    {
        if (limit.Evidence.ExceedFraction > 0)
        {
            return Clipping.Clears(limit, currentA);
        }

        // A printed current of unknown meaning is no word about what is drawn, whoever prints it.
        bool meantAsDrawn = context.Input.MaxCurrent is not null && Clipping.Clears(limit, currentA);
        bool mayBeOffered = context.Input.MaxShortCircuitCurrent is { Evidence.Kind: >= EvidenceKind.Label } offered
            && !Figures.Over(LabelSums.ShortCircuitA(context.Wiring, context.Stock), offered.Allowed);
        return meantAsDrawn || mayBeOffered;
    }

    private static string Unclear(Limit limit) => limit.Evidence.ExceedFraction > 0
        ? "Beyond what the evidence allows above the figure: ask again, with this figure."
        : "Whether the input holds its own current down when more is offered is not known: ask the maker.";
}

using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>The panels' label watts against what the input takes at most: above, it clips.</summary>
internal sealed class PowerLimitRule : IRule
{
    public RuleCard Card { get; } = new(
        "power_limit",
        "Sum of label watts against what the input takes at most; clipping when manual or maker say so, or within what evidence allows above it, else asked",
        "practice: an input takes what it can of what is offered; the evidence stated for the input",
        Level.Ask);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        double powerW = LabelSums.PowerW(context.Wiring, context.Stock);
        string sum = WiringSums.Sum(context.Wiring.Panels.Select(name => Figures.Label(context.Panel(name).PowerW.Value, "W")));
        Finding finding = Against(Card.Name, "Label watts against what the input takes at most", context.Input.MaxPower, powerW, sum);
        yield return finding switch
        {
            { Limit: null } => finding with
            {
                Level = IsUnknown(context) ? Level.Ask : Level.Go,
                Note = IsUnknown(context) ? "Neither current nor power of this input is known: ask the maker." : null,
            },
            { Level: Level.Go, Note: not null } => finding with { Note = $"{finding.Note} {Clipping.Cut(context.Physics.Operating(Conditions.Standard))}" },
            _ => finding,
        };
    }

    /// <summary>Label watts against a power limit, of an input or of a whole unit.</summary>
    public static Finding Against(string rule, string title, Limit? limit, double powerW, string sum)
    {
        Finding finding = new(
            rule,
            title,
            Level.Go,
            powerW,
            limit?.Figure,
            "W",
            limit is null ? $"{WiringSums.Worked(sum, Figures.Result(powerW, "W"))}; no power is stated" : $"{WiringSums.Worked(sum, Figures.Result(powerW, limit.Figure, "W"))}; limit {OfferedCurrent.Written(limit, "W")}",
            limit is null ? "panel labels" : $"panel labels; limit: {OfferedCurrent.Word(limit)}");
        return limit is null || !Figures.Over(powerW, limit.Figure) ? finding
            : Clipping.Clears(limit, powerW) ? finding with { Note = "Clipping, not danger." }
            : finding with
            {
                Level = Level.Ask,
                Note = limit.Evidence.ExceedFraction > 0
                    ? "Beyond what the evidence allows above the figure: ask again, with this figure."
                    : "Whether more label watts may be connected is not known; a word about current does not settle power: ask the maker.",
            };
    }

    private static bool IsUnknown(RuleContext context) =>
        context.Unit?.MaxPower is null && OfferedCurrent.To(context.Input) is null;
}

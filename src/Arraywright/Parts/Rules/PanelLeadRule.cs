using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>More current through a panel's own leads and their connectors than the panel itself gives: from strings beside it, or from stronger panels in its row.</summary>
internal sealed class PanelLeadRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "panel_lead",
        "Design current through a panel's leads and their connectors, where others send more through them than their own panel, against the rating stated for connectors; where none is, against what such leads usually bear, and more is asked about; stated, it stops where the labels' currents alone are over it",
        "IEC 61730 for the largest series fuse on the label; usual ratings are common practice",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece is not { Kind: PieceKind.PanelLead, Panel: { } name, LabelA: { } labelA })
        {
            yield break;
        }

        LeadRating rating = LeadRating.Of(context.Setting.Physics.Stock[name].Panel, context.Input.ConnectorA, context.Setting.Place);
        bool over = Figures.Over(piece.DesignA, rating.BearsA);
        if (!over && !Figures.Over(piece.DesignA, rating.OwnA))
        {
            // Its own panel's current: the maker chose lead and connector for it.
            yield break;
        }

        Level level = !over ? Level.Go : rating.IsStated && Figures.Over(labelA, rating.BearsA) ? Level.Stop : Level.Ask;
        yield return new Finding(
            Card.Name,
            $"Current through the leads of {name} and their connectors, against {(rating.IsStated ? "the rating stated" : "what such leads usually bear")}",
            level,
            piece.DesignA,
            rating.BearsA,
            "A",
            piece.Working,
            rating.IsStated ? "rating stated in the plan" : "common practice",
            level switch
            {
                Level.Go => null,
                Level.Stop => $"They would overheat: by the labels alone it is {Figures.Result(labelA, rating.BearsA, "A")}. Fewer panels side by side.",
                _ when rating.IsStated => $"By the labels alone it is {Figures.Result(labelA, rating.BearsA, "A")}; only the margin for strong sun is over. Ask the connectors' maker whether they bear it.",
                _ => $"Not every lead bears this. Read the rating on the connectors and the size along the leads, or ask the panel's maker, and write the lowest as \"connector\" at this input. Usual: {UsualRatings.Connectors}.",
            });
    }
}

using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>The current through connectors and branch connectors against what they bear.</summary>
internal sealed class ConnectorRatingRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "connector_rating",
        "Design current of branch connectors and of the run's connectors against the rating stated; where none is, against the usual 30 A, and more is asked about",
        "IEC 62852 for the kind; usual ratings are common practice",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece is not ({ Kind: PieceKind.BranchConnector or PieceKind.StringConductor } or { Kind: PieceKind.Run, Pole: Pole.Plus }))
        {
            yield break;
        }

        double? statedA = context.Input.ConnectorA;
        double bearsA = statedA ?? UsualRatings.ConnectorA;
        bool over = Figures.Over(piece.DesignA, bearsA);
        string what = piece.Kind == PieceKind.BranchConnector ? $"branch connector, {PieceWords.IntoOne(piece.Ways)}" : $"connectors of the {PieceWords.Name(piece.Kind)}";
        yield return new Finding(
            Card.Name,
            $"Current through the {what}, against {(statedA is null ? "the usual rating" : "its rating")}",
            !over ? Level.Go : statedA is null ? Level.Ask : Level.Stop,
            piece.DesignA,
            bearsA,
            "A",
            $"{Figures.Result(piece.DesignA, bearsA, "A")}, {(statedA is null ? "usual rating" : "rated")} {Figures.Label(bearsA, "A")}",
            statedA is null ? "common practice" : "rating stated in the plan",
            over
                ? $"{(statedA is null ? "Not every connector bears this: buy one that says so." : "It would overheat: the weakest piece counts.")} Usual: {UsualRatings.Connectors}."
                : null);
    }
}

using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>The current through the unit's socket and the adapter into it, often the weakest piece of all.</summary>
internal sealed class SocketRatingRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "socket_rating",
        "Design current against the rating of the unit's socket and of the adapter into it; where none is stated it is asked about, unless even the weakest usual plug bears it",
        "rating printed on the part; usual ratings are common practice",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece.Kind != PieceKind.Adapter)
        {
            yield break;
        }

        double? statedA = context.Input.SocketA;
        bool over = Figures.Over(piece.DesignA, statedA ?? UsualRatings.WeakestSocketA);
        yield return new Finding(
            Card.Name,
            "Current through the unit's socket and its adapter",
            !over ? Level.Go : statedA is null ? Level.Ask : Level.Stop,
            piece.DesignA,
            statedA,
            "A",
            statedA is { } ratedA ? $"{piece.Working}, rated {Figures.Label(ratedA, "A")}" : $"{piece.Working}, no rating stated",
            statedA is null ? "common practice" : "rating stated in the plan",
            (over, statedA) switch
            {
                (false, null) => $"Even the weakest usual plug, {Figures.Label(UsualRatings.WeakestSocketA, "A")}, bears it.",
                (true, null) => $"Read the rating on socket and adapter, and write it as \"socket\" at this input. Usual: {UsualRatings.Sockets}.",
                (true, _) => $"Too weak: it would overheat. Usual: {UsualRatings.Sockets}.",
                _ => null,
            });
    }
}

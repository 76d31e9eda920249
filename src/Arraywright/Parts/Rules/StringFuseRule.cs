using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>Whether a standard fuse fits the window of a string that needs one.</summary>
internal sealed class StringFuseRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "string_fuse",
        "Where the other strings can drive more into a panel than its largest series fuse: a standard rating within the window for that string; none that fits stops",
        "NFPA 70 (NEC) 690.9, 240.6(A); IEC 62548, IEC 60269-6",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece.Kind != PieceKind.StringFuse)
        {
            yield break;
        }

        yield return new Finding(
            Card.Name,
            "Least rating of the string fuse against the standard size chosen",
            piece.RatingA is null ? Level.Stop : Level.Go,
            piece.NeededA,
            piece.RatingA,
            "A",
            piece.Working,
            piece.Source,
            piece.RatingA is { } fuseA
                ? $"Compulsory. {Figures.Label(fuseA, "A")} gPV in a holder that cannot be opened under load, {Figures.Label(piece.RatingV, "V")} DC."
                : "A fuse is needed and no standard size fits: fewer strings side by side.");
    }
}

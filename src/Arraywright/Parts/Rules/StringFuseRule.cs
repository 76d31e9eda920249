using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>Whether a standard fuse fits the window of a string that needs one.</summary>
internal sealed class StringFuseRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "string_fuse",
        "Where the other strings can drive more into a panel than its largest series fuse: a standard rating within the window for that string; none that fits stops. By the rules us also against the largest fuse that thin cable may have",
        "NFPA 70 (NEC) 690.9, 240.6(A), 240.4(D); IEC 62548, IEC 60269-6",
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

        Cable cable = context.Setting.Plan.Cable;
        double mostA = SmallConductor.MostFuseA(cable.StringAreaMm2.Value, context.Setting.Place.Rules);
        if (piece.RatingA is not { } sizeA || cable.StringLengthM.Value <= 0 || double.IsInfinity(mostA))
        {
            yield break;
        }

        ConductorSize size = ConductorSize.Of(cable.StringAreaMm2.Value);
        bool over = Figures.Over(sizeA, mostA);
        yield return new Finding(
            Card.Name,
            $"String fuse against the largest that {size.Name} may have before it",
            over ? Level.Stop : Level.Go,
            sizeA,
            mostA,
            "A",
            $"fuse {Figures.Label(sizeA, "A")}, {size.Name} at most {Figures.Label(mostA, "A")}",
            SmallConductor.Source,
            over ? "The string's cable is too thin for its fuse: take thicker cable for it." : null);
    }
}

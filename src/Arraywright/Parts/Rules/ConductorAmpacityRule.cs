using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>The current a conductor must carry against what its copper carries as it lies.</summary>
internal sealed class ConductorAmpacityRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "conductor_ampacity",
        "1.25 × short-circuit current (and what other strings may drive back) against what the cable carries as it lies: heat, bundling, terminals; a size that no table has is asked about",
        "NFPA 70 (NEC) 690.8(B), 110.14(C), Tables 310.16, 310.17, 310.15(B)(1); EN 50618 Table A.3, IEC 60364-5-52",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece is not { Size: { } size, Kind: not PieceKind.PanelLead, RatingA: { } carriesA })
        {
            yield break;
        }

        bool over = Figures.Over(piece.DesignA, carriesA);
        bool unknown = carriesA <= 0;
        yield return new Finding(
            Card.Name,
            $"Current in the {PieceWords.Name(piece.Kind)} against what {size.Name} carries as it lies",
            unknown ? Level.Ask : over ? Level.Stop : Level.Go,
            piece.DesignA,
            unknown ? null : carriesA,
            "A",
            piece.Working,
            piece.Source,
            unknown ? $"The tables have no figure for {size.Name} in {Figures.Celsius(context.Setting.Place.AmbientC)}: ask who knows, or take a usual size."
            : over ? Thicker(piece, context)
            : null);
    }

    private static string Thicker(Piece piece, PartContext context)
    {
        ConductorChoice choice = ConductorSizing.Choose(new ConductorDuty(piece.DesignA, 0, 0, 0, 0), context.Setting.Place, context.Setting.MaxDropFraction);
        return choice.IsEnough
            ? $"Too thin: the cable would run too hot. Take {choice.Size.BothNames}."
            : "Too thin, and no usual size is enough: lay it cooler or apart from others, or connect less.";
    }
}

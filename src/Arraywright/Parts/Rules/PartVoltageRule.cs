using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>The cold voltage against what parts for direct current are made for.</summary>
internal sealed class PartVoltageRule : IPartRule
{
    private const double MostV = 1500;

    public RuleCard Card { get; } = new(
        "part_voltage",
        "Cold open-circuit voltage against 1500 V, the most that solar connectors, fuses and switches are made for; each part must be rated for the cold voltage in direct current",
        "IEC 62852, IEC 60269-6",
        Level.Stop);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece.Kind == PieceKind.Switch)
        {
            yield return new Finding(
                Card.Name,
                "Cold voltage against what parts for direct current are made for",
                Figures.Over(piece.VoltageV, MostV) ? Level.Stop : Level.Go,
                piece.VoltageV,
                MostV,
                "V",
                $"{Figures.Result(piece.VoltageV, MostV, "V")}; parts of the {Figures.Label(piece.RatingV, "V")} DC class",
                Card.Source,
                Figures.Over(piece.VoltageV, MostV) ? "No usual part bears this." : null);
        }
    }
}

using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>What copper and connectors take of the volts, against what is aimed at: energy, not danger.</summary>
internal sealed class VoltageDropRule : IPartRule
{
    public RuleCard Card { get; } = new(
        "voltage_drop",
        "Volts lost from the panels to the unit in strong sun against what is aimed at, 3 % unless the plan says; noted, not judged",
        "advice of NEC 210.19 (3 % of a branch) and common practice for low voltage, 2 to 3 %; drop of the circuit itself",
        Level.Go);

    public IEnumerable<Finding> Judge(Piece piece, PartContext context)
    {
        if (piece is not { Kind: PieceKind.Run, Pole: Pole.Plus })
        {
            yield break;
        }

        double aimPercent = context.Setting.MaxDropFraction * 100;
        bool over = Figures.Over(context.DropPercent, aimPercent);
        yield return new Finding(
            Card.Name,
            "Volts lost from the panels to the unit",
            Level.Go,
            context.DropPercent,
            aimPercent,
            "%",
            $"copper at {Figures.Celsius(Gear.Cable.ConductorC)} and every connector, all pieces of the string that loses most",
            Card.Source,
            over ? "It costs energy, it is no danger. See what thicker cable would bring." : null);
    }
}

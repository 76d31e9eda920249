using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts.Rules;

/// <summary>What a rule looks at beside the piece itself.</summary>
/// <param name="Setting">The plan and how its cable lies.</param>
/// <param name="Input">The input that the piece leads to.</param>
/// <param name="DropPercent">From the panels to the unit, all pieces together, % of the volts.</param>
internal sealed record PartContext(PartsSetting Setting, DcInput Input, double DropPercent);

/// <summary>One rule on a piece: no state, one question.</summary>
internal interface IPartRule
{
    /// <summary>Its line in the list of rules.</summary>
    public RuleCard Card { get; }

    /// <summary>What it says of a piece; nothing where it does not apply.</summary>
    public IEnumerable<Finding> Judge(Piece piece, PartContext context);
}

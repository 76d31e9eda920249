using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Parts.Rules;

namespace Arraywright.Parts;

/// <summary>Every rule a piece is judged by, in the order their findings are shown.</summary>
internal static class PartRules
{
    public static ImmutableArray<IPartRule> All { get; } =
    [
        new ConductorAmpacityRule(),
        new PanelLeadRule(),
        new StringFuseRule(),
        new ConnectorRatingRule(),
        new SocketRatingRule(),
        new PartVoltageRule(),
        new VoltageDropRule(),
    ];

    /// <summary>What every rule says of a piece.</summary>
    public static ImmutableArray<Finding> Judge(Piece piece, PartContext context) => [.. All.SelectMany(rule => rule.Judge(piece, context))];
}

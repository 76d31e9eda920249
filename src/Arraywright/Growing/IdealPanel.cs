using System.Collections.Immutable;
using Arraywright.Limits;

namespace Arraywright.Growing;

/// <summary>Label figures with which so many equal panels would bring an input all that it may get without asking (98 % of it counts).</summary>
public sealed record IdealLabel
{
    /// <summary>Panels in a string.</summary>
    public required int InString { get; init; }

    /// <summary>Strings side by side.</summary>
    public required int Strings { get; init; }

    /// <summary>Least open-circuit voltage of one panel, V: what starts the input on a hot dim day.</summary>
    public required double LeastOpenCircuitV { get; init; }

    /// <summary>Most open-circuit voltage of one panel, V: what the input's highest voltage allows at the coldest.</summary>
    public required double MostOpenCircuitV { get; init; }

    /// <summary>Least voltage at maximum power of one panel, V: inside the tracking window also hot and dim, and so high that the most watts come before the most amps.</summary>
    public required double LeastMaximumPowerV { get; init; }

    /// <summary>Most voltage at maximum power of one panel, V: inside the tracking window also in the cold, and no more than goes with <see cref="MostOpenCircuitV"/>.</summary>
    public required double MostMaximumPowerV { get; init; }

    /// <summary>Most short-circuit current of one panel, A; null where the plan states no current, so that any array must be asked about.</summary>
    public required double? MostShortCircuitA { get; init; }

    /// <summary>Label watts of one panel that bring as much in strong sun on a mild day; null where the plan states nothing to fill.</summary>
    public required double? LeastPowerW { get; init; }

    /// <summary>Most label watts of one panel that need no asking; null for no end.</summary>
    public required double? MostPowerW { get; init; }

    /// <summary>Whether a label can be so; else its volts cannot stay inside the window both hot and cold and yet bring the watts.</summary>
    public bool IsPossible => LeastMaximumPowerV <= MostMaximumPowerV;
}

/// <summary>How well one kind fits an input, by itself.</summary>
public sealed record KindFit
{
    /// <summary>The kind.</summary>
    public required string Panel { get; init; }

    /// <summary>Panels in a string of the array that fills the input best without asking; 0 where not even one panel may be connected.</summary>
    public required int InString { get; init; }

    /// <summary>Strings of that array.</summary>
    public required int Strings { get; init; }

    /// <summary>Watts that array puts into the input in strong sun on a mild day.</summary>
    public required double TakenW { get; init; }

    /// <summary>The same as a share of what the input takes at most, 0 to 1; null where the plan states nothing to fill.</summary>
    public required double? UsedShare { get; init; }

    /// <summary>What keeps one more panel out of a string, and one more string out of the array: the first rule against each.</summary>
    public required ImmutableArray<KindObstacle> Obstacles { get; init; }
}

/// <summary>Why an array cannot be larger.</summary>
/// <param name="InString">Panels in a string of the larger array.</param>
/// <param name="Strings">Its strings.</param>
/// <param name="Finding">What is against it.</param>
public sealed record KindObstacle(int InString, int Strings, Finding Finding);

/// <summary>The other way round: what a panel's label would have to say to fill an input, and which kind comes nearest.</summary>
public sealed record IdealPanel
{
    /// <summary>Name of the input.</summary>
    public required string Input { get; init; }

    /// <summary>What the input takes at most, W: as stated, else by its amps at the highest volts; null where the plan states neither.</summary>
    public required double? FullW { get; init; }

    /// <summary>What the best label brings into it without asking, W; null where the plan states nothing that ends it.</summary>
    public required double? ReachW { get; init; }

    /// <summary>Why that is less than what it takes, as the rest of a sentence; null where it is not.</summary>
    public required string? HeldBy { get; init; }

    /// <summary>One entry for each number in a string and of strings.</summary>
    public required ImmutableArray<IdealLabel> Labels { get; init; }

    /// <summary>The kinds at hand and the candidates, the one that fills it best first.</summary>
    public required ImmutableArray<KindFit> Kinds { get; init; }
}

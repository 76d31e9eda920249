namespace Arraywright.Energy;

/// <summary>How an energy run is done.</summary>
public sealed record EnergyOptions
{
    /// <summary>Conversion efficiency taken where an input states none (direct-current converters 90 to 98 %, small portable units at the lower end: common practice).</summary>
    public const double UsualEfficiency = 0.94;

    /// <summary>The ordinary run.</summary>
    public static EnergyOptions Default { get; } = new();

    /// <summary>Whether the minutes within a step are spread about its mean: see <see cref="WithinStep"/>. Default true.</summary>
    public bool SpreadWithinStep { get; init; } = true;

    /// <summary>Length of a step, h, that the weather's steps are cut into; null for the weather's own. Weather in shorter steps stays as it is.</summary>
    public double? StepH { get; init; }

    /// <summary>Whether every step is kept. Default false.</summary>
    public bool KeepMoments { get; init; }
}

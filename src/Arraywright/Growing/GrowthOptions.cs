using Arraywright.Energy;

namespace Arraywright.Growing;

/// <summary>How far growing is looked into.</summary>
public sealed record GrowthOptions
{
    /// <summary>More panels looked at where nothing is asked for.</summary>
    public const int UsualMost = 12;

    /// <summary>The ordinary question.</summary>
    public static GrowthOptions Default { get; } = new();

    /// <summary>Name of the one kind to add, at hand or a candidate; null for every candidate and every kind at hand that has a price, or, where there are neither, every kind at hand.</summary>
    public string? Of { get; init; }

    /// <summary>How many more to look at, at least 1; null to stop by itself: once a whole string more brings nothing worth it, or at <see cref="UsualMost"/>.</summary>
    public int? Most { get; init; }

    /// <summary>A panel is worth it while it adds at least this share of what the first of its kind adds, 0 to 1.</summary>
    public double WorthShare { get; init; } = 0.25;

    /// <summary>How the years are run.</summary>
    public EnergyOptions Energy { get; init; } = EnergyOptions.Default;
}

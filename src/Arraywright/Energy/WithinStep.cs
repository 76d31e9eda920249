namespace Arraywright.Energy;

/// <summary>The minutes within an hour: part under a clear sun, part under cloud.</summary>
/// <remarks>
/// The distribution of momentary sunshine has two peaks, a clear one and a clouded one (Suehrcke and McCormick, Solar Energy 40 (1988) 413; from memory).
/// Yet not every grey hour is cloud and sun by turns: many are evenly thin cloud. So of the time that would be bright if cloud always let through the same
/// share, only part is taken as bright, and the rest of the hour evenly at what then keeps the mean. That part is from two measured series, half of each to
/// find it and half to test it: see docs/models-year.md.
/// </remarks>
internal static class WithinStep
{
    /// <summary>Sun averaged over so many hours or less shows its bright and clouded spells by itself.</summary>
    public const double ShortestH = 5 / 60.0;

    /// <summary>An hour at this share of the clear sun or below has no bright minutes.</summary>
    private const double CloudedShare = 0.3;

    /// <summary>An hour at this share of the clear sun or above counts as clear throughout.</summary>
    private const double ClearShare = 0.97;

    /// <summary>Bright time as a share of what it would be if all cloud let through <see cref="CloudedShare"/>.</summary>
    private const double BrokenShare = 0.6;

    /// <summary>The bright and the clouded part of a step: the share of time that is bright and both brightnesses as factors on the mean; null when the step is of one kind.</summary>
    /// <param name="meanWPerM2">Mean of the step.</param>
    /// <param name="clearWPerM2">What a clear sky would give.</param>
    public static (double BrightShare, double Bright, double Clouded)? Of(double meanWPerM2, double clearWPerM2)
    {
        double share = meanWPerM2 / clearWPerM2;
        if (!(share > CloudedShare && share < ClearShare))
        {
            return null;
        }

        double brightShare = BrokenShare * (share - CloudedShare) / (1 - CloudedShare);
        return (brightShare, 1 / share, (share - brightShare) / ((1 - brightShare) * share));
    }
}

/// <summary>A step as a whole, or a part of its time.</summary>
internal enum StepPart
{
    /// <summary>All of it, at its mean.</summary>
    Whole,

    /// <summary>Its clouded part.</summary>
    Clouded,

    /// <summary>Its bright part.</summary>
    Bright,
}

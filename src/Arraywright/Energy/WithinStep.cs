namespace Arraywright.Energy;

/// <summary>The minutes within an hour: bright or clouded, seldom between.</summary>
/// <remarks>
/// The distribution of momentary sunshine has two peaks, a clear one and a clouded one (Suehrcke and McCormick, Solar Energy 40 (1988) 413; from memory).
/// An hour that is neither clear nor dull is taken as part clear, part clouded, with its mean kept. What a limit cuts off the bright part is then seen,
/// which the hour's mean hides.
/// </remarks>
internal static class WithinStep
{
    /// <summary>Sun averaged over so many hours or less shows its bright and clouded spells by itself.</summary>
    public const double ShortestH = 5 / 60.0;

    /// <summary>Sun through cloud as a share of clear sun.</summary>
    private const double CloudedShare = 0.3;

    /// <summary>An hour at this share of the clear sun or above counts as clear throughout.</summary>
    private const double ClearShare = 0.97;

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

        double brightShare = (share - CloudedShare) / (1 - CloudedShare);
        return (brightShare, 1 / share, CloudedShare / share);
    }
}

namespace Arraywright.Limits.Rules;

/// <summary>The fuse of one string: a standard size within the window of IEC 62548.</summary>
internal static class StringFuse
{
    /// <summary>Usual ratings of 10 × 38 mm gPV links (IEC 60269-6), A; common practice.</summary>
    private static ReadOnlySpan<double> SizesA => [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32];

    /// <summary>The smallest standard size above 1.5·Isc and below 2.4·Isc, not above <paramref name="highestA"/>.</summary>
    /// <param name="shortCircuitA">Isc of the string, A.</param>
    /// <param name="highestA">What the panels bear, A; infinite where no label says.</param>
    /// <returns>Null when none fits.</returns>
    public static double? For(double shortCircuitA, double highestA)
    {
        foreach (double sizeA in SizesA)
        {
            if (sizeA > 1.5 * shortCircuitA)
            {
                return sizeA < 2.4 * shortCircuitA && !Figures.Over(sizeA, highestA) ? sizeA : null;
            }
        }

        return null;
    }
}

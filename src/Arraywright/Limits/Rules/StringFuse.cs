namespace Arraywright.Limits.Rules;

/// <summary>The fuse of one string: the window its rating must lie in, and the standard size that does.</summary>
/// <param name="String">The string, from 0.</param>
/// <param name="LowA">The rating is over this (IEC) or no less (NEC), A.</param>
/// <param name="HighA">The rating is under this (IEC) or no more, A; infinite where nothing holds it.</param>
/// <param name="NextA">The smallest standard size that strong sun does not blow, A; <paramref name="LowA"/> itself where the list of sizes ends below it.</param>
/// <param name="SizeA">The smallest standard size in the window, A; null when none fits.</param>
/// <param name="Working">The window as a person would write it.</param>
internal sealed record StringFuse(int String, double LowA, double HighA, double NextA, double? SizeA, string Working)
{
    /// <summary>NEC 690.8(A)(1) and 690.9(B): 1.25 for strong sun times 1.25 for a current that lasts.</summary>
    public const double UsLow = 1.5625;

    /// <summary>IEC 62548: not so small that strong sun blows it.</summary>
    public const double IecLow = 1.5;

    /// <summary>IEC 62548: not so large that it protects nothing.</summary>
    public const double IecHigh = 2.4;

    /// <summary>Usual ratings of 10 × 38 mm gPV links (IEC 60269-6), A; common practice.</summary>
    private static ReadOnlySpan<double> IecSizesA => [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32];

    /// <summary>Standard ratings of NEC 240.6(A), those for fuses included, as far as string fuses go, A.</summary>
    private static ReadOnlySpan<double> UsSizesA => [1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60];

    /// <summary>The fuse for a string.</summary>
    /// <param name="index">The string, from 0.</param>
    /// <param name="rules">After whose rules.</param>
    /// <param name="shortCircuitA">Isc of the string, A.</param>
    /// <param name="bornA">What its panels bear, A; infinite where no label says.</param>
    public static StringFuse For(int index, RuleSet rules, double shortCircuitA, double bornA)
    {
        bool us = rules == RuleSet.Us;
        double lowA = (us ? UsLow : IecLow) * shortCircuitA;
        double ceilingA = us ? double.PositiveInfinity : IecHigh * shortCircuitA;
        ReadOnlySpan<double> sizesA = us ? UsSizesA : IecSizesA;
        double? nextA = null;
        foreach (double sizeA in sizesA)
        {
            if (us ? !Figures.Under(sizeA, lowA) : sizeA > lowA)
            {
                nextA = sizeA;
                break;
            }
        }

        double highA = Math.Min(Math.Min(ceilingA, bornA), nextA is null ? sizesA[^1] : double.PositiveInfinity);
        bool isFit = nextA is { } sizedA && sizedA < ceilingA && !Figures.Over(sizedA, bornA);
        string isc = Figures.Label(shortCircuitA, "A");
        string born = double.IsFinite(bornA) ? $", no more than the {Figures.Result(bornA, "A")} its panels bear" : "";
        string next = isFit ? "" : nextA is { } missedA ? $"; the smallest standard size over {Figures.Result(lowA, "A")} is {Figures.Label(missedA, "A")}" : $"; the largest standard size is {Figures.Label(sizesA[^1], "A")}";
        string window = us
            ? $"1.25 × 1.25 × {isc} = {Figures.Result(lowA, "A")} at least{born}{next}"
            : $"over 1.5 × {isc} = {Figures.Result(lowA, "A")}, under 2.4 × {isc} = {Figures.Result(ceilingA, "A")}{born}{next}";
        return new StringFuse(index, lowA, highA, nextA ?? lowA, isFit ? nextA : null, window);
    }
}

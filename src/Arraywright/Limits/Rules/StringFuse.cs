namespace Arraywright.Limits.Rules;

/// <summary>The fuse of one string: the window its rating must lie in, and the standard size that does.</summary>
/// <param name="String">The string, from 0.</param>
/// <param name="Rules">After whose rules.</param>
/// <param name="ShortCircuitA">Isc of the string, A.</param>
/// <param name="BornA">What its panels bear, A; infinite where no label says.</param>
internal sealed record StringFuse(int String, RuleSet Rules, double ShortCircuitA, double BornA)
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

    /// <summary>The rating is over this (IEC) or no less (NEC), A.</summary>
    public double LowA => (Rules == RuleSet.Us ? UsLow : IecLow) * ShortCircuitA;

    /// <summary>The rating is under this (IEC) or no more, A; infinite where nothing holds it.</summary>
    public double HighA => Math.Min(Math.Min(CeilingA, BornA), StandardA is null ? SizesA[^1] : double.PositiveInfinity);

    /// <summary>The smallest standard size that strong sun does not blow, A; <see cref="LowA"/> itself where the list of sizes ends below it.</summary>
    public double NextA => StandardA ?? LowA;

    /// <summary>The smallest standard size in the window, A; null when none fits.</summary>
    public double? SizeA => StandardA is { } standardA && standardA < CeilingA && !Figures.Over(standardA, BornA) ? standardA : null;

    /// <summary>The window as a person would write it.</summary>
    public string Working
    {
        get
        {
            string isc = Figures.Label(ShortCircuitA, "A");
            string low = Figures.Result(LowA, "A");
            string born = double.IsFinite(BornA) ? $", no more than the {Figures.Result(BornA, "A")} its panels bear" : "";
            string next = SizeA is not null ? ""
                : StandardA is { } missedA ? $"; the smallest standard size over {low} is {Figures.Label(missedA, "A")}"
                : $"; the largest standard size is {Figures.Label(SizesA[^1], "A")}";
            return Rules == RuleSet.Us
                ? $"1.25 × 1.25 × {isc} = {low} at least{born}{next}"
                : $"over 1.5 × {isc} = {low}, under 2.4 × {isc} = {Figures.Result(CeilingA, "A")}{born}{next}";
        }
    }

    private double CeilingA => Rules == RuleSet.Us ? double.PositiveInfinity : IecHigh * ShortCircuitA;

    private ReadOnlySpan<double> SizesA => Rules == RuleSet.Us ? UsSizesA : IecSizesA;

    /// <summary>The smallest standard size that strong sun does not blow, A; null where the list of sizes ends below it.</summary>
    private double? StandardA
    {
        get
        {
            foreach (double sizeA in SizesA)
            {
                if (Rules == RuleSet.Us ? !Figures.Under(sizeA, LowA) : sizeA > LowA)
                {
                    return sizeA;
                }
            }

            return null;
        }
    }
}

namespace Arraywright.Limits.Conductors;

/// <summary>What heat around a conductor and other conductors beside it take off its ampacity.</summary>
internal static class Correction
{
    /// <summary>Factors of NEC Table 310.15(B)(1), 30 °C, one row every 5 K from "10 or less" on; NaN where there is none.</summary>
    private static ReadOnlySpan<double> Us(double insulationC) => insulationC switch
    {
        60 => [1.29, 1.22, 1.15, 1.08, 1.00, 0.91, 0.82, 0.71, 0.58, 0.41],
        75 => [1.20, 1.15, 1.11, 1.05, 1.00, 0.94, 0.88, 0.82, 0.75, 0.67, 0.58, 0.47, 0.33],
        _ => [1.15, 1.12, 1.08, 1.04, 1.00, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71, 0.65, 0.58, 0.50, 0.41, 0.29],
    };

    /// <summary>NEC Table 310.15(B)(1): the factor of the band that holds the ambient, a fraction of a degree counting as the hotter whole one; 0 above the table.</summary>
    /// <param name="insulationC">60, 75 or 90 °C.</param>
    /// <param name="ambientC">Ambient, °C.</param>
    public static double UsAmbient(double insulationC, double ambientC)
    {
        ReadOnlySpan<double> factors = Us(insulationC);
        double row = Math.Max(0, Math.Ceiling((Math.Ceiling(ambientC) - 10) / 5));
        return row < factors.Length ? factors[(int)row] : 0;
    }

    /// <summary>NEC 310.15(C)(1): more than three current-carrying conductors together.</summary>
    public static double UsBundle(int loaded) => loaded switch
    {
        <= 3 => 1.00,
        <= 6 => 0.80,
        <= 9 => 0.70,
        <= 20 => 0.50,
        <= 30 => 0.45,
        <= 40 => 0.40,
        _ => 0.35,
    };

    /// <summary>Conductor at its limit, ambient above the reference: √((limit − ambient)/(limit − reference)), the thermal rule behind the tables; no gain below the reference.</summary>
    /// <remarks>For solar cable (EN 50618, 120 °C, 60 °C) this is lower than the standard's own 0.92, 0.84, 0.75 at 70, 80, 90 °C: the cautious one of two published columns.</remarks>
    public static double IecAmbient(double limitC, double referenceC, double ambientC) =>
        ambientC >= limitC ? 0 : Math.Min(1, Math.Sqrt((limitC - ambientC) / (limitC - referenceC)));

    /// <summary>IEC 60364-5-52 Table B.52.17, method C, one layer on a surface: factor for so many circuits side by side.</summary>
    public static double IecGrouping(int circuits)
    {
        ReadOnlySpan<double> factors = [1.00, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.70];
        return factors[Math.Clamp(circuits, 1, factors.Length) - 1];
    }
}

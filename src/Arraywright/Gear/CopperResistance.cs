namespace Arraywright.Gear;

/// <summary>Direct-current resistance of copper conductors, after the published tables.</summary>
/// <remarks>
/// mm²: IEC 60228 Table 3 (class 5, tinned) and Table 2 (class 2, plain; from memory), largest allowed, at 20 °C. AWG: NFPA 70 (NEC)
/// chapter 9 Table 8, stranded, at 75 °C: coated for flexible cable, uncoated for fixed. An area between the sizes goes by the next thinner one's
/// resistance times its area.
/// </remarks>
public static class CopperResistance
{
    /// <summary>Copper's rise a kelvin at 20 °C, fraction (IEC 60228, IEC 60287).</summary>
    public const double At20PerK = 0.00393;

    /// <summary>Copper's rise a kelvin at 75 °C, fraction (NEC chapter 9 Table 8, note 2).</summary>
    public const double At75PerK = 0.00323;

    private const double KftPerKm = 1 / 0.3048;

    private static ReadOnlySpan<double> Class5TinnedOhmPerKm => [40.1, 26.7, 20.0, 13.7, 8.21, 5.09, 3.39, 1.95, 1.24, 0.795, 0.565, 0.393];

    private static ReadOnlySpan<double> Class2PlainOhmPerKm => [36.0, 24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387];

    private static ReadOnlySpan<double> CoatedOhmPerKft => [8.45, 5.29, 3.26, 2.05, 1.29, 0.809, 0.510, 0.321, 0.254, 0.201, 0.160, 0.127, 0.101, 0.0797, 0.0626];

    private static ReadOnlySpan<double> UncoatedOhmPerKft => [7.95, 4.99, 3.14, 1.98, 1.24, 0.778, 0.491, 0.308, 0.245, 0.194, 0.154, 0.122, 0.0967, 0.0766, 0.0608];

    /// <summary>Resistance of one metre of one conductor, Ω.</summary>
    /// <param name="areaMm2">Cross-section, mm².</param>
    /// <param name="kind">How it is made.</param>
    /// <param name="conductorC">Temperature of the copper, °C.</param>
    public static double PerMetreOhm(double areaMm2, CableClass kind, double conductorC)
    {
        ConductorSize size = ConductorSize.Of(areaMm2);
        if (size.IsGauge)
        {
            ReadOnlySpan<double> perKft = kind == CableClass.Flexible ? CoatedOhmPerKft : UncoatedOhmPerKft;
            return perKft[ConductorSize.Gauges.IndexOf(size)] * KftPerKm / 1000 * (1 + (At75PerK * (conductorC - 75)));
        }

        int thinner = ConductorSize.Metric.Count(made => made.AreaMm2 <= size.AreaMm2);
        ConductorSize known = ConductorSize.Metric[Math.Max(0, thinner - 1)];
        ReadOnlySpan<double> perKm = kind == CableClass.Flexible ? Class5TinnedOhmPerKm : Class2PlainOhmPerKm;
        return perKm[Math.Max(0, thinner - 1)] / 1000 * (known.AreaMm2 / size.AreaMm2) * (1 + (At20PerK * (conductorC - 20)));
    }

    /// <summary>The table the figure comes from.</summary>
    public static string Source(double areaMm2, CableClass kind) => (ConductorSize.Of(areaMm2).IsGauge, kind) switch
    {
        (true, CableClass.Flexible) => "NEC chapter 9 Table 8, coated",
        (true, _) => "NEC chapter 9 Table 8, uncoated",
        (false, CableClass.Flexible) => "IEC 60228 class 5, tinned",
        _ => "IEC 60228 class 2, from memory",
    };
}

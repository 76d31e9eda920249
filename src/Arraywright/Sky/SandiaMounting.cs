using Arraywright.Electrical;

namespace Arraywright.Sky;

/// <summary>How hot a kind of panel runs in one way of mounting: two measured constants and the step from its back to its cells.</summary>
/// <remarks>
/// King, Boyson, Kratochvil, "Photovoltaic Array Performance Model", SAND2004-3535 (2004), eq. 11 and 12, table 1: back of panel
/// Tm = Ta + G·exp(a + b·wind), cell Tc = Tm + G/1000·ΔT, for settled weather; ±5 K by the report's own account.
/// </remarks>
/// <param name="A">a: the larger, the hotter; G in W/m² and temperatures in °C.</param>
/// <param name="BSPerM">b, s/m: how much wind cools.</param>
/// <param name="BackToCellK">ΔT at 1000 W/m², K.</param>
public readonly record struct SandiaMounting(double A, double BSPerM, double BackToCellK)
{
    /// <summary>Glass in front, polymer sheet behind, free on both sides.</summary>
    public static SandiaMounting OpenRackSheet { get; } = new(-3.56, -0.0750, 3);

    /// <summary>Glass in front, polymer sheet behind, on an insulated back: no air behind.</summary>
    public static SandiaMounting InsulatedSheet { get; } = new(-2.81, -0.0455, 0);

    /// <summary>Glass on both sides, free on both sides.</summary>
    public static SandiaMounting OpenRackGlass { get; } = new(-3.47, -0.0594, 3);

    /// <summary>Glass on both sides, close above a roof.</summary>
    public static SandiaMounting CloseRoofGlass { get; } = new(-2.98, -0.0471, 1);

    /// <summary>How far the back of the panel is above the air, K; what a thermometer held to it shows.</summary>
    /// <param name="irradianceWPerM2">Irradiance in the plane, W/m², 0 or more.</param>
    /// <param name="windMPerS">Wind 10 m above the ground, m/s, 0 or more.</param>
    public double BackRiseK(double irradianceWPerM2, double windMPerS) =>
        irradianceWPerM2 * Exponential.Of(A + (BSPerM * windMPerS));

    /// <summary>How far the cells are above the air, K.</summary>
    /// <param name="irradianceWPerM2">Irradiance in the plane, W/m², 0 or more.</param>
    /// <param name="windMPerS">Wind 10 m above the ground, m/s, 0 or more.</param>
    public double CellRiseK(double irradianceWPerM2, double windMPerS) =>
        BackRiseK(irradianceWPerM2, windMPerS) + (irradianceWPerM2 / 1000 * BackToCellK);
}

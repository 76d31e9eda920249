namespace Arraywright;

/// <summary>What one panel sees.</summary>
/// <param name="IrradianceWPerM2">Irradiance in the plane of the panel, W/m².</param>
/// <param name="CellC">Cell temperature, °C; not the air's.</param>
public readonly record struct Conditions(double IrradianceWPerM2, double CellC)
{
    /// <summary>Standard test conditions (IEC 60904-3): 1000 W/m², 25 °C cell.</summary>
    public static Conditions Standard { get; } = new(1000, 25);
}

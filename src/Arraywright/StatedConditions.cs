namespace Arraywright;

/// <summary>Conditions a person states on the command line or the page; null where left to the plan or the standard.</summary>
/// <param name="IrradianceWPerM2">Irradiance in the plane of the panels, W/m²; 0 to 1500.</param>
/// <param name="CellC">Cell temperature, °C; not together with <paramref name="AirC"/>.</param>
/// <param name="AirC">Air temperature, °C, from which the cell's is computed.</param>
/// <param name="WindMPerS">Wind at the panels, m/s, for that computation.</param>
public sealed record StatedConditions(double? IrradianceWPerM2, double? CellC, double? AirC, double? WindMPerS)
{
    /// <summary>Irradiance where none is stated, W/m²: strong sun, as labels have it.</summary>
    public const double StrongSunWPerM2 = 1000;

    /// <summary>Air where no temperature is stated, °C: the air of the NOCT definition (IEC 61215).</summary>
    public const double MildAirC = 20;

    /// <summary>Nothing stated.</summary>
    public static StatedConditions None { get; } = new(null, null, null, null);
}

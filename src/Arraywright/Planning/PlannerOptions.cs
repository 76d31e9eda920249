namespace Arraywright.Planning;

/// <summary>What a person may ask for beside the plan.</summary>
/// <param name="Conditions">Conditions for the operating points, the meter and the loss ladder.</param>
public sealed record PlannerOptions(StatedConditions Conditions)
{
    /// <summary>Irradiance where none is stated, W/m²: strong sun, as labels have it.</summary>
    public const double StrongSunWPerM2 = 1000;

    /// <summary>Air where no temperature is stated, °C: the air of the NOCT definition (IEC 61215).</summary>
    public const double MildAirC = 20;

    /// <summary>Nothing stated.</summary>
    public static PlannerOptions Default { get; } = new(StatedConditions.None);
}

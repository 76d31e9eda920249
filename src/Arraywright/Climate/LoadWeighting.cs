using System.Collections.Immutable;

namespace Arraywright.Climate;

/// <summary>One strength of sun and the share of a year's energy that comes in it.</summary>
/// <param name="Fraction">Irradiance as a fraction of 1000 W/m².</param>
/// <param name="EnergyShare">Share of the year's irradiation, 0 to 1.</param>
public readonly record struct LoadLevel(double Fraction, double EnergyShare);

/// <summary>How a year's energy is spread over strengths of sun, in few levels, as inverter datasheets are rated (EN 50530).</summary>
/// <remarks>Made for the load of grid inverters; load is taken here as irradiance, so that full load is 1000 W/m².</remarks>
public static class LoadWeighting
{
    /// <summary>Weighting of the "European efficiency", made for middle Europe (Joint Research Centre, Ispra): from weak to strong sun; the shares add to 1.</summary>
    public static ImmutableArray<LoadLevel> European { get; } =
        [new(0.05, 0.03), new(0.10, 0.06), new(0.20, 0.13), new(0.30, 0.10), new(0.50, 0.48), new(1.00, 0.20)];
}

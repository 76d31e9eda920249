using System.Collections.Immutable;

namespace Arraywright.Climate;

/// <summary>One strength of sun and the share of a year's energy that comes in it.</summary>
/// <param name="Fraction">Irradiance as a fraction of 1000 W/m².</param>
/// <param name="EnergyShare">Share of the year's irradiation, 0 to 1.</param>
public readonly record struct LoadLevel(double Fraction, double EnergyShare);

/// <summary>How a year's energy is spread over strengths of sun, in few levels: the two weightings that inverter datasheets are rated by (EN 50530).</summary>
/// <remarks>They were made for the load of grid inverters; load is taken here as irradiance, so that full load is 1000 W/m².</remarks>
public sealed class LoadWeighting
{
    private LoadWeighting(string name, params ReadOnlySpan<LoadLevel> levels) => (Name, Levels) = (name, [.. levels]);

    /// <summary>Weighting of the "European efficiency", made for middle Europe (Joint Research Centre, Ispra).</summary>
    public static LoadWeighting European { get; } = new(
        "European", new(0.05, 0.03), new(0.10, 0.06), new(0.20, 0.13), new(0.30, 0.10), new(0.50, 0.48), new(1.00, 0.20));

    /// <summary>Weighting of the "CEC efficiency", made for sunny places (California Energy Commission).</summary>
    public static LoadWeighting Cec { get; } = new(
        "CEC", new(0.10, 0.04), new(0.20, 0.05), new(0.30, 0.12), new(0.50, 0.21), new(0.75, 0.53), new(1.00, 0.05));

    /// <summary>Horizontal irradiation above which a place counts as sunny, kWh/m² a year: our choice, between Ispra (about 1300) and inland California (about 2000).</summary>
    public const double SunnyKWhPerM2 = 1600;

    /// <summary>"European" or "CEC".</summary>
    public string Name { get; }

    /// <summary>From weak to strong sun; the shares add to 1.</summary>
    public ImmutableArray<LoadLevel> Levels { get; }

    /// <summary>The weighting for a place.</summary>
    /// <param name="annualKWhPerM2">Irradiation of a horizontal plane in a year, kWh/m².</param>
    public static LoadWeighting For(double annualKWhPerM2) => annualKWhPerM2 > SunnyKWhPerM2 ? Cec : European;
}

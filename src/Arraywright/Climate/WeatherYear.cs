using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>Weather through a span of time, step by step; means over the step that ends at each stamp. Checked on construction: every figure is finite and plausible.</summary>
public sealed class WeatherYear
{
    /// <summary>Makes a span of weather.</summary>
    /// <param name="place">Where it was, or is made for.</param>
    /// <param name="steps">Its steps in order of time.</param>
    /// <param name="stepH">Length of a step, h.</param>
    /// <param name="utcOffsetH">Local standard time less universal time, h: the clock of the stamps.</param>
    /// <param name="source">One sentence: where it comes from.</param>
    /// <param name="repairs">What was mended on the way, one sentence each.</param>
    /// <exception cref="ArgumentException">A figure is not finite or not plausible, or there are no steps.</exception>
    public WeatherYear(WeatherPlace place, ImmutableArray<WeatherStep> steps, double stepH, double utcOffsetH, string source, ImmutableArray<string> repairs)
    {
        if (steps.IsDefaultOrEmpty)
        {
            throw new ArgumentException("Weather has at least one step.", nameof(steps));
        }

        for (int i = 0; i < steps.Length; i++)
        {
            if (steps[i].Implausible is { } why)
            {
                throw new ArgumentException($"Step {i + 1}: {why}.", nameof(steps));
            }
        }

        (Place, Steps, StepH, UtcOffsetH, Source, Repairs) = (place, steps, stepH, utcOffsetH, source, repairs);
        AveragedOverH = stepH;
    }

    /// <summary>Where it was, or is made for.</summary>
    public WeatherPlace Place { get; }

    /// <summary>Its steps.</summary>
    public ImmutableArray<WeatherStep> Steps { get; }

    /// <summary>Length of a step, h.</summary>
    public double StepH { get; }

    /// <summary>How long its sun was averaged over, h: longer than a step where the steps were cut out of longer ones.</summary>
    public double AveragedOverH { get; init; }

    /// <summary>Local standard time less universal time, h.</summary>
    public double UtcOffsetH { get; }

    /// <summary>Where it comes from.</summary>
    public string Source { get; }

    /// <summary>What was mended on the way.</summary>
    public ImmutableArray<string> Repairs { get; }

    /// <summary>The same as a result lists it.</summary>
    public IEnumerable<Assumption> Assumptions => Repairs.Select(static repair => new Assumption(
        "weather file", repair.TrimEnd('.'), "Mended by a stated rule, or pointed out and taken as it stands; energies move with it. Another file of the place would settle it."));

    /// <summary>Coldest air that the source knows of, over more years than are here, °C; null where it knows no more.</summary>
    public double? ColdestKnownC { get; init; }

    /// <summary>Coldest step, or colder where the source knows of colder years, °C.</summary>
    public double ColdestAirC => Math.Min(ColdestKnownC ?? double.PositiveInfinity, Steps.Min(static step => step.AirC));

    /// <summary>Coldest step with any sun, °C; null where there is none.</summary>
    public double? ColdestDaylightAirC => Steps.Where(static step => step.GlobalWPerM2 > 0).Min(static step => (double?)step.AirC);

    /// <summary>The middle of a step: the moment its means stand for, and the day it belongs to.</summary>
    public DateTime Middle(in WeatherStep step) => step.Ends.AddHours(-StepH / 2);

    /// <summary>The same weather in other steps: some of its own, or its own cut finer.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="stepH">Length of a step, h; null for that of its own.</param>
    /// <param name="source">One sentence; null where it comes from the same.</param>
    /// <exception cref="ArgumentException">As when it is made.</exception>
    public WeatherYear With(ImmutableArray<WeatherStep> steps, double? stepH = null, string? source = null) =>
        new(Place, steps, stepH ?? StepH, UtcOffsetH, source ?? Source, Repairs) { AveragedOverH = AveragedOverH, ColdestKnownC = ColdestKnownC };

    /// <summary>Sun on the flat over the whole, kWh/m².</summary>
    public double GlobalKWhPerM2
    {
        get
        {
            double sum = 0;
            foreach (WeatherStep step in Steps)
            {
                sum += step.GlobalWPerM2;
            }

            return sum * StepH / 1000;
        }
    }
}

/// <summary>Where weather was measured or is made for.</summary>
/// <param name="LatitudeDeg">Degrees, north positive.</param>
/// <param name="LongitudeDeg">Degrees, east positive.</param>
/// <param name="ElevationM">Metres above the sea.</param>
public readonly record struct WeatherPlace(double LatitudeDeg, double LongitudeDeg, double ElevationM)
{
    /// <summary>The same as the sun's path needs it.</summary>
    public Site Site => Site.Of(LatitudeDeg, LongitudeDeg, ElevationM);
}

/// <summary>One step of weather.</summary>
/// <param name="Ends">When it ends, local standard time; the year may change from month to month in a typical year.</param>
/// <param name="GlobalWPerM2">All sun on the flat.</param>
/// <param name="BeamNormalWPerM2">Straight sun on a plane that faces it.</param>
/// <param name="DiffuseWPerM2">Sky on the flat.</param>
/// <param name="AirC">Air temperature, °C.</param>
/// <param name="WindMPerS">Wind at 10 m, m/s.</param>
public readonly record struct WeatherStep(DateTime Ends, double GlobalWPerM2, double BeamNormalWPerM2, double DiffuseWPerM2, double AirC, double WindMPerS)
{
    /// <summary>What is wrong with its figures; null when they are plausible.</summary>
    public string? Implausible =>
        Outside(GlobalWPerM2, 0, 1800) ? $"global irradiance {GlobalWPerM2} W/m²"
        : Outside(BeamNormalWPerM2, 0, 1400) ? $"beam irradiance {BeamNormalWPerM2} W/m²"
        : Outside(DiffuseWPerM2, 0, 1400) ? $"diffuse irradiance {DiffuseWPerM2} W/m²"
        : Outside(AirC, -90, 60) ? $"air temperature {AirC} °C"
        : Outside(WindMPerS, 0, 100) ? $"wind {WindMPerS} m/s"
        : null;

    private static bool Outside(double value, double low, double high) => !(value >= low && value <= high);
}

using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;
using Arraywright.Sky;

namespace Arraywright.Planning;

/// <summary>What a plan's wiring delivers in one day.</summary>
public sealed record DayResult : RunResult
{
    /// <summary>The date; of the weather's year where that has years of its own.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Whether the sun rises and sets.</summary>
    public required Daylight Daylight { get; init; }

    /// <summary>Sunrise by the weather's clock, hour of the day.</summary>
    public required double SunriseHour { get; init; }

    /// <summary>Sunset by the weather's clock, hour of the day.</summary>
    public required double SunsetHour { get; init; }
}

/// <summary>Runs a plan's wiring through one day of a weather year.</summary>
public static class DayStudy
{
    /// <summary>Whether the weather has that date.</summary>
    public static bool Has(WeatherYear weather, DateOnly date) => !Steps(weather, date).IsEmpty;

    /// <summary>The day of the stated wiring, or of the best where none is stated.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weather">The weather; it has the date.</param>
    /// <param name="date">Month and day count, the year does not.</param>
    /// <param name="isClear">True for a day without a cloud at that day's temperatures, in place of the weather's sun.</param>
    /// <param name="options">How the energy is run.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends a search early.</param>
    /// <exception cref="ArgumentException">The weather does not have that date.</exception>
    public static DayResult Run(Plan plan, WeatherYear weather, DateOnly date, bool isClear, EnergyOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        ImmutableArray<WeatherStep> steps = Steps(weather, date);
        if (steps.IsEmpty)
        {
            throw new ArgumentException($"The weather has no {date:MMMM d}.", nameof(date));
        }

        string source = isClear ? $"a clear sky on {date:MMMM d}, with the temperatures of {weather.Source}" : $"{date:MMMM d} of {weather.Source}";
        WeatherYear day = FinerWeather.InSteps(weather.With(steps, source: source), options.StepH);
        day = isClear ? Clear(day) : day;
        (plan, Design design, ImmutableArray<Wiring?> wirings) = YearStudy.Wirings(plan, progress, cancellation);
        SunSeries series = SunOnPanels.Of(plan, day, SunOptions.Of(plan)) with { SpanNames = [date.ToString("MMMM d")], Span = new int[day.Steps.Length] };
        SunDay sun = SunDay.Of(Midnight(day) + 0.5 - ((weather.Place.LongitudeDeg / 15) - weather.UtcOffsetH) / 24, weather.Place.Site);
        return new DayResult
        {
            Plan = plan,
            Date = date,
            Design = design,
            Energy = EnergyRun.Of(new PlanPhysics(plan), wirings, series, options with { KeepMoments = true }),
            Daylight = sun.Daylight,
            SunriseHour = (sun.RiseJulianDay - Midnight(day)) * 24,
            SunsetHour = (sun.SetJulianDay - Midnight(day)) * 24,
            WeatherSource = source,
            Assumed = [.. plan.Assumed, .. YearAssumptions.Of(plan, day, options)],
            Cautions = Cautions.For(design.HighestVocColdV),
        };
    }

    private static ImmutableArray<WeatherStep> Steps(WeatherYear weather, DateOnly date) =>
        [.. weather.Steps.Where(step => DaySpan.Of(date.Month, date.Day).Has(weather.Middle(step)))];

    /// <summary>Julian day (universal time) at which the day begins by the weather's clock.</summary>
    private static double Midnight(WeatherYear day) =>
        SunClock.JulianDay(day.Steps[0].Ends.AddHours(-day.StepH)) - (day.UtcOffsetH / 24);

    /// <summary>The day without a cloud, with its temperatures.</summary>
    private static WeatherYear Clear(WeatherYear day)
    {
        SunPath path = new(day.Place.Site);
        return day.With(
        [
            .. day.Steps.Select(step =>
            {
                SunPosition sun = path.At(SunClock.JulianDay(day.Middle(step)) - (day.UtcOffsetH / 24));
                SkyLight light = ClearSky.Of(sun, day.Place.ElevationM, sun.ExtraterrestrialWPerM2);
                return step with { GlobalWPerM2 = light.GlobalWPerM2, BeamNormalWPerM2 = light.BeamNormalWPerM2, DiffuseWPerM2 = light.DiffuseWPerM2 };
            }),
        ]);
    }
}

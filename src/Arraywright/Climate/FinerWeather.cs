using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>Weather in shorter steps than it was given in: the sun moves on within each step, the clouds do not.</summary>
/// <remarks>
/// Within a step the share of the sunlight above the air that arrives, and how it is split into beam and sky, stay as given, so that the parts of a step
/// have its mean. Where a step gives more than the air lets in (a clock that is off, a sun at the horizon) its light is spread evenly.
/// Air and wind run straight between the middles of the steps.
/// </remarks>
public static class FinerWeather
{
    /// <summary>Shortest step, h: one minute.</summary>
    public const double ShortestH = 1 / 60.0;

    /// <summary>Whether steps of such a length are whole parts of the weather's.</summary>
    public static bool Divides(WeatherYear weather, double stepH) => Math.Abs((weather.StepH / stepH) - Math.Round(weather.StepH / stepH)) < 1e-6;

    /// <summary>The weather in steps of a length; as it is where its own are not longer.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="stepH">Length of a step, h, a whole part of the weather's; null for its own.</param>
    public static WeatherYear InSteps(WeatherYear weather, double? stepH) =>
        stepH is { } wanted && wanted < weather.StepH ? Of(weather, (int)Math.Round(weather.StepH / wanted)) : weather;

    /// <summary>The weather with each step cut into equal parts.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="parts">Parts a step, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The parts would be shorter than a minute, or there are none.</exception>
    public static WeatherYear Of(WeatherYear weather, int parts)
    {
        double stepH = weather.StepH / parts;
        if (parts < 1 || stepH < ShortestH - 1e-9)
        {
            throw new ArgumentOutOfRangeException(nameof(parts), parts, "At least one part a step, and none shorter than a minute.");
        }

        if (parts == 1)
        {
            return weather;
        }

        SunPath path = new(weather.Place.Site);
        ImmutableArray<WeatherStep> given = weather.Steps;
        var finer = ImmutableArray.CreateBuilder<WeatherStep>(given.Length * parts);
        Span<double> shares = new double[parts];
        for (int i = 0; i < given.Length; i++)
        {
            WeatherStep step = given[i];
            DateTime begins = step.Ends.AddHours(-weather.StepH);
            Shares(path, step, SunClock.JulianDay(begins) - (weather.UtcOffsetH / 24), stepH / 24, shares);
            double lit = Lit(shares);
            for (int part = 0; part < parts; part++)
            {
                double along = ((part + 0.5) / parts) - 0.5;
                WeatherStep next = given[Math.Clamp(along < 0 ? i - 1 : i + 1, 0, given.Length - 1)];
                finer.Add(new WeatherStep(
                    begins.AddTicks((long)Math.Round((part + 1) * stepH * TimeSpan.TicksPerHour)),
                    step.GlobalWPerM2 * shares[part],
                    shares[part] > 0 ? step.BeamNormalWPerM2 / lit : 0,
                    step.DiffuseWPerM2 * shares[part],
                    step.AirC + (Math.Abs(along) * (next.AirC - step.AirC)),
                    step.WindMPerS + (Math.Abs(along) * (next.WindMPerS - step.WindMPerS))));
            }
        }

        return weather.With(finer.MoveToImmutable(), stepH);
    }

    /// <summary>Brightness of each part as a factor on the step's mean; they average 1.</summary>
    private static void Shares(SunPath path, in WeatherStep step, double beginsJulianDay, double partDays, Span<double> shares)
    {
        if (step.GlobalWPerM2 <= 0)
        {
            shares.Fill(1);
            return;
        }

        double sumWPerM2 = 0;
        for (int part = 0; part < shares.Length; part++)
        {
            SunPosition sun = path.At(beginsJulianDay + ((part + 0.5) * partDays));
            double up = Math.Max(0, Math.Sin(sun.ElevationDeg * Math.PI / 180));
            shares[part] = up * sun.ExtraterrestrialWPerM2;
            sumWPerM2 += shares[part];
        }

        double meanWPerM2 = sumWPerM2 / shares.Length;
        if (step.GlobalWPerM2 > meanWPerM2)
        {
            shares.Fill(1);
            return;
        }

        for (int part = 0; part < shares.Length; part++)
        {
            shares[part] /= meanWPerM2;
        }
    }

    /// <summary>Share of the parts in which the sun is up.</summary>
    private static double Lit(ReadOnlySpan<double> shares)
    {
        int lit = 0;
        foreach (double share in shares)
        {
            lit += share > 0 ? 1 : 0;
        }

        return (double)lit / shares.Length;
    }
}

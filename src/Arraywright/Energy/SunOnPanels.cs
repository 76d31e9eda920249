using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>How sunlight is taken to reach the panels.</summary>
public sealed record SunOptions
{
    /// <summary>The ordinary way.</summary>
    public static SunOptions Default { get; } = new();

    /// <summary>Light lost to dirt on the glass. Default 0.03: with rain a yearly mean of 2 to 5 % (from memory of Ilse and others, Joule 3 (2019)).</summary>
    public double SoilingFraction { get; init; } = 0.03;

    /// <summary>Light that the ground gives back. Default 0.2: grass and soil (common practice).</summary>
    public double AlbedoFraction { get; init; } = 0.2;

    /// <summary>How the sky's light is spread. Default Perez.</summary>
    public SkyModel Sky { get; init; } = SkyModel.Perez;

    /// <summary>Hills and trees. Default free.</summary>
    public HorizonProfile Horizon { get; init; } = HorizonProfile.Free;
}

/// <summary>Turns weather into what every kind of panel sees.</summary>
public static class SunOnPanels
{
    /// <summary>The sun on the panels of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="options">How.</param>
    public static SunSeries Of(Plan plan, WeatherYear weather, SunOptions options)
    {
        int count = weather.Steps.Length;
        int[] span = new int[count];
        int[] day = new int[count];
        double[] endHour = new double[count];
        StockSun[] stocks = [.. plan.Panels.Select(_ => new StockSun(new double[count], new double[count], new double[count], new double[count], new double[count]))];
        Mount[] mounts = [.. plan.Panels.Select(stock => stock.Mount ?? plan.Mount)];
        var path = new SunPath(Site.Of(weather.Place.LatitudeDeg, weather.Place.LongitudeDeg, weather.Place.ElevationM));
        var today = DateOnly.MinValue;
        int days = -1;
        for (int i = 0; i < count; i++)
        {
            WeatherStep step = weather.Steps[i];
            DateTime middle = step.Ends.AddHours(-weather.StepH / 2);
            if (DateOnly.FromDateTime(middle) is var date && date != today)
            {
                (today, days) = (date, days + 1);
            }

            span[i] = middle.Month - 1;
            day[i] = days;
            endHour[i] = middle.TimeOfDay.TotalHours + (weather.StepH / 2);
            SunPosition sun = path.At(SunClock.JulianDay(middle) - (weather.UtcOffsetH / 24));
            double outside = ExtraterrestrialDay.SolarConstantWPerM2 / (sun.DistanceAu * sun.DistanceAu);
            SkyLight light = new(step.GlobalWPerM2, step.BeamNormalWPerM2, step.DiffuseWPerM2, outside);
            SkyLight clear = ClearSky.Of(sun, weather.Place.ElevationM, outside);
            for (int stock = 0; stock < stocks.Length; stock++)
            {
                if (stock > 0 && mounts[stock] == mounts[stock - 1])
                {
                    stocks[stock].PlaneWPerM2[i] = stocks[stock - 1].PlaneWPerM2[i];
                    stocks[stock].UsefulWPerM2[i] = stocks[stock - 1].UsefulWPerM2[i];
                    stocks[stock].ClearWPerM2[i] = stocks[stock - 1].ClearWPerM2[i];
                }
                else
                {
                    (stocks[stock].PlaneWPerM2[i], stocks[stock].UsefulWPerM2[i]) = OnPlane(sun, light, mounts[stock], options);
                    stocks[stock].ClearWPerM2[i] = OnPlane(sun, clear, mounts[stock], options).UsefulWPerM2;
                }

                stocks[stock].ShadedFraction[i] = Shaded(plan.Panels[stock].Shade, middle.TimeOfDay.TotalHours);
                stocks[stock].CellC[i] = CellTemperature.At(step.AirC, stocks[stock].UsefulWPerM2[i], step.WindMPerS, mounts[stock].Kind, plan.Panels[stock].Panel.NoctC);
            }
        }

        return new SunSeries(weather.StepH, Months, span, day, endHour, [.. stocks]);
    }

    private static ImmutableArray<string> Months { get; } =
        [.. Enumerable.Range(1, 12).Select(month => System.Globalization.CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month))];

    /// <summary>Irradiance in a plane, and what of it gets through horizon, glass and dirt, W/m².</summary>
    internal static (double PlaneWPerM2, double UsefulWPerM2) OnPlane(in SunPosition sun, in SkyLight light, Mount mount, SunOptions options)
    {
        if (light.GlobalWPerM2 <= 0)
        {
            return (0, 0);
        }

        double incidenceDeg = TiltedPlane.IncidenceDeg(sun, mount.TiltDeg, mount.AzimuthDeg);
        TiltedPlane plane = TiltedPlane.Of(sun, light, mount.TiltDeg, incidenceDeg, options.AlbedoFraction, options.Sky);
        bool isHidden = sun.ElevationDeg < options.Horizon.ElevationDeg(sun.AzimuthDeg);
        double beamFraction = isHidden ? 0 : IncidenceLoss.BeamFraction(incidenceDeg);
        double useful = ((plane.BeamWPerM2 + plane.CircumsolarWPerM2) * beamFraction)
            + (plane.SkyWPerM2 * IncidenceLoss.SkyFraction(mount.TiltDeg))
            + (plane.HorizonWPerM2 * IncidenceLoss.GroundFraction(mount.TiltDeg > 0 ? mount.TiltDeg : 1))
            + (plane.GroundWPerM2 * IncidenceLoss.GroundFraction(mount.TiltDeg));
        return (plane.TotalWPerM2, Math.Max(0, useful) * (1 - options.SoilingFraction));
    }

    private static double Shaded(Shade shade, double hour)
    {
        double kept = 1;
        foreach (ShadeHours span in shade.Hours)
        {
            bool within = span.FromHour <= span.ToHour ? hour >= span.FromHour && hour < span.ToHour : hour >= span.FromHour || hour < span.ToHour;
            kept *= within ? 1 - span.Fraction : 1;
        }

        return 1 - kept;
    }
}

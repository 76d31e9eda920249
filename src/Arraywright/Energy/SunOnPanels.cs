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

    /// <summary>Light that the ground gives back: one figure for the whole year, or twelve from January. Default 0.2: grass and soil (common practice).</summary>
    public ImmutableArray<double> AlbedoFractions { get; init; } = [0.2];

    /// <summary>How the sky's light is spread. Default Perez.</summary>
    public SkyModel Sky { get; init; } = SkyModel.Perez;

    /// <summary>Hills and trees. Default free.</summary>
    public HorizonProfile Horizon { get; init; } = HorizonProfile.Free;

    /// <summary>What a plan says of its site, the ordinary where it is silent.</summary>
    public static SunOptions Of(Plan plan) => new()
    {
        SoilingFraction = plan.Mount.SoilingFraction ?? Default.SoilingFraction,
        AlbedoFractions = plan.Place is { AlbedoFractions: { IsEmpty: false } stated } ? stated : Default.AlbedoFractions,
        Sky = plan.Sky ?? Default.Sky,
        Horizon = plan.Place?.Horizon ?? Default.Horizon,
    };

    /// <summary>Light that the ground gives back in a month, 1 to 12.</summary>
    public double AlbedoFraction(int month) => AlbedoFractions[AlbedoFractions.Length == 12 ? month - 1 : 0];
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
        double[] clockEndHour = new double[count];
        StockSun[] stocks = [.. plan.Panels.Select(_ => new StockSun(new double[count], new double[count], new double[count], new double[count], new double[count]))];
        Mount[] mounts = [.. plan.Panels.Select(stock => stock.Mount ?? plan.Mount)];
        PlaneView[] planes = [.. mounts.Select(mount => new PlaneView(mount, options))];
        var path = new SunPath(weather.Place.Site);
        var today = DateOnly.MinValue;
        int days = -1;
        for (int i = 0; i < count; i++)
        {
            WeatherStep step = weather.Steps[i];
            DateTime middle = weather.Middle(step);
            if (DateOnly.FromDateTime(middle) is var date && date != today)
            {
                (today, days) = (date, days + 1);
            }

            span[i] = middle.Month - 1;
            day[i] = days;
            endHour[i] = middle.TimeOfDay.TotalHours + (weather.StepH / 2);
            double clockHour = PlaceClock.At(middle, weather.UtcOffsetH, plan.Place?.Zone).TimeOfDay.TotalHours;
            clockEndHour[i] = clockHour + (weather.StepH / 2) is var ends && ends > 24 ? ends - 24 : ends;
            SunPosition sun = path.At(SunClock.JulianDay(middle) - (weather.UtcOffsetH / 24));
            double outside = sun.ExtraterrestrialWPerM2;
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
                    (stocks[stock].PlaneWPerM2[i], stocks[stock].UsefulWPerM2[i]) = planes[stock].Of(sun, light, middle.Month);
                    stocks[stock].ClearWPerM2[i] = planes[stock].Of(sun, clear, middle.Month).UsefulWPerM2;
                }

                stocks[stock].ShadedFraction[i] = ShadeByTheClock.ShareKeptOff(plan.Panels[stock].Shade.Hours, clockHour - (weather.StepH / 2), weather.StepH);
                stocks[stock].CellC[i] = CellTemperature.At(step.AirC, stocks[stock].UsefulWPerM2[i], step.WindMPerS, mounts[stock].Kind, plan.Panels[stock].Panel.NoctC);
            }
        }

        return new SunSeries(weather.StepH, Months, span, day, endHour, [.. stocks]) { ClockEndHour = clockEndHour, AveragedOverH = weather.AveragedOverH };
    }

    private static ImmutableArray<string> Months { get; } =
        [.. Enumerable.Range(1, 12).Select(month => System.Globalization.CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month))];
}

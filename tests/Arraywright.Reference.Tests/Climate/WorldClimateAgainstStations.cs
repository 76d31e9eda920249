using Arraywright.Climate;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>The built-in climate against all stations; the error figures are those published with the fit (shared/climate/README.md), to their last printed digit.</summary>
public class WorldClimateAgainstStations
{
    private static readonly int[] DaysOfMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    [Fact]
    public void Every_station_is_on_the_map()
    {
        List<Station> stations = StationTable.Read();

        Assert.Equal(12842, stations.Count);
        Assert.DoesNotContain(stations, station => WorldClimate.At(station.LatitudeDeg, station.LongitudeDeg, station.ElevationM) is null);
    }

    [Fact]
    public void Errors_by_month_are_the_published_ones()
    {
        var pairs = Pairs();

        Assert.Equal(1.55, Rms(pairs.SelectMany(p => p.Fit.Months.Select((m, i) => m.MeanAirC - p.Station.MeanAirC[i]))), 0.0051);
        Assert.Equal(1.34, Rms(pairs.SelectMany(p => p.Fit.Months.Select((m, i) => m.DailyRangeK - p.Station.DailyRangeK[i]))), 0.0051);
        Assert.Equal(4.5, Rms(pairs.SelectMany(p => p.Fit.Months.Select((m, i) => m.SunshinePercent - p.Station.SunshinePercent[i]))), 0.051);
    }

    /// <summary>Tolerance: one unit of the last printed digit, as the table's own irradiation is over all days of a month and ours on its mean day.</summary>
    [Fact]
    public void Annual_irradiation_is_as_near_as_published()
    {
        double[] errors = [.. Pairs().Select(p => (p.Fit.AnnualHorizontalKWhPerM2 / AnnualKWhPerM2(p.Station)) - 1)];
        double[] sizes = [.. errors.Select(Math.Abs).Order()];

        Assert.Equal(0.032, Rms(errors), 0.001);
        Assert.Equal(0.017, sizes[sizes.Length / 2], 0.001);
        Assert.Equal(0.063, sizes[sizes.Length * 95 / 100], 0.001);
        Assert.Equal(0.107, sizes[sizes.Length * 99 / 100], 0.001);
    }

    [Fact]
    public void Coldest_mornings_are_as_near_as_published()
    {
        double[] tooWarmK = [.. Pairs().Select(p => p.Fit.Coldest.MeanDailyMinC - p.Station.ColdestMonthMinC).Order()];

        Assert.Equal(2.1, Rms(tooWarmK), 0.051);
        Assert.Equal(5.5, tooWarmK[tooWarmK.Length * 99 / 100], 0.051);
    }

    private static List<(Station Station, MonthlyClimate Fit)> Pairs() =>
        [.. StationTable.Read().Select(s => (s, WorldClimate.At(s.LatitudeDeg, s.LongitudeDeg, s.ElevationM)!))];

    private static double AnnualKWhPerM2(Station station) => station.HorizontalKWhPerM2Day.Zip(DaysOfMonth, (daily, days) => daily * days).Sum();

    private static double Rms(IEnumerable<double> errors) => Math.Sqrt(errors.Average(error => error * error));
}

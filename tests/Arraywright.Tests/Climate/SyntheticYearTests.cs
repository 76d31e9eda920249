using Arraywright.Climate;
using Arraywright.Sky;

namespace Arraywright.Tests.Climate;

public sealed class SyntheticYearTests
{
    private static readonly Place[] Places =
    [
        new(54.6, -3.1, 200, null, null),
        new(-33.9, 151.2, 20, null, null),
        new(-0.2, -78.5, 2850, null, null),
        new(69.65, 18.96, 20, null, null),
        new(21.3, -157.9, 5, null, null),
        new(27.7, 85.3, 1300, null, null),
    ];

    public static TheoryData<int> All => [.. Enumerable.Range(0, Places.Length)];

    /// <summary>The means go in; they must come out: sun of each month, air of the year.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Monthly_means_come_out_as_they_went_in(int at)
    {
        MonthlyClimate climate = WorldClimate.Of(Places[at])!;
        WeatherYear year = SyntheticYear.Of(climate, Places[at]);
        Assert.Equal(8760, year.Steps.Length);
        foreach (ClimateMonth month in climate.Months)
        {
            double sumKWh = year.Steps.Where(step => step.Ends.AddHours(-0.5).Month == month.Month).Sum(step => step.GlobalWPerM2) / 1000;
            Assert.Equal(month.HorizontalKWhPerM2, sumKWh, (0.001 * month.HorizontalKWhPerM2) + 0.5);
        }

        Assert.Equal(climate.Months.Average(month => month.MeanAirC), year.Steps.Average(step => step.AirC), 0.3);
    }

    /// <summary>Global is beam on the flat and diffuse, wherever the sun is well up; 3 % and 15 W/m² for the sun's way through the hour.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Beam_and_diffuse_make_the_whole(int at)
    {
        WeatherYear year = SyntheticYear.Of(WorldClimate.Of(Places[at])!, Places[at]);
        SunPath path = new(Site.Of(year.Place.LatitudeDeg, year.Place.LongitudeDeg, year.Place.ElevationM));
        int seen = 0;
        foreach (WeatherStep step in year.Steps)
        {
            SunPosition sun = path.At(SunClock.JulianDay(step.Ends.AddHours(-0.5)) - (year.UtcOffsetH / 24));
            if (sun.ElevationDeg > 15)
            {
                seen++;
                Assert.Equal(step.GlobalWPerM2, (step.BeamNormalWPerM2 * Math.Sin(sun.ElevationDeg * Math.PI / 180)) + step.DiffuseWPerM2, (0.03 * step.GlobalWPerM2) + 15);
            }
        }

        Assert.True(seen > 1000);
    }

    /// <summary>The mean is what it was asked to be, nothing passes the clear day, and the dull days are not all alike.</summary>
    [Theory]
    [InlineData(0.10, 0.94, 0.75)]
    [InlineData(0.45, 0.94, 0.75)]
    [InlineData(0.60, 0.76, 0.75)]
    [InlineData(0.70, 0.94, 0.75)]
    public void Days_spread_about_their_mean_and_below_the_clear_day(double mean, double highest, double clearest)
    {
        double[] days = DailyClearness.Spread(mean, highest, clearest, 30);
        Assert.Equal(mean, days.Average(), 1e-12);
        Assert.Equal(days.Order(), days);
        Assert.InRange(days[^1], mean, 1.01 * clearest);
        Assert.InRange(days[0], 0, 0.9 * mean);
    }

    /// <summary>By hand: with no bend the density is 6·X·(1 − X), mean 1/2, standard deviation 1/√20 of the highest.</summary>
    [Fact]
    public void Without_a_bend_days_spread_as_a_parabola()
    {
        double[] days = DailyClearness.Spread(0.4, 0.8, 0.8, 20000);
        Assert.Equal(0.8 / Math.Sqrt(20), Math.Sqrt(days.Average(day => (day - 0.4) * (day - 0.4))), 1e-4);
    }

    /// <summary>By hand: a mean of ½ and a deviation of 1/√20 are those of 6·x·(1 − x), of which 3x² − 2x³ lies below x.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void A_beta_spread_is_read_where_it_lies(double x)
    {
        BetaSpread beta = new();
        beta.Set(0.5, 1 / Math.Sqrt(20));
        Assert.Equal(x, beta.At((3 * x * x) - (2 * x * x * x)), 2e-3);
    }

    /// <summary>The mean is kept; a spread that would crowd at both ends (0.3 about 0.9 is the widest there is) is narrowed to one: with b = ½ about 0.9 its variance is 0.9·0.1/(5 + 1).</summary>
    [Theory]
    [InlineData(0.3, 0.2, 0.2)]
    [InlineData(0.9, 0.05, 0.05)]
    [InlineData(0.9, 0.3, 0.122474)]
    [InlineData(0.1, 0.3, 0.122474)]
    public void A_beta_spread_keeps_its_mean_and_crowds_at_one_end_at_most(double mean, double deviation, double kept)
    {
        BetaSpread beta = new();
        beta.Set(mean, deviation);
        double[] cases = [.. Enumerable.Range(0, 10000).Select(i => beta.At((i + 0.5) / 10000))];
        Assert.Equal(mean, cases.Average(), 2e-3);
        Assert.Equal(kept, Math.Sqrt(cases.Average(x => (x - mean) * (x - mean))), 2e-3);
    }

    /// <summary>The sun of the made year against the position algorithm: within 6 W/m² outside the air at every hour, 1 % of a month's clear sky.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void The_quick_sun_is_the_sun(int at)
    {
        Place place = Places[at];
        double utcOffsetH = Math.Round(place.LongitudeDeg / 15);
        SunOfMonth quick = new(place, utcOffsetH);
        quick.Fill(2025, 9);
        SunPath path = new(Site.Of(place.LatitudeDeg, place.LongitudeDeg, place.ElevationM));
        double clearWh = 0;
        for (int hour = 0; hour < 24 * quick.Days; hour++)
        {
            double outside = 0;
            for (int part = 0; part < 4; part++)
            {
                SunPosition sun = path.At(SunClock.JulianDay(new DateTime(2025, 9, 1)) + ((hour + ((part + 0.5) / 4) - utcOffsetH) / 24));
                double facing = ExtraterrestrialDay.SolarConstantWPerM2 / (sun.DistanceAu * sun.DistanceAu);
                outside += facing * Math.Max(0, Math.Sin(sun.GeometricElevationDeg * Math.PI / 180)) / 4;
                clearWh += ClearSky.Of(sun, place.ElevationM, facing).GlobalWPerM2 / 4;
            }

            Assert.Equal(outside, quick.OutsideWPerM2[hour], 6.0);
        }

        Assert.Equal(clearWh, quick.ClearWhPerM2, 0.01 * clearWh);
    }

    [Fact]
    public void The_same_place_gives_the_same_year()
    {
        MonthlyClimate climate = WorldClimate.Of(Places[0])!;
        Assert.Equal(SyntheticYear.Of(climate, Places[0]).Steps, SyntheticYear.Of(climate, Places[0]).Steps);
    }
}

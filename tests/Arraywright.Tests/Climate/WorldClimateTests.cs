using Arraywright.Climate;
using CsCheck;

namespace Arraywright.Tests.Climate;

public class WorldClimateTests
{
    [Fact]
    public void Rows_of_the_fit_are_in_the_order_they_are_walked()
    {
        string[] expected = [.. from variable in new[] { "tmean_c", "dtr_k", "sunshine_pct" } from function in FunctionsInOrder() select variable + function];

        using Stream stream = typeof(WorldClimate).Assembly.GetManifestResourceStream("world-fit.csv")!;
        using StreamReader reader = new(stream);
        string[] rows = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(expected, rows.Skip(1).Select(row => string.Concat(row.Split(',').Take(4).Select(label => "," + label))[1..]));
    }

    [Theory]
    [InlineData(45, -30, "mid-Atlantic")]
    [InlineData(-36, 95, "Indian Ocean")]
    [InlineData(-75, 0, "Antarctica")]
    [InlineData(88, 10, "north pole")]
    [InlineData(-60, 0, "southern end of the map")]
    public void Where_the_fit_rests_on_nothing_there_is_no_climate(double latitudeDeg, double longitudeDeg, string where) =>
        Assert.True(WorldClimate.At(latitudeDeg, longitudeDeg, 0) is null, where);

    [Theory]
    [InlineData(52, 180, "western Aleutians, east edge of the map")]
    [InlineData(65, -180, "Chukotka, west edge of the map")]
    [InlineData(84, -33, "north Greenland, top of the map")]
    [InlineData(-2, 27, "inner Congo, far from a station")]
    public void Edges_of_the_map_and_gaps_in_land_are_known(double latitudeDeg, double longitudeDeg, string where) =>
        Assert.True(WorldClimate.At(latitudeDeg, longitudeDeg, 0) is not null, where);

    [Theory]
    [InlineData(90.1, 0, 0)]
    [InlineData(0, 180.1, 0)]
    [InlineData(0, 0, 9000.1)]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(0, double.NegativeInfinity, 0)]
    [InlineData(0, 0, double.NaN)]
    public void A_place_off_the_Earth_is_refused(double latitudeDeg, double longitudeDeg, double elevationM) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WorldClimate.At(latitudeDeg, longitudeDeg, elevationM));

    /// <summary>Bounds: records of air temperature on Earth, and the sun above the air.</summary>
    [Fact]
    public void Every_known_place_has_a_possible_climate() =>
        Gen.Select(Gen.Double[-60, 84], Gen.Double[-180, 180]).Sample((latitudeDeg, longitudeDeg) =>
        {
            MonthlyClimate? climate = WorldClimate.At(latitudeDeg, longitudeDeg, 0);
            return climate is null || climate.Months.All(month =>
                month.MeanAirC is > -60 and < 45
                && month.DailyRangeK is >= 2 and <= 25
                && month.SunshinePercent is >= 0 and <= 100
                && month.HorizontalKWhPerM2Day is >= 0 and < 10);
        });

    [Fact]
    public void Figures_are_rounded_so_that_machines_agree()
    {
        MonthlyClimate climate = WorldClimate.At(54.6, -3.1, 210)!;

        Assert.All(climate.Months, month => Assert.Equal(Math.Round(month.MeanAirC, 3), month.MeanAirC));
        Assert.All(climate.Months, month => Assert.Equal(Math.Round(month.HorizontalKWhPerM2Day, 3), month.HorizontalKWhPerM2Day));
    }

    private static IEnumerable<string> FunctionsInOrder()
    {
        for (int l = 0; l <= WorldFit.Degree; l++)
        {
            for (int m = 0; m <= l; m++)
            {
                yield return $",{l},{m},c";
                if (m > 0)
                {
                    yield return $",{l},{m},s";
                }
            }
        }

        yield return ",,,elev_km";
        yield return ",,,elev_km_abs_sin_lat";
    }
}

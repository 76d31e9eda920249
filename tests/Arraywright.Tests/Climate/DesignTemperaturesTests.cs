using Arraywright.Climate;
using CsCheck;

namespace Arraywright.Tests.Climate;

public class DesignTemperaturesTests
{
    /// <summary>
    /// Phoenix by an independent evaluation of the fit (a script with the explicit sum of Legendre's polynomials): coldest month's mean
    /// daily minimum less 18 K is −15.74 °C, so −16 °C to the safe side.
    /// </summary>
    [Fact]
    public void Without_a_figure_of_its_own_a_plan_takes_the_coldest_of_the_climate()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix()));

        Assert.Equal(-16, design.ColdestAirC);
        Assert.Equal(-16, design.ColdestCellC);
        Assert.Equal("−16 °C", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Value);
        Assert.StartsWith("January mean 9.7 °C − half the daily range 7.4 K − 18 K = −16 °C", design.ColdWorking);
        Assert.Null(design.ClimateSuggestsColderC);
    }

    [Fact]
    public void The_plan_s_own_coldest_comes_first()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.London(coldestC: -14.5)));

        Assert.Equal(-14.5, design.ColdestAirC);
        Assert.Equal("coldest air −14.5 °C, the plan's own figure", design.ColdWorking);
        Assert.DoesNotContain(design.Assumptions, a => a.What == "coldest air temperature");
        Assert.Null(design.ClimateSuggestsColderC);
    }

    [Fact]
    public void Cells_asked_about_count_where_they_are_colder()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.London(coldestC: -14.5)));
        DesignTemperatures colder = design.WithAsked(-30);

        Assert.Equal(-30, colder.ColdestCellC);
        Assert.Contains("−14.5 °C", colder.ColdWorking, StringComparison.Ordinal);
        Assert.Contains("coldest air −14.5 °C", Assert.Single(colder.Assumptions, a => a.What == "coldest air temperature").Why, StringComparison.Ordinal);
        Assert.Same(design, design.WithAsked(-14.5));
        var doubted = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -7.9)));
        Assert.Equal(-16, doubted.WithAsked(-10).ClimateSuggestsColderC);
        Assert.Null(doubted.WithAsked(-20).ClimateSuggestsColderC);
    }

    [Fact]
    public void A_plan_much_warmer_than_the_climate_stands_but_is_pointed_out()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -7.9)));

        Assert.Equal(-7.9, design.ColdestAirC);
        Assert.Equal(-16, design.ClimateSuggestsColderC);
        Assert.Contains("may be colder", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Why);
    }

    [Fact]
    public void A_plan_eight_kelvin_above_the_climate_is_left_alone() =>
        Assert.Null(DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -8))).ClimateSuggestsColderC);

    /// <summary>
    /// Phoenix without a height, by the same independent script: −14.18 °C at sea level, −23.34 °C at 2000 m, both rounded down. A height of
    /// 0 m that is only assumed must not make a mountain warm.
    /// </summary>
    [Fact]
    public void A_height_left_out_is_doubted_as_two_thousand_metres()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix() with { ElevationM = 0, IsElevationAssumed = true }));

        Assert.Equal(-15, design.ColdestAirC);
        Assert.Equal(-24, design.ClimateSuggestsColderC);
        Assert.Contains("2000 m", design.ClimateCondition);
        Assert.Contains("−24 °C if the place lies 2000 m high", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Why);
    }

    [Fact]
    public void A_height_left_out_matters_not_where_the_plan_states_its_coldest() =>
        Assert.Null(DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -14) with { ElevationM = 0, IsElevationAssumed = true })).ClimateSuggestsColderC);

    /// <summary>Phoenix by the climate is −16 °C (above). By hand: −12.3 − 7 = −19.3, so −20; −3.3 − 7 = −10.3, so −11, which the climate's −16 undercuts.</summary>
    [Theory]
    [InlineData(-12.3, -10.1, -20, "Weather file: coldest hour −12.3 °C (with any sun −10.1 °C) − 7 K = −20 °C, rounded down; warmer by the built-in climate: January mean")]
    [InlineData(-3.3, -1.1, -16, "Built-in climate: January mean 9.7 °C − half the daily range 7.4 K − 18 K = −16 °C, rounded down; warmer by the weather file: coldest hour −3.3 °C")]
    public void The_colder_of_weather_file_and_climate_is_taken_and_both_are_shown(double fileC, double daylightC, double designC, string says)
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix()) with { WeatherYear = ClimatePlans.Cold(fileC, daylightC) });

        Assert.Equal(designC, design.ColdestAirC);
        Assert.StartsWith(says, Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_s_own_coldest_stands_before_a_weather_file_that_is_far_colder_and_is_pointed_out()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -10)) with { WeatherYear = ClimatePlans.Cold(-25, null) });

        Assert.Equal(-10, design.ColdestAirC);
        Assert.Equal(-32, design.ClimateSuggestsColderC);
        Assert.Contains("The weather file suggests", design.Assumptions[0].Why, StringComparison.Ordinal);
    }

    /// <summary>By hand: −8 − 7 = −15, so 8 K under it is −7, and −9 is within; but an hour of −10 °C has been: −10 − 7 = −17, and the climate says −16.</summary>
    [Theory]
    [InlineData(-8, -9, null)]
    [InlineData(-10, -9, -17.0)]
    public void A_plan_s_own_coldest_is_doubted_where_an_hour_of_the_file_was_colder(double fileC, double ownC, double? suggestedC)
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(ownC)) with { WeatherYear = ClimatePlans.Cold(fileC, null) });

        Assert.Equal((ownC, suggestedC), (design.ColdestAirC, design.ClimateSuggestsColderC));
        Assert.Equal((Math.Floor(fileC - 7), -16), (design.ColdestByFileC, design.ColdestByClimateC));
        Assert.Contains("by the", design.Assumptions[0].Why, StringComparison.Ordinal);
    }

    /// <summary>ISO 2533: 6.5 K a kilometre. By hand: −10 − 7 − 6.5 = −23.5, so −24. A plan that lies lower is not made warmer, nor one of unknown height colder.</summary>
    [Theory]
    [InlineData(1340, false, -24)]
    [InlineData(100, false, -17)]
    [InlineData(1340, true, -17)]
    public void A_place_above_the_weather_file_is_taken_colder(double elevationM, bool isAssumed, double byFileC) =>
        Assert.Equal(byFileC, DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix() with { ElevationM = elevationM, IsElevationAssumed = isAssumed }) with { WeatherYear = ClimatePlans.Cold(-10, null) }).ColdestByFileC);

    [Fact]
    public void At_sea_the_weather_file_stands_alone()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(new Place(40, -45, 0, null, "ship.csv")) with { WeatherYear = ClimatePlans.Cold(4, 6, 0) });

        Assert.Equal(-3, design.ColdestAirC);
    }

    [Fact]
    public void Without_a_place_the_coldest_is_assumed_openly()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(null));

        Assert.Equal(-25, design.ColdestAirC);
        Assert.Contains("1.5 to 2 %", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Why);
        Assert.Equal(40, design.HottestAirC);
    }

    [Theory]
    [InlineData(-75, 20, -60)]
    [InlineData(88, 0, -60)]
    [InlineData(40, -45, -25)]
    public void Off_the_map_the_safe_side_is_taken(double latitudeDeg, double longitudeDeg, double coldestC)
    {
        var design = DesignTemperatures.For(ClimatePlans.With(new Place(latitudeDeg, longitudeDeg, 0, null, null)));

        Assert.Equal(coldestC, design.ColdestAirC);
        Assert.Contains("does not know this place", design.Assumptions[0].Why);
    }

    /// <summary>Same script: Phoenix July 29.98 °C + 16.42/2 K + 13 K = 51.19 °C, so 52 °C; a NOCT of 45 °C rises 31.25 K on a rack, the usual panel 29.384 K.</summary>
    [Fact]
    public void The_hottest_cell_follows_the_mount_and_the_label()
    {
        var plan = ClimatePlans.With(
            ClimatePlans.Phoenix(),
            Goal.Year,
            ClimatePlans.Stock("rack"),
            ClimatePlans.Stock("rated", noctC: 45),
            ClimatePlans.Stock("lying", kind: MountKind.FlatOnGround));

        var design = DesignTemperatures.For(plan);

        Assert.Equal(52, design.HottestAirC);
        Assert.Equal([52 + 29.384, 52 + 31.25, 52 + 57.527], design.HottestCellByStockC, (a, b) => Math.Abs(a - b) < 0.001);
        Assert.Equal(design.HottestCellByStockC[2], design.HottestCellC);
        Assert.Contains("lying + 58 K = 110 °C", design.HotWorking);
    }

    [Fact]
    public void Anywhere_on_Earth_the_design_brackets_the_climate() =>
        Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-400, 5000]).Sample((latitudeDeg, longitudeDeg, elevationM) =>
        {
            Place place = new(latitudeDeg, longitudeDeg, elevationM, null, null);
            var design = DesignTemperatures.For(ClimatePlans.With(place));
            MonthlyClimate? climate = WorldClimate.Of(place);
            return design.ColdestAirC is >= -90 and <= 10
                && design.HottestAirC > design.ColdestAirC
                && (climate is null || (design.ColdestAirC <= climate.Coldest.MeanDailyMinC - 18 && design.HottestAirC >= climate.Hottest.MeanDailyMaxC + 13));
        });
}

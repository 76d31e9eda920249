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
        Assert.Equal("-16 °C", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Value);
        Assert.StartsWith("January mean 9.7 °C - half the daily range 7.4 K - 18 K = -16 °C", design.ColdWorking);
        Assert.Null(design.ClimateSuggestsColderC);
    }

    [Fact]
    public void The_plan_s_own_coldest_comes_first()
    {
        var design = DesignTemperatures.For(ClimatePlans.With(ClimatePlans.London(coldestC: -14.5)));

        Assert.Equal(-14.5, design.ColdestAirC);
        Assert.Equal("coldest air -14.5 °C, the plan's own figure", design.ColdWorking);
        Assert.DoesNotContain(design.Assumptions, a => a.What == "coldest air temperature");
        Assert.Null(design.ClimateSuggestsColderC);
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
        Assert.Contains("-24 °C if the place lies 2000 m high", Assert.Single(design.Assumptions, a => a.What == "coldest air temperature").Why);
    }

    [Fact]
    public void A_height_left_out_matters_not_where_the_plan_states_its_coldest() =>
        Assert.Null(DesignTemperatures.For(ClimatePlans.With(ClimatePlans.Phoenix(coldestC: -14) with { ElevationM = 0, IsElevationAssumed = true })).ClimateSuggestsColderC);

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

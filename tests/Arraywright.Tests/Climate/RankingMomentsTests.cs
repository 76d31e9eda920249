using Arraywright.Climate;
using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Climate;

public class RankingMomentsTests
{
    [Fact]
    public void Hours_times_sun_add_to_the_year_s_irradiation_anywhere() =>
        Gen.Select(Gen.Double[-56, 84], Gen.Double[-180, 180]).Sample((latitudeDeg, longitudeDeg) =>
        {
            Place place = new(latitudeDeg, longitudeDeg, 100, null, null);
            var ranking = RankingMoments.For(ClimatePlans.With(place));
            MonthlyClimate? climate = WorldClimate.Of(place);
            double sumKWhPerM2 = ranking.Moments.Sum(moment => moment.WeightH * moment.ByStock[0].IrradianceWPerM2 / 1000);
            return ranking.IsYearEnergy
                ? Math.Abs(sumKWhPerM2 - climate!.AnnualHorizontalKWhPerM2) < 1e-9 * sumKWhPerM2 && ranking.Moments.Sum(moment => moment.WeightH) < 8760
                : climate is null && Math.Abs(ranking.Moments.Sum(moment => moment.WeightH) - 1) < 1e-12;
        });

    /// <summary>By hand, from the published European weights and London's climate in the fit: 2.873 kWh/m² a day and 0.20 of it at 1000 W/m².</summary>
    [Fact]
    public void London_has_two_hundred_hours_of_full_sun()
    {
        var ranking = RankingMoments.For(ClimatePlans.With(ClimatePlans.London()));

        Assert.True(ranking.IsYearEnergy);
        Assert.Equal(12, ranking.Moments.Length);
        double fullSunH = ranking.Moments.Where(moment => moment.ByStock[0].IrradianceWPerM2 == 1000).Sum(moment => moment.WeightH);
        Assert.Equal(0.20 * 2.873 * 365, fullSunH, 0.01 * fullSunH);
    }

    [Fact]
    public void The_warmer_half_of_the_year_has_more_sun_and_hotter_cells()
    {
        var ranking = RankingMoments.For(ClimatePlans.With(ClimatePlans.London()));

        for (int level = 0; level < 6; level++)
        {
            Moment cool = ranking.Moments[level];
            Moment warm = ranking.Moments[level + 6];
            Assert.Equal(cool.ByStock[0].IrradianceWPerM2, warm.ByStock[0].IrradianceWPerM2);
            Assert.True(cool.WeightH < warm.WeightH);
            Assert.True(cool.ByStock[0].CellC < warm.ByStock[0].CellC);
        }
    }

    [Theory]
    [InlineData(33.43, -112.0, 340, "CEC")]
    [InlineData(51.48, -0.45, 25, "European")]
    public void Sunny_places_take_the_sunny_weighting(double latitudeDeg, double longitudeDeg, double elevationM, string name)
    {
        var ranking = RankingMoments.For(ClimatePlans.With(new Place(latitudeDeg, longitudeDeg, elevationM, null, null)));

        Assert.Contains(name, ranking.Assumptions[0].Value);
        Assert.Equal(name == "CEC" ? 0.75 : 0.5, ranking.Moments.Take(6).MaxBy(m => m.WeightH * m.ByStock[0].IrradianceWPerM2)!.ByStock[0].IrradianceWPerM2 / 1000);
    }

    /// <summary>By hand: without a place, air 5 and 20 °C; an open rack at 500 W/m² and 1 m/s rises 500·exp(−3.635) + 1.5 = 14.69 K.</summary>
    [Fact]
    public void Without_a_place_the_weights_are_shares_and_the_air_is_middling()
    {
        var ranking = RankingMoments.For(ClimatePlans.With(null));

        Assert.False(ranking.IsYearEnergy);
        Assert.Equal(1, ranking.Moments.Sum(moment => moment.WeightH), 1e-12);
        double[] halfSunC = [.. ranking.Moments.Where(m => m.ByStock[0].IrradianceWPerM2 == 500).Select(m => m.ByStock[0].CellC)];
        Assert.Equal([19.69, 34.69], halfSunC, (a, b) => Math.Abs(a - b) < 0.01);
        Assert.Contains(ranking.Assumptions, a => a.Why.Contains("No place is named"));
    }

    [Fact]
    public void Near_the_pole_the_darker_half_year_still_has_some_sun()
    {
        var ranking = RankingMoments.For(ClimatePlans.With(new Place(84, -33, 0, null, null)));

        Assert.True(ranking.IsYearEnergy);
        Assert.All(ranking.Moments, moment => Assert.True(double.IsFinite(moment.ByStock[0].CellC) && moment.WeightH > 0));
    }

    [Fact]
    public void Each_kind_of_panel_sees_its_own_mount_and_its_own_hours_of_shade()
    {
        Shade morning = new(0, [], [new ShadeHours(6, 12, 1)]);
        var ranking = RankingMoments.For(ClimatePlans.With(
            ClimatePlans.London(),
            Goal.Year,
            ClimatePlans.Stock("rack"),
            ClimatePlans.Stock("lying", kind: MountKind.FlatOnGround),
            ClimatePlans.Stock("shaded", shade: morning)));

        Assert.All(ranking.Moments, moment =>
        {
            Assert.Equal(3, moment.ByStock.Length);
            Assert.True(moment.ByStock[1].CellC > moment.ByStock[0].CellC);
            Assert.Equal(moment.ByStock[0].IrradianceWPerM2 / 2, moment.ByStock[2].IrradianceWPerM2, 1e-9);
        });
        Assert.Equal("50 % less sun all day", Assert.Single(ranking.Assumptions, a => a.What == "shade by the hour on shaded").Value);
    }

    [Fact]
    public void Shade_that_lasts_all_day_is_left_to_the_panel_model()
    {
        var clear = RankingMoments.For(ClimatePlans.With(ClimatePlans.London()));
        var shaded = RankingMoments.For(ClimatePlans.With(ClimatePlans.London(), Goal.Year, ClimatePlans.Stock("shed-120", shade: new Shade(0.3, [], []))));

        Assert.Equal(clear.Moments.Select(m => m.ByStock[0]), shaded.Moments.Select(m => m.ByStock[0]));
    }

    [Fact]
    public void The_peak_is_one_moment_under_standard_conditions_unless_stated()
    {
        Plan plan = ClimatePlans.With(ClimatePlans.London(), Goal.Peak, ClimatePlans.Stock("a"), ClimatePlans.Stock("b"));

        var standard = RankingMoments.For(plan);
        var stated = RankingMoments.For(plan, new Ambient(900, 12, 3).ByStock(plan));

        Moment moment = Assert.Single(standard.Moments);
        Assert.Equal(1, moment.WeightH);
        Assert.Equal([Conditions.Standard, Conditions.Standard], moment.ByStock);
        Assert.Single(standard.Assumptions);
        Assert.Equal(900, Assert.Single(stated.Moments).ByStock[1].IrradianceWPerM2);
        Assert.Empty(stated.Assumptions);
        Assert.False(stated.IsYearEnergy);
    }

    [Fact]
    public void Stated_conditions_must_fit_the_pile() =>
        Assert.Throws<ArgumentException>(() => RankingMoments.For(ClimatePlans.With(null, Goal.Peak), []));

    [Fact]
    public void What_is_not_used_yet_is_said()
    {
        var ranking = RankingMoments.For(ClimatePlans.With(ClimatePlans.London() with { Weather = "north.epw" }, Goal.Day));

        Assert.Contains(ranking.Assumptions, a => a.Why.Contains("north.epw"));
        Assert.Contains(ranking.Assumptions, a => a.Why.Contains("no date"));
    }
}

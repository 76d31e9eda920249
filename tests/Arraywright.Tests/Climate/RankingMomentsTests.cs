using Arraywright.Climate;
using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Climate;

public class RankingMomentsTests
{
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
    public void Each_kind_of_panel_sees_its_own_mount_and_its_own_hours_of_shade()
    {
        Shade morning = new(0, [], [new ShadeHours(6, 12, 1)]);
        var ranking = RankingMoments.For(ClimatePlans.With(
            null,
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
        var clear = RankingMoments.For(ClimatePlans.With(null));
        var shaded = RankingMoments.For(ClimatePlans.With(null, Goal.Year, ClimatePlans.Stock("shed-120", shade: new Shade(0.3, [], []))));

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
    public void Without_a_place_no_day_is_better_than_another() =>
        Assert.Contains(RankingMoments.For(ClimatePlans.With(null, Goal.Day)).Assumptions, a => a.What == "day to be best on");
}

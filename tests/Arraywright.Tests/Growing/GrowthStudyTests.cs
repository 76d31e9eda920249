using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Growing;
using Arraywright.Limits;
using Arraywright.Planning;
using static Arraywright.Tests.Growing.GrowingPlans;

namespace Arraywright.Tests.Growing;

public sealed class GrowthStudyTests
{
    private static readonly DcInput Store = new()
    {
        Name = "store",
        MaxVoltageV = 60,
        MaxCurrent = new Limit(13, Manual),
        MaxShortCircuitCurrent = new Limit(20, Manual),
        MaxPower = new Limit(500, Manual),
    };

    private static GrowthResult Grow(Plan plan, GrowthOptions? options = null) =>
        GrowthStudy.Run(plan, SyntheticYear.For(plan)!, options ?? GrowthOptions.Default, null, CancellationToken.None);

    private static Plan Mill(params PanelStock[] candidates) => With(Store, null, Stock("yard", 2, 95)) with { Candidates = [.. candidates] };

    [Fact]
    public void Every_point_is_what_the_year_of_its_wiring_gives()
    {
        Plan plan = Mill(Stock("loft", 1, 110, 24.6, 11.06));
        WeatherYear weather = SyntheticYear.For(plan)!;
        GrowthResult result = Grow(plan);
        Assert.Equal(2, result.Curves.Length);
        foreach (GrowthCurve curve in result.Curves)
        {
            foreach (GrowthPoint point in curve.Points)
            {
                Plan grown = GrowthWalk.Grown(plan, curve.Kind, Math.Max(1, point.More));
                Plan stated = grown with { Inputs = [new PlannedInput(Store, point.Design.Assignments[0].Wiring)] };
                YearResult year = YearStudy.Run(stated, weather, EnergyOptions.Default, null, CancellationToken.None);
                Assert.Equal(Level.Go, year.Verdict);
                Assert.Equal(year.Energy.Total.DeliveredKWh, point.DeliveredKWh, 1e-9);
                Assert.Equal(year.Energy.Total.ClippedKWh / (year.Energy.Total.ClippedKWh + point.DeliveredKWh), point.ClippedShare, 1e-9);
            }
        }
    }

    [Fact]
    public void More_panels_never_bring_less_and_gains_add_up()
    {
        GrowthCurve curve = Grow(Mill(), new GrowthOptions { Of = "yard", Most = 6 }).Curves.Single();
        Assert.Equal(7, curve.Points.Length);
        for (int more = 1; more < curve.Points.Length; more++)
        {
            Assert.Equal(more, curve.Points[more].More);
            Assert.True(curve.Points[more].GainKWh >= 0);
            Assert.Equal(curve.Points[more].DeliveredKWh, curve.Points[more - 1].DeliveredKWh + curve.Points[more].GainKWh, 1e-9);
        }

        // By hand: 20 A bear two strings of 6.72 A, not three; 60 V bear two in a string, not three. So four panels are the end of it.
        Assert.Equal(2, curve.Worth.More);
        Assert.Equal(curve.Points[2].DeliveredKWh, curve.Points[6].DeliveredKWh, 1e-9);
        Assert.Equal(2 * 95 / (curve.Points[2].DeliveredKWh - curve.Points[0].DeliveredKWh), curve.CostPerYearlyKWh!.Value, 1e-9);
    }

    [Fact]
    public void What_only_a_maker_could_allow_is_told_and_does_not_count()
    {
        GrowthCurve curve = Grow(Mill(), new GrowthOptions { Of = "yard", Most = 4 }).Curves.Single();
        Assert.All(curve.Points, point => Assert.Equal(Level.Go, point.Verdict));
        GrowthWish wish = curve.Points[4].IfAsked!;
        Assert.Equal(Level.Ask, wish.Design.Verdict);
        Assert.True(wish.DeliveredKWh > 1.1 * curve.Points[4].DeliveredKWh);
    }

    [Fact]
    public void Where_nothing_may_be_connected_nothing_is_recommended()
    {
        GrowthResult result = Grow(With(Store, null, Stock("mast", 1, 50, vocV: 70)));
        Assert.Null(result.Best);
        Assert.Equal(Level.Stop, result.Verdict);
        Assert.All(result.Curves.Single().Points, point => Assert.Equal(0, point.DeliveredKWh));
    }

    [Fact]
    public void The_cheapest_kWh_comes_first_and_a_label_in_doubt_is_not_recommended()
    {
        PanelStock cheap = Stock("cheap", 1, 60, 24.6, 11.06);
        PanelStock dear = Stock("dear", 1, 160, 24.6, 11.06);
        GrowthResult sound = Grow(Mill(dear, cheap));
        Assert.True(sound.IsByCost);
        Assert.Equal(["cheap", "yard", "dear"], sound.Curves.Select(curve => curve.Kind.Panel.Name));
        Assert.Equal("cheap", sound.Best!.Kind.Panel.Name);

        GrowthResult doubted = Grow(Mill(dear, cheap) with { CandidateDoubts = [new LabelDoubt("cheap", "vmp", "Odd.", false)] });
        Assert.Equal("yard", doubted.Best!.Kind.Panel.Name);
        GrowthCurve last = doubted.Curves.Single(curve => curve.IsInDoubt);
        Assert.Equal("cheap", last.Kind.Panel.Name);
        Assert.All(last.Points.Skip(1), point => Assert.Equal(Level.Ask, point.Verdict));
    }

    [Fact]
    public void Without_prices_every_kind_at_hand_is_tried_and_the_most_energy_comes_first()
    {
        GrowthResult result = Grow(With(Store, null, Stock("small", 1, iscA: 3), Stock("large", 1, iscA: 6)));
        Assert.False(result.IsByCost);
        Assert.Equal("large", result.Best!.Kind.Panel.Name);
        Assert.Equal(2, result.Curves.Length);
        Assert.All(result.Curves, curve => Assert.Null(curve.CostPerYearlyKWh));
    }

    [Fact]
    public void A_name_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => Grow(Mill(), new GrowthOptions { Of = "moon" }));
}

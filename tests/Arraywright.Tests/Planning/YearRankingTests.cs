using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Tests.Planning;

/// <summary>The answer to a plan in terms of its year, or of its days.</summary>
public sealed class YearRankingTests
{
    private static PanelStock Stock(string name, int count, double powerW, double openV, double shortA, double fuseA = 20) => new(
        PanelReader.Read(new PanelLabel { Name = name, PowerW = powerW, OpenCircuitV = openV, ShortCircuitA = shortA, MaximumPowerV = 0.82 * openV, MaximumPowerA = powerW / (0.82 * openV), MaxSeriesFuseA = fuseA }).Panel!,
        count,
        Shade.None,
        null);

    private static Plan Farm(Goal goal = Goal.Year, DaySpan? dates = null) => new()
    {
        Name = "farm",
        Goal = goal,
        Dates = dates,
        Place = new Place(54.6, -3.1, 200, -14, null),
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [Stock("a", 2, 120, 22.9, 6.72), Stock("b", 2, 100, 21.6, 6.1), Stock("c", 1, 60, 21, 3.8)],
        Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 60, MaxCurrent = new Limit(9, new Evidence(EvidenceKind.Maker, 2, null)), MaxShortCircuitCurrent = new Limit(40, Evidence.Nothing), MaxPower = new Limit(320, Evidence.Nothing) }, null)],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
        Assumed = [],
        Doubts = [],
    };

    private static PlanResult Answer(Plan plan) => Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None);

    private static Plan Stating(Plan plan, Design design) =>
        plan with { Inputs = [.. plan.Inputs.Select((input, i) => input with { StatedWiring = design.Assignments[i].Wiring })] };

    [Fact]
    public void Every_design_has_the_energy_that_its_year_has()
    {
        Plan plan = Farm();
        PlanResult result = Answer(plan);
        Assert.True(result.Designs.Length > 1);
        foreach (Design design in result.Designs)
        {
            Plan stated = Stating(plan, design);
            YearResult year = YearStudy.Run(stated, SyntheticYear.For(plan)!, EnergyOptions.Default, null, CancellationToken.None);
            Assert.Equal(year.Energy.Total.DeliveredKWh, design.EnergyKWh!.Value, 1e-9 * design.EnergyKWh.Value);
            Assert.Equal(design.EnergyKWh, Planner.Check(stated, PlannerOptions.Default).Designs[0].EnergyKWh);
        }
    }

    [Fact]
    public void The_bound_lies_above_every_design_that_may_be_connected_and_the_gap_says_how_far()
    {
        PlanResult result = Answer(Farm());
        SearchReport search = result.Search!;
        Assert.True(search.Proved);
        Assert.All(result.Designs.Where(design => design.Verdict == Level.Go), design => Assert.True(design.ObjectiveW <= search.BoundW * (1 + 1e-12)));
        Assert.Equal(100 * ((search.BoundW / result.Designs[0].ObjectiveW) - 1), search.GapPercent, 1e-9);
        ExactComparison exact = search.Exact!.Value;
        Assert.InRange(exact.LikelyGapPercent, 0, search.GapPercent);
        Assert.InRange(search.GapPercent, 0, 0.05);
        Assert.InRange(exact.LookedAt, 1, search.Feasible);
        Assert.True(exact.MomentsProved);
        Assert.Equal(24, exact.Moments);
    }

    /// <summary>Nine unlike panels: too many wirings to look at each, so that the panels alone bound them.</summary>
    [Fact]
    public void Of_a_large_family_it_says_what_is_proved_over_every_hour_and_what_is_likely()
    {
        Plan plan = Farm() with { Panels = [.. Enumerable.Range(0, 9).Select(i => Stock($"p{i}", 1, 80 + (9 * i), 21 + (0.2 * i), 1.07 * (80 + (9 * i)) / (0.82 * (21 + (0.2 * i))), fuseA: 100))] };
        plan = plan with { Inputs = [plan.Inputs[0] with { Input = plan.Inputs[0].Input with { MaxPower = null, MaxCurrent = new Limit(90, Evidence.Nothing), MaxShortCircuitCurrent = new Limit(90, Evidence.Nothing) } }] };
        SearchReport search = Answer(plan).Search!;
        ExactComparison exact = search.Exact!.Value;
        Assert.InRange(search.Feasible, 20_001, double.MaxValue);
        Assert.Equal(0, exact.LookedAt);
        Assert.Equal(search.GapPercent <= 0.05, search.Proved);
        Assert.InRange(exact.LikelyGapPercent, 0, search.GapPercent);
    }

    /// <summary>Two routes: every wiring of one input and three unequal panels, solved over the whole year one by one.</summary>
    [Fact]
    public void No_wiring_of_the_family_passes_the_bound_in_the_exact_year()
    {
        Plan plan = Farm() with { Panels = [Stock("a", 1, 120, 22.9, 6.72), Stock("b", 1, 100, 21.6, 6.1), Stock("c", 1, 60, 21, 3.8)] };
        PlanResult result = Answer(plan);
        SunSeries series = SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Of(plan));
        PlanPhysics physics = new(plan);
        double boundKWh = result.Designs[0].EnergyKWh!.Value * (1 + (result.Search!.GapPercent / 100));
        string[] all = ["a", "b", "c", "a + b", "a + c", "b + c", "a | b", "a | c", "b | c", "a | b | c", "(a + b) | c", "(a + c) | b", "(b + c) | a", "(a | b) + c", "(a | c) + b", "(b | c) + a"];
        double best = 0;
        foreach (string text in all)
        {
            Assert.True(WiringText.TryParse(text, out Wiring? wiring, out _));
            double kWh = EnergyRun.Of(physics, [wiring], series, EnergyOptions.Default).Total.DeliveredKWh;
            Assert.True(kWh <= boundKWh * (1 + 1e-9), text);
            best = Math.Max(best, kWh);
        }

        Assert.Equal(best, result.Designs[0].EnergyKWh!.Value, 0.0006 * best);
    }

    [Fact]
    public void A_plan_for_a_day_is_ranked_by_that_day()
    {
        Plan midsummer = Farm(Goal.Day, DaySpan.Of(6, 21));
        Plan trip = Farm(Goal.Day, new DaySpan(12, 20, 1, 5));
        double dayKWh = Answer(midsummer).Designs[0].EnergyKWh!.Value;
        DayResult day = DayStudy.Run(Stating(midsummer, Answer(midsummer).Designs[0]), SyntheticYear.For(midsummer)!, new DateOnly(2024, 6, 21), false, EnergyOptions.Default, null, CancellationToken.None);
        Assert.Equal(day.Energy.Total.DeliveredKWh, dayKWh, 1e-9);
        Assert.InRange(Answer(trip).Designs[0].EnergyKWh!.Value, 0.5, 17 * 2.0);
        Assert.Contains(Answer(Farm(Goal.Day)).Assumed, assumption => assumption.Why.Contains("names no \"date\"", StringComparison.Ordinal));
    }

    [Fact]
    public void On_a_day_without_sun_the_whole_year_ranks_and_says_so()
    {
        Plan dark = Farm(Goal.Day, DaySpan.Of(12, 21)) with { Place = new Place(70, 25, 20, -30, null) };
        PlanResult result = Answer(dark);
        Assert.Null(result.Dates);
        Assert.Equal(Answer(dark with { Goal = Goal.Year, Dates = null }).Designs[0].EnergyKWh, result.Designs[0].EnergyKWh);
        Assert.Contains(result.Assumed, assumption => assumption.Why == "The weather has no sun on 12-21.");
        Assert.Equal(DaySpan.Of(6, 21), Answer(Farm(Goal.Day, DaySpan.Of(6, 21))).Dates);
    }

    [Fact]
    public void Where_the_weather_is_unknown_the_standard_weighting_ranks()
    {
        PlanResult result = Answer(Farm() with { Place = null });
        Assert.Null(result.Search!.Exact);
        Assert.Null(result.Designs[0].EnergyKWh);
    }

    [Theory]
    [InlineData(12, 31, true)]
    [InlineData(1, 5, true)]
    [InlineData(1, 6, false)]
    [InlineData(12, 19, false)]
    public void Days_over_new_year_hang_together(int month, int day, bool within) =>
        Assert.Equal(within, new DaySpan(12, 20, 1, 5).Has(new DateTime(2025, month, day)));
}

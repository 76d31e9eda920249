using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Planning;
using Arraywright.Sky;
using Arraywright.Tests.Climate;

namespace Arraywright.Tests.Energy;

/// <summary>What a memory keeps changes no figure: each plan is answered as if it were the only one.</summary>
public sealed class SunMemoryTests
{
    /// <summary>Plans that differ in one thing each that the sun on the panels, or the heat in them, depends on.</summary>
    private static IEnumerable<Plan> Plans()
    {
        Plan plan = With(ClimatePlans.With(ClimatePlans.London()));
        Place place = plan.Place!;
        yield return plan;
        yield return plan with { Place = place with { LatitudeDeg = 45 } };
        yield return plan with { Place = place with { ElevationM = 900 } };
        yield return plan with { Place = place with { AlbedoFractions = [0.6] } };
        yield return plan with { Place = place with { AlbedoFractions = [0.3] } };
        yield return plan with { Place = place with { Horizon = new HorizonProfile([new(0, 20), new(180, 25)]) } };
        yield return plan with { Mount = plan.Mount with { TiltDeg = 70 } };
        yield return plan with { Mount = plan.Mount with { SoilingFraction = 0.2 } };
        yield return plan with { Mount = plan.Mount with { Kind = MountKind.FlatOnGround } };
        yield return plan with { Sky = SkyModel.Isotropic };
        yield return plan with { Panels = [ClimatePlans.Stock("shed-120", noctC: 55)] };
        yield return plan with { Panels = [ClimatePlans.Stock("shed-120", kind: MountKind.CloseRoof)] };
        yield return plan with { Panels = [ClimatePlans.Stock("shed-120", shade: new Shade(0, [], [new ShadeHours(8, 13, 0.8)]))] };
        yield return plan with { Goal = Goal.Peak };
        yield return plan with { Goal = Goal.Day, Dates = DaySpan.Of(6, 21) };
        yield return plan with { WeatherYear = ClimatePlans.Cold(-5, 2) };
    }

    private static Plan With(Plan plan) => plan with
    {
        Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 60 }, Wiring.InSeries([new Wiring.Single("shed-120"), new Wiring.Single("shed-120")]))],
    };

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(40)]
    public void Plans_that_come_by_turns_are_answered_as_alone(int most)
    {
        SunMemory memory = new(most);
        Plan[] plans = [.. Plans()];
        foreach (Plan plan in plans.Concat(plans.Reverse()).Append(plans[0]))
        {
            Assert.Equal(Figures(Planner.Check(plan, PlannerOptions.Default)), Figures(Planner.Check(plan, PlannerOptions.Default with { Memory = memory })));
        }
    }

    [Fact]
    public void The_plans_of_this_test_differ()
    {
        List<string> all = [.. Plans().Select(plan => Figures(Planner.Check(plan, PlannerOptions.Default)))];
        Assert.Equal(all.Count, all.Distinct().Count());
    }

    [Fact]
    public void Plans_that_differ_in_their_labels_alone_share_one_sun()
    {
        SunMemory memory = new(2);
        Plan plan = With(ClimatePlans.With(ClimatePlans.London()));
        PlanPhysics one = new(plan, memory);
        PlanPhysics other = new(plan with { Name = "another", Panels = [plan.Panels[0] with { Count = 5 }] }, memory);
        Assert.Same(one.Sun, other.Sun);
    }

    private static string Figures(PlanResult result) => FormattableString.Invariant(
        $"{result.Designs[0].EnergyKWh:R} {result.Designs[0].PeakPowerW:R} {result.Designs[0].Assignments[0].VocWeather} {result.Temperatures!.ColdestDaylightCellC:R} {result.Temperatures.DaylightSource}");
}

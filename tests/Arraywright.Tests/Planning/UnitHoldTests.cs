using Arraywright.Gear;
using Arraywright.Planning;
using Arraywright.Tests.Parts;

namespace Arraywright.Tests.Planning;

/// <summary>What inputs draw by themselves, and what their unit takes of it.</summary>
public sealed class UnitHoldTests
{
    [Theory]
    [InlineData(150, true)]
    [InlineData(300, false)]
    public void Inputs_whose_unit_takes_less_than_both_together_say_so_and_the_lone_one_does_not(double maxW, bool held)
    {
        // Two panels of 120 W, warm, through copper: under 240 W together and over 150 W.
        DcInput left = new() { Name = "left", MaxVoltageV = 60, Unit = "box" };
        Plan plan = PartsScene.Plan("shed") with
        {
            Inputs = [new PlannedInput(left, PartsScene.Read("shed")), new PlannedInput(left with { Name = "right" }, PartsScene.Read("shed")), new PlannedInput(left with { Name = "lone", Unit = null }, PartsScene.Read("shed"))],
            Units = [new ChargingUnit("box", new Limit(maxW, Evidence.Nothing), null)],
        };
        Design design = Planner.Check(plan, PlannerOptions.Default).Designs[0];
        double offeredW = design.Assignments[0].Operating.PowerW + design.Assignments[1].Operating.PowerW;
        UnitHold? expected = held ? new UnitHold("box", maxW, offeredW) : null;
        Assert.Equal([expected, expected, null], design.Assignments.Select(assignment => assignment.HeldByUnit));
        Assert.Equal(Math.Min(maxW, offeredW) + design.Assignments[2].Operating.PowerW, design.PeakPowerW, 1e-9);
    }
}

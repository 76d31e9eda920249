using Arraywright.Electrical;
using Arraywright.Planning;
using Arraywright.Tests.Growing;

namespace Arraywright.Tests.Planning;

/// <summary>What meters are said to show at the parts of a design.</summary>
public sealed class ReadingStudyTests
{
    private static PlanResult Checked(string wiring)
    {
        Assert.True(WiringText.TryParse(wiring, out Wiring? stated, out _));
        Plan plan = GrowingPlans.With(GrowingPlans.Open, null, GrowingPlans.Stock("a", 4), GrowingPlans.Stock("b", 2, vocV: 21.5, iscA: 5.9));
        return Planner.Check(plan with { Inputs = [plan.Inputs[0] with { StatedWiring = stated }] }, PlannerOptions.Default);
    }

    [Fact]
    public void The_whole_reads_what_the_design_says()
    {
        PlanResult result = Checked("a + b | 2*a");
        Assignment assignment = result.Designs[0].Assignments[0];
        ArrayReading reading = ReadingStudy.Of(result.Plan, result.Designs[0], PlannerOptions.Default)[0]!;
        Assert.Equal(assignment.VocColdV, reading.OpenCold.VoltageV);
        Assert.Equal(assignment.Operating.VoltageV, reading.AtWork!.VoltageV);
        Assert.Equal(assignment.Operating.CurrentA, reading.AtWork.CurrentA, 1e-7);
        Assert.Equal(assignment.Operating.CurrentA, reading.AtWork.Parts.Sum(part => part.CurrentA), 1e-7);
    }

    [Fact]
    public void In_the_cold_volts_add_up_along_a_string_and_the_highest_branch_counts()
    {
        PlanResult result = Checked("a + b | 2*a");
        OpenReading open = ReadingStudy.Of(result.Plan, result.Designs[0], PlannerOptions.Default)[0]!.OpenCold;
        Assert.Equal(open.Parts.Max(part => part.VoltageV), open.VoltageV);
        Assert.All(open.Parts, part => Assert.Equal(part.Parts.Sum(inner => inner.VoltageV), part.VoltageV, 1e-9));

        // 22.9 V · (1 + 0.29 %/K · (25 + 14) K) · (1 + 3 %) by hand, at -14 °C: the least that a panel a shows.
        Assert.True(open.Parts.SelectMany(part => part.Parts).Max(panel => panel.VoltageV) >= 22.9 * (1 + (0.0029 * 39)) * 1.03 - 1e-9);
    }

    [Fact]
    public void An_input_without_wiring_has_no_reading_and_one_that_does_not_start_none_at_work()
    {
        PlanResult result = Checked("a");
        Design design = result.Designs[0];
        Design none = design with { Assignments = [design.Assignments[0] with { Wiring = null }] };
        Assert.Null(Assert.Single(ReadingStudy.Of(result.Plan, none, PlannerOptions.Default)));
        Design off = design with { Assignments = [design.Assignments[0] with { Operating = new OperatingPoint(20, 0, 0, LimitedBy.Off, 0, 0) }] };
        ArrayReading reading = ReadingStudy.Of(result.Plan, off, PlannerOptions.Default)[0]!;
        Assert.Null(reading.AtWork);
        Assert.True(reading.OpenCold.VoltageV > 22.9);
    }
}

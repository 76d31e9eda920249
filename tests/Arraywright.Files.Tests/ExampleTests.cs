namespace Arraywright.Files.Tests;

public sealed class ExampleTests
{
    public static TheoryData<string> Names => [.. Repository.Examples.Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_example_reads_without_fault_or_doubt(string name)
    {
        PlanReading reading = PlanFile.Load(Path.Combine(Repository.Root, "examples", name));
        Assert.Empty(reading.Faults);
        Assert.NotNull(reading.Plan);
        Assert.Empty(reading.Plan.Doubts);
        Assert.All(reading.Plan.Inputs, input => Assert.NotNull(input.StatedWiring));
    }

    [Fact]
    public void There_are_at_least_six_examples() => Assert.True(Repository.Examples.Length >= 6);

    [Fact]
    public void The_starter_plan_reads_without_fault_or_doubt()
    {
        Plan plan = Plans.Read(StarterPlan.Text);
        Assert.Empty(plan.Doubts);
        Assert.Equal(2, plan.Panels.Length);
    }
}

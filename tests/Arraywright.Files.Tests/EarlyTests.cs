using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Files.Tests;

/// <summary>What a plan's answer begins with, told before all of it is there, against the whole.</summary>
public sealed class EarlyTests
{
    /// <summary>A long run whose size is open: it takes several rounds of search.</summary>
    private const string LongRun = """
        plan: Long run
        goal: peak
        panels:
          - {name: shed-120, count: 6, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A}
        inputs:
          - {name: store, max_voltage: 60 V, max_current: 30 A}
        cable: {length: 40 m}
        """;

    public static TheoryData<string> Texts => [.. Repository.Examples.Select(path => File.ReadAllText(path)), LongRun];

    [Theory]
    [MemberData(nameof(Texts))]
    public void What_is_told_early_is_what_the_answer_begins_with(string text)
    {
        List<PlanResult> told = [];
        PlanResult whole = Planner.Answer(Plans.Read(text), PlannerOptions.Default with { Early = told.Add }, null, TestContext.Current.CancellationToken);
        if (whole.Verdict == Level.Go)
        {
            PlanResult early = Assert.Single(told);
            PlanResult begun = whole with { Designs = [whole.Designs[0]], Cautions = early.Cautions };
            Assert.Equal(ResultJson.Write(begun, seconds: null), ResultJson.Write(early, seconds: null));
        }
        else
        {
            Assert.Empty(told);
        }
    }

    [Fact]
    public void A_long_run_gets_thicker_copper_than_the_thinnest()
    {
        List<PlanResult> told = [];
        Planner.Answer(Plans.Read(LongRun), PlannerOptions.Default with { Early = told.Add }, null, TestContext.Current.CancellationToken);
        Assert.True(Assert.Single(told).Plan.Cable.AreaMm2.Value > 4);
    }
}

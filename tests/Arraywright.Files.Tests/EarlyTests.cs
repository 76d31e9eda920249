using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Files.Tests;

/// <summary>What a plan's answer begins with, told before all of it is there, against the whole: alone where it may be connected without asking.</summary>
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
        (PlanResult Result, bool IsWhole)[] steps = Steps(text);
        PlanResult whole = steps[^1].Result;
        bool[] expected = whole.Verdict == Level.Go ? [false, true] : [true];
        Assert.Equal(expected, steps.Select(step => step.IsWhole));
        PlanResult early = steps[0].Result;
        PlanResult begun = whole with { Designs = [.. whole.Designs.Take(early.Designs.Length)], Cautions = early.Cautions };
        Assert.Equal(ResultJson.Write(begun, seconds: null), ResultJson.Write(early, seconds: null));
    }

    [Fact]
    public void A_long_run_is_told_with_the_copper_it_ends_with()
    {
        (PlanResult Result, bool IsWhole)[] steps = Steps(LongRun);
        Assert.True(steps[0].Result.Plan.Cable.AreaMm2.Value > 4);
        Assert.Equal(steps[^1].Result.Plan.Cable, steps[0].Result.Plan.Cable);
    }

    private static (PlanResult Result, bool IsWhole)[] Steps(string text) =>
        [.. Planner.Steps(Plans.Read(text), PlannerOptions.Default, null, TestContext.Current.CancellationToken)];
}

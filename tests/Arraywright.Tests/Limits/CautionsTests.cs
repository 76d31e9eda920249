using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Parts.Connecting;
using Arraywright.Planning;
using Arraywright.Tests.Parts;

namespace Arraywright.Tests.Limits;

/// <summary>What is dangerous to touch is said first wherever cautions are given. Limits: IEC 61140, IEC 60364-4-41, from memory.</summary>
public sealed class CautionsTests
{
    [Theory]
    [InlineData(26, false)]
    [InlineData(60, false)]
    [InlineData(60.1, true)]
    [InlineData(120.1, true)]
    [InlineData(420, true)]
    public void Above_sixty_volts_the_first_caution_is_that_it_can_kill(double highestV, bool isSaid)
    {
        string first = Cautions.For(highestV)[0];
        Assert.Equal(isSaid, first.Contains("can kill", StringComparison.Ordinal) && first.Contains("licensed electrician", StringComparison.Ordinal));
        Assert.Equal(isSaid, Cautions.For(highestV).Any(caution => caution.StartsWith("Insulated tools, insulating gloves, a meter", StringComparison.Ordinal)));
        Assert.Equal(highestV > 120, first.Contains("120 V, where extra-low voltage ends", StringComparison.Ordinal));
    }

    /// <summary>Sixteen panels of 22.9 V reach 366 V and more; two, 46 V, and with 25 °C below zero 52 V.</summary>
    [Theory]
    [InlineData("16*shed", true)]
    [InlineData("2*shed", false)]
    public void Every_answer_goes_by_the_voltage_of_its_own_leads(string wiring, bool isDangerous)
    {
        Plan plan = PartsScene.Plan(wiring);
        PlanResult result = Planner.Check(plan, PlannerOptions.Default);
        PartsList parts = PartsScene.Of(plan);
        ConnectionOrder order = ConnectionPlanner.Of(parts, StatedConditions.None);
        string[][] said =
        [
            [.. result.Cautions], [.. parts.Cautions], [.. CurveStudy.Of(result, PlannerOptions.Default)[0].Cautions],
            [.. order.Steps[0].Do], [.. order.Never.Select(one => one.Why)],
        ];
        Assert.All(said, texts => Assert.Equal(isDangerous, texts[0].Contains("can kill", StringComparison.Ordinal)));
        Assert.Equal(isDangerous, !order.Steps[0].Do.Any(text => text.Contains("Dry hands", StringComparison.Ordinal)));
    }
}

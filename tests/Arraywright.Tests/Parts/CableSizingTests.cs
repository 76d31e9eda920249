using System.Globalization;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Parts;
using Arraywright.Planning;
using CsCheck;
using static Arraywright.Tests.Parts.PartsScene;

namespace Arraywright.Tests.Parts;

/// <summary>A cable whose size the plan leaves open: what the list says is what the solver has.</summary>
public sealed class CableSizingTests
{
    private static readonly Cable Open = Copper with { AreaMm2 = Sourced.Assumed(4.0, "open"), StringAreaMm2 = Sourced.Assumed(4.0, "open") };

    private static Plan Opened(Plan plan, double lengthM) => plan with
    {
        Rules = RuleSet.Iec,
        Cable = Open with { LengthM = Sourced.Given(lengthM) },
        Assumed = [new Assumption(Cable.SizeName, "4 mm2", "open")],
    };

    [Theory]
    [InlineData(3, 4.0)]
    [InlineData(9, 6.0)]
    [InlineData(60, 35.0)]
    public void A_longer_run_takes_thicker_cable(double lengthM, double mm2)
    {
        // 12.7 A at 37.8 V: 3 % are 1.134 V, less 12.7 × 0.5 mΩ and 6.35 × 3 × 0.5 mΩ. 9 m: R ≤ 4.89 mΩ/m; at 50 °C 4 mm² has 5.69, 6 mm² 3.79.
        // 60 m: R ≤ 0.733 mΩ/m; 25 mm² has 0.889, 35 mm² 0.632.
        Plan sized = PartsScene.Of(Plan("2*shed | 2*shed", plan => Opened(plan, lengthM))).Plan;
        Assert.Equal(mm2, sized.Cable.AreaMm2.Value);
        Assert.Equal(Origin.Derived, sized.Cable.AreaMm2.Origin);
        Assert.StartsWith($"{mm2} mm²", Assert.Single(sized.Assumed, said => said.What == Cable.SizeName).Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("shed | shed | shed | shed | shed | shed | shed | shed", 5)]
    [InlineData("2*shed | 2*shed | 2*shed | 2*shed", 12)]
    [InlineData("shed + barn | 2*barn | 2*shed", 25)]
    [InlineData("2*shed + (shed | shed)", 40)]
    [InlineData("4*shed", 17)]
    public void A_cable_sized_for_3_percent_is_within_3_percent_by_the_finding_that_judges_it_and_both_say_one_figure(string wiring, double lengthM)
    {
        PartsList list = PartsScene.Of(Plan(wiring, plan => Opened(plan, lengthM)));
        Finding finding = Assert.Single(list.Pieces.SelectMany(piece => piece.Findings), finding => finding.Rule == "voltage_drop");
        Assert.InRange(finding.Value, 0.1, 3);
        string why = Assert.Single(list.Assumed, said => said.What == Cable.SizeName).Why;
        string said = why[(why.IndexOf("the drop is ", StringComparison.Ordinal) + 12)..].Split(' ')[0];
        Assert.Equal(finding.Value, double.Parse(said, CultureInfo.InvariantCulture), 0.051);

        // The next thinner size would not do: the drop is not less than the aim for nothing.
        ConductorSize[] offered = [.. ConductorSizing.Offered(RuleSet.Iec)];
        int at = Array.FindIndex(offered, size => size.AreaMm2 == list.Plan.Cable.AreaMm2.Value);
        Plan thinner = list.Plan with { Cable = list.Plan.Cable with { AreaMm2 = Sourced.Given(offered[Math.Max(0, at - 1)].AreaMm2) } };
        InputParts before = PartsScene.Of(thinner).Inputs[0];
        Assert.True(at == 0 || before.DropPercent > 3 || before.Pieces.Any(piece => piece is { Kind: PieceKind.Run } && piece.NeededA > piece.RatingA), $"{offered[at].Name}: {finding.Value} %");
    }

    [Fact]
    public void Where_even_the_thickest_drops_more_the_cable_says_so()
    {
        // 101.6 A over 2 × 5 m of 50 mm², 0.393 mΩ/m (IEC 60228 class 5, tinned) × 1.1179, are 0.446 V, and 0.5 mΩ at the unit and twice in a string
        // of 6.35 A are 0.057 V: 0.503 V, and hot panels give no more than about 16.7 V.
        PartsList list = PartsScene.Of(Plan(string.Join(" | ", Enumerable.Repeat("shed", 16)), plan => Opened(plan, 5)));
        Assert.Equal(ConductorSizing.Offered(RuleSet.Iec)[^1].AreaMm2, list.Plan.Cable.AreaMm2.Value);
        Assert.EndsWith($"the drop is {list.Inputs[0].DropPercent.ToString("0.00", CultureInfo.InvariantCulture)} % in strong sun, over the 3 % aimed at.", Assert.Single(list.Assumed, said => said.What == Cable.SizeName).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_size_stays() =>
        Assert.Equal(Sourced.Given(4.0), PartsScene.Of(Plan("2*shed | 2*shed", plan => plan with { Cable = Copper with { LengthM = Sourced.Given(60.0) } })).Plan.Cable.AreaMm2);

    [Fact]
    public void The_best_wiring_is_searched_and_judged_with_the_size_it_gets()
    {
        Plan plan = Opened(Plan("", bare => bare with { Panels = [Shed(4)] }, input => input with { MaxVoltageV = 60, MaxShortCircuitCurrent = new Limit(40, new Evidence(EvidenceKind.Maker, 0, null)) }), 15);
        PlanResult result = Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None);
        Plan stated = plan with { Inputs = [plan.Inputs[0] with { StatedWiring = result.Designs[0].Assignments[0].Wiring }] };
        PlanResult check = Planner.Check(stated, PlannerOptions.Default);
        Assert.Equal(check.Plan.Cable.AreaMm2.Value, result.Plan.Cable.AreaMm2.Value);
        Assert.Equal(check.Designs[0].PeakPowerW, result.Designs[0].PeakPowerW);
        Assert.Equal(result.Assumed.Single(said => said.What == Cable.SizeName), result.Plan.Assumed.Single(said => said.What == Cable.SizeName));

        // Told the size, the planner answers the same to the last bit.
        Plan told = plan with { Cable = result.Plan.Cable with { AreaMm2 = Sourced.Given(result.Plan.Cable.AreaMm2.Value), StringAreaMm2 = Sourced.Given(result.Plan.Cable.StringAreaMm2.Value) } };
        Assert.Equal(result.Designs.Select(design => design.ObjectiveW), Planner.Answer(told, PlannerOptions.Default, null, CancellationToken.None).Designs.Select(design => design.ObjectiveW));
    }

    [Fact]
    public void A_chosen_size_carries_at_least_the_design_current_and_a_thicker_one_no_less() =>
        Gen.Select(Gen.Double[0.5, 150], Gen.Int[0, 1], Gen.Int[0, 1], Gen.Int[0, 2], Gen.Double[-20, 85], Gen.Int[1, 40], Gen.Int[0, 2].Select(step => 60.0 + (15 * step))).Sample((designA, rules, kind, laying, ambientC, loaded, terminalC) =>
        {
            ConductorPlace place = new((RuleSet)rules, (CableClass)kind, (Laying)laying, ambientC, loaded, terminalC);
            ConductorChoice choice = ConductorSizing.Choose(new ConductorDuty(designA, designA / 1.4, 40, 10, 0), place, 0.05);
            Assert.True(!choice.IsEnough || (choice.Ampacity.CarriesA >= designA && choice.DropFraction <= 0.05 * (1 + 1e-9)));
            double before = 0;
            double dropBefore = double.PositiveInfinity;
            foreach (ConductorSize size in ConductorSizing.Offered(place.Rules))
            {
                ConductorChoice each = ConductorSizing.Judge(size, new ConductorDuty(designA, designA / 1.4, 40, 10, 0), place, 0.05);
                Assert.True(each.Ampacity.CarriesA >= before && each.DropFraction < dropBefore);
                Assert.True(size.AreaMm2 >= choice.Size.AreaMm2 || !each.IsEnough);
                (before, dropBefore) = (each.Ampacity.CarriesA, each.DropFraction);
            }
        });

    [Theory]
    [InlineData(40.7, -74.0, RuleSet.Us)]
    [InlineData(21.3, -157.8, RuleSet.Us)]
    [InlineData(54.6, -3.1, RuleSet.Iec)]
    [InlineData(-33.4, -70.6, RuleSet.Iec)]
    public void Rules_that_the_plan_does_not_name_go_by_the_place(double latitude, double longitude, RuleSet rules) =>
        Assert.Equal((rules, Origin.Assumed), (PartsRules.For(Plan("shed", plan => plan with { Place = new Place(latitude, longitude, 0, null, null) })).Value, PartsRules.For(Plan("shed", plan => plan with { Place = new Place(latitude, longitude, 0, null, null) })).Origin));
}

using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using CsCheck;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>Laws that hold for any wiring of two kinds of panel on any input.</summary>
public sealed class RuleProperties
{
    private static readonly Panel Other = Shed.WithoutCoefficient() with { Name = "other", OpenCircuitV = 31, ShortCircuitA = 9.1, MaxSeriesFuseA = null };

    private static readonly Gen<Wiring> Leaf = Gen.OneOf("shed-120", "other").Select(One);
    private static readonly Gen<Wiring> Block = Gen.OneOf(Leaf, Leaf.Array[2, 3].Select(Side));
    private static readonly Gen<Wiring> String = Gen.OneOf(Block, Block.Array[2, 4].Select(Row));
    private static readonly Gen<Wiring> Any = Gen.OneOf(String, String.Array[2, 4].Select(Side));

    private static Level Worst(RuleContext context) => DesignRules.Judge(context).Max(finding => finding.Level);

    [Fact]
    public void Over_the_highest_voltage_is_stop_whatever_the_evidence_says() =>
        Gen.Select(Any, Gen.Double[0.5, 0.999], Gen.Enum<EvidenceKind>(), Gen.Double[0, 3]).Sample((wiring, share, kind, exceed) =>
        {
            double coldV = ColdVoltage.Of(wiring.On(Input(1), Shed, Other));
            DcInput input = Input(coldV * share) with
            {
                MaxCurrent = Limit(1000, kind, exceed),
                MaxShortCircuitCurrent = Limit(1000, kind, exceed),
                MaxPower = Limit(1e6, kind, exceed),
            };
            Assert.Equal(Level.Stop, Worst(wiring.On(input, Shed, Other)));
        });

    [Fact]
    public void A_higher_limit_never_makes_the_verdict_worse() =>
        Gen.Select(Any, Gen.Double[10, 200], Gen.Double[1, 60], Gen.Double[1, 1.5]).Sample((wiring, maxV, ratedA, more) =>
        {
            DcInput tight = Input(maxV) with { RatedCurrent = Limit(ratedA), MaxPower = Limit(10 * ratedA) };
            DcInput wide = Input(maxV * more) with { RatedCurrent = Limit(ratedA * more), MaxPower = Limit(10 * ratedA * more) };
            Assert.True(Worst(wiring.On(wide, Shed, Other)) <= Worst(wiring.On(tight, Shed, Other)));
        });

    [Fact]
    public void Colder_never_lowers_the_cold_voltage() =>
        Gen.Select(Any, Gen.Double[-60, 40], Gen.Double[0, 20]).Sample((wiring, coldestC, colder) =>
            Assert.True(ColdVoltage.Of(wiring.On(Input(60), Shed, Other).Coldest(coldestC - colder)) >= ColdVoltage.Of(wiring.On(Input(60), Shed, Other).Coldest(coldestC)) - 1e-9));

    [Fact]
    public void A_string_more_beside_it_never_lowers_voltage_current_or_back_feed() =>
        Gen.Select(String, String).Sample((first, second) =>
        {
            RuleContext alone = first.On(Input(60), Shed, Other);
            RuleContext both = Side(first, second).On(Input(60), Shed, Other);
            Assert.True(ColdVoltage.Of(both) >= ColdVoltage.Of(alone));
            Assert.True(LabelSums.ShortCircuitA(both.Wiring, both.Stock) > LabelSums.ShortCircuitA(alone.Wiring, alone.Stock));
            Assert.True(both.Says("back_feed").Level >= alone.Says("back_feed").Level);
        });

    [Fact]
    public void An_input_with_only_a_voltage_is_never_go() =>
        Gen.Select(Any, Gen.Double[5, 1000]).Sample((wiring, maxV) =>
            Assert.NotEqual(Level.Go, Worst(wiring.On(Input(maxV), Shed, Other))));
}

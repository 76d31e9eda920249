using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>Two strings of two: 2 × 6.35 = 12.7 A at full power, 2 × 6.72 = 13.44 A in a short circuit, 4 × 120 = 480 W.</summary>
public sealed class DrawAndPowerLimitTests
{
    private static readonly Wiring TwoByTwo = Side(Row(2, "shed-120"), Row(2, "shed-120"));

    private static RuleContext On(DcInput input) =>
        TwoByTwo.On(input).Circuit(circuit => circuit with { Operating = _ => Held(378, 480.06, LimitedBy.Current) });

    [Theory]
    [InlineData(12.7, EvidenceKind.None, 0, Level.Go)]
    [InlineData(12.6, EvidenceKind.None, 0, Level.Ask)]
    [InlineData(12.6, EvidenceKind.Label, 0, Level.Ask)]
    [InlineData(12.6, EvidenceKind.Manual, 0, Level.Go)]
    [InlineData(12.6, EvidenceKind.Maker, 0, Level.Go)]
    [InlineData(10, EvidenceKind.Label, 0.27, Level.Go)]
    [InlineData(10, EvidenceKind.Maker, 0.26, Level.Ask)]
    [InlineData(10, EvidenceKind.None, 0.5, Level.Ask)]
    public void Over_the_drawn_limit_is_clipping_when_the_evidence_says_so(double limitA, EvidenceKind kind, double exceed, Level level) =>
        Assert.Equal(level, On(Input(60) with { MaxCurrent = Limit(limitA, kind, exceed) }).Says("draw_limit").Level);

    [Fact]
    public void Clipping_says_how_many_watts_are_cut()
    {
        // 480.06 − 378 = 102.06 W.
        Finding finding = On(Input(60) with { MaxCurrent = Limit(10, EvidenceKind.Manual) }).Says("draw_limit");
        Assert.Equal("Clipping, not danger. 102 W of 480 W are cut at standard conditions, by the current limit.", finding.Note);
    }

    [Theory]
    [InlineData(13.44, EvidenceKind.Label, Level.Go)]
    [InlineData(13.44, EvidenceKind.None, Level.Ask)]
    [InlineData(13.4, EvidenceKind.Maker, Level.Ask)]
    public void What_the_array_may_offer_clears_what_the_input_draws(double offeredA, EvidenceKind kind, Level level) =>
        Assert.Equal(level, On(Input(60) with { MaxCurrent = Limit(10), MaxShortCircuitCurrent = Limit(offeredA, kind) }).Says("draw_limit").Level);

    [Fact]
    public void A_stated_allowance_bounds_even_what_may_be_offered() =>
        Assert.Equal(Level.Ask, On(Input(60) with { MaxCurrent = Limit(10, EvidenceKind.Maker, 0.2), MaxShortCircuitCurrent = Limit(20, EvidenceKind.Maker) }).Says("draw_limit").Level);

    [Fact]
    public void A_printed_current_of_unknown_meaning_is_no_word_about_drawing_whoever_prints_it() =>
        Assert.Equal(Level.Ask, On(Input(60) with { RatedCurrent = Limit(10, EvidenceKind.Manual) }).Says("draw_limit").Level);

    [Fact]
    public void The_circuits_current_counts_where_it_is_above_the_labels()
    {
        Finding finding = On(Input(60) with { MaxCurrent = Limit(12.8) }).Circuit(circuit => circuit with { MaximumPowerPoint = (_, _) => (37, 12.9, 477.3) }).Says("draw_limit");
        Assert.Equal((Level.Ask, 12.9), (finding.Level, finding.Value));
        Assert.Equal("labels 12.7 A, circuit 12.9 A; limit 12.8 A", finding.Working);
    }

    [Theory]
    [InlineData(480, EvidenceKind.None, 0, Level.Go)]
    [InlineData(479, EvidenceKind.None, 0, Level.Ask)]
    [InlineData(400, EvidenceKind.Label, 0, Level.Ask)]
    [InlineData(400, EvidenceKind.Manual, 0, Level.Go)]
    [InlineData(400, EvidenceKind.Maker, 0.2, Level.Go)]
    [InlineData(400, EvidenceKind.Maker, 0.19, Level.Ask)]
    public void Over_the_power_limit_is_clipping_when_the_evidence_says_so(double limitW, EvidenceKind kind, double exceed, Level level)
    {
        Finding finding = On(Input(60) with { MaxPower = Limit(limitW, kind, exceed) }).Says("power_limit");
        Assert.Equal((level, 480.0, limitW), (finding.Level, finding.Value, finding.Limit));
    }

    [Fact]
    public void A_word_about_current_does_not_clear_power()
    {
        DcInput input = Input(60) with { MaxCurrent = Limit(10, EvidenceKind.Maker), MaxShortCircuitCurrent = Limit(20, EvidenceKind.Maker), MaxPower = Limit(400) };
        Assert.Equal(Level.Ask, On(input).Says("power_limit").Level);
        Assert.Equal(Level.Go, On(input).Says("draw_limit").Level);
    }

    [Fact]
    public void An_input_of_which_only_the_voltage_is_known_is_asked_about()
    {
        RuleContext context = On(Input(60));
        Assert.Equal(Level.Ask, context.Says("power_limit").Level);
        Assert.Equal(Level.Ask, context.Says("short_circuit_current").Level);
        Assert.Equal(Level.Go, (context with { Input = Input(60) with { RatedCurrent = Limit(20) } }).Says("power_limit").Level);
    }

    [Fact]
    public void A_power_stated_for_the_whole_unit_is_judged_there() =>
        Assert.Equal(Level.Go, (On(Input(60)) with { Unit = new ChargingUnit("barn", Limit(600), null) }).Says("power_limit").Level);

    [Theory]
    [InlineData(600, EvidenceKind.None, Level.Go)]
    [InlineData(599, EvidenceKind.None, Level.Ask)]
    [InlineData(599, EvidenceKind.Manual, Level.Go)]
    public void A_unit_is_judged_over_all_its_inputs(double limitW, EvidenceKind kind, Level level)
    {
        // 480 W on one input, 120 W on the other: 600 W.
        RuleContext context = On(Input(60));
        Finding finding = Assert.Single(UnitRules.Judge(new ChargingUnit("barn", Limit(limitW, kind), null), [("store-a", TwoByTwo), ("store-b", One("shed-120"))], context.Stock));
        Assert.Equal((level, 600.0), (finding.Level, finding.Value));
        Assert.StartsWith("store-a 480 W + store-b 120 W = 600 W", finding.Working, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_that_states_nothing_or_has_nothing_on_it_says_nothing()
    {
        RuleContext context = On(Input(60));
        Assert.Empty(UnitRules.Judge(new ChargingUnit("barn", null, null), [("store-a", TwoByTwo)], context.Stock));
        Assert.Empty(UnitRules.Judge(new ChargingUnit("barn", Limit(100), null), [], context.Stock));
    }
}

using Arraywright.Gear;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>The price of joining unequal panels, with a circuit that takes the lower volts side by side and the lower amps in series.</summary>
public sealed class UnequalTests
{
    private static readonly Panel Low = Shed with { Name = "low", OpenCircuitV = 21, MaximumPowerV = Sourced.Given(17.0), MaximumPowerA = Sourced.Given(6.0) };

    [Fact]
    public void Strings_apart_in_voltage_say_how_far_and_what_it_costs()
    {
        // (18.9 − 17) / 18.9 = 10.05 %. Apart 18.9 × 6.35 + 17 × 6 = 120.015 + 102 = 222.015 W; together 17 × 12.35 = 209.95 W; cost 12.065 W.
        Finding finding = Side(One("shed-120"), One("low")).On(Input(60), Shed, Low).Says("unequal_strings");
        Assert.Equal(10.0529, finding.Value, 1e-4);
        Assert.Equal((Level.Go, null, "%"), (finding.Level, finding.Limit, finding.Unit));
        Assert.Equal("(18.9 V - 17.0 V) / 18.9 V = 10.1 %; up to 5 % costs next to nothing", finding.Working);
        Assert.Equal("Apart the strings would give 222 W, together 210 W: 12 W is the cost.", finding.Note);
    }

    [Fact]
    public void A_string_that_rests_below_the_others_best_is_said_to_be_fed_backwards()
    {
        // Open circuit 18 V, under the other's best 18.9 V.
        Finding finding = Side(One("shed-120"), One("low")).On(Input(60), Shed, Low with { OpenCircuitV = 18 }).Says("unequal_strings");
        Assert.Contains("string 2 rests at 18.0 V, below string 1's best 18.9 V", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_strings_say_nothing() =>
        Assert.Empty(Side(Row(2, "shed-120"), Row(2, "shed-120")).On(Input(60)).All("unequal_strings"));

    [Fact]
    public void Panels_apart_in_current_say_how_far_and_what_it_costs()
    {
        // (6.35 − 6) / 6.35 = 5.51 %. Apart 222.015 W; in series (18.9 + 17) × 6 = 215.4 W; cost 6.615 W.
        Finding finding = Row(One("shed-120"), One("low")).On(Input(60), Shed, Low).Says("unequal_series");
        Assert.Equal(5.5118, finding.Value, 1e-4);
        Assert.Equal("Each alone they would give 222 W, in series 215 W: 7 W is the cost.", finding.Note);
    }

    [Fact]
    public void Equal_panels_in_series_say_nothing() =>
        Assert.Empty(Row(3, "shed-120").On(Input(90)).All("unequal_series"));

    [Fact]
    public void A_block_that_matches_the_panel_beside_it_costs_nothing()
    {
        // Two of 3.175 A side by side give 6.35 A.
        Panel half = Shed with { Name = "half", MaximumPowerA = Sourced.Given(3.175) };
        Assert.Empty(Row(Side(One("half"), One("half")), One("shed-120")).On(Input(60), Shed, half).All("unequal_series"));
    }

    [Fact]
    public void Unequal_panels_in_series_inside_a_block_are_found()
    {
        // Two rows of 18.9 + 17 V at 6 A side by side give 12 A, as the panel after them does. Apart 2 × 222.015 W, in series 2 × 215.4 W.
        Panel wide = Shed with { Name = "wide", MaximumPowerA = Sourced.Given(12.0) };
        Finding finding = Row(Side(Row(One("shed-120"), One("low")), Row(One("shed-120"), One("low"))), One("wide")).On(Input(90), Shed, Low, wide).Says("unequal_series");
        Assert.Equal("Each alone they would give 444 W, in series 431 W: 13 W is the cost.", finding.Note);
    }
}

using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Rules;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Reference.Tests;

/// <summary>The codes' tables and worked figures. Clauses after NFPA 70 (NEC) article 690 and IEC 62548; worked figures recomputed by hand from them.</summary>
public sealed class CodeFiguresTests
{
    /// <summary>NEC Table 690.7(A) (2017 to 2023; as Table 690.7 of 2008 to 2014): hottest and coldest whole degree of each band, factor.</summary>
    public static TheoryData<int, int, double> Table6907A { get; } = new()
    {
        { 24, 20, 1.02 }, { 19, 15, 1.04 }, { 14, 10, 1.06 }, { 9, 5, 1.08 }, { 4, 0, 1.10 }, { -1, -5, 1.12 }, { -6, -10, 1.14 },
        { -11, -15, 1.16 }, { -16, -20, 1.18 }, { -21, -25, 1.20 }, { -26, -30, 1.21 }, { -31, -35, 1.23 }, { -36, -40, 1.25 },
    };

    [Theory]
    [MemberData(nameof(Table6907A))]
    public void Every_degree_of_Table_690_7_A_has_its_factor(int hottestC, int coldestC, double factor)
    {
        for (int degreeC = coldestC; degreeC <= hottestC; degreeC++)
        {
            Assert.Equal(factor, ColdFactors.For(Technology.CrystallineSilicon, degreeC));
        }
    }

    [Fact]
    public void The_tables_factors_are_those_of_0_40_percent_a_kelvin_at_each_cold_edge_down_to_minus_25()
    {
        for (int edgeC = 20; edgeC >= -25; edgeC -= 5)
        {
            Assert.Equal(1 + (0.0040 * (25 - edgeC)), ColdFactors.For(Technology.CrystallineSilicon, edgeC), 1e-12);
        }
    }

    [Fact]
    public void The_54_cell_panel_of_the_published_diode_example_reaches_38_435_V_by_coefficient_and_38_822_V_by_table_at_minus_20()
    {
        // Villalva et al., IEEE Trans. Power Electron. 24 (2009) 1198: Voc 32.9 V, KV -0.1230 V/K. 32.9 + 0.1230 × 45; 32.9 × 1.18.
        Panel panel = Shed with { OpenCircuitV = 32.9, OpenCircuitPerK = Sourced.Given(-0.1230 / 32.9) };
        RuleContext context = One("shed-120").On(Input(60), panel).Coldest(-20);
        Assert.Equal(38.435, context.Says("cold_voltage_label").Value, 1e-9);
        Assert.Equal(38.822, context.Says("cold_voltage_table").Value, 1e-9);
    }

    [Fact]
    public void A_panel_of_49_5_V_and_0_27_percent_a_kelvin_reaches_54_178_V_at_minus_10()
    {
        // 49.5 × (1 + 0.0027 × 35) = 49.5 × 1.0945 = 54.17775, recomputed by hand.
        Panel panel = Shed with { OpenCircuitV = 49.5, OpenCircuitPerK = Sourced.Given(-0.0027) };
        Assert.Equal(54.17775, One("shed-120").On(Input(60), panel).Coldest(-10).Says("cold_voltage_label").Value, 1e-9);
    }

    [Fact]
    public void Strong_sun_makes_10_2625_A_of_8_21_A()
    {
        // NEC 690.8(A)(1): 1.25 × 8.21.
        Panel panel = Shed with { ShortCircuitA = 8.21 };
        Assert.Equal(10.2625, One("shed-120").On(Input(60), panel).Says("strong_sun_current").Value, 1e-9);
    }

    [Fact]
    public void The_fuse_window_of_8_21_A_holds_15_and_16_A()
    {
        // IEC 62548: 1.5 × 8.21 = 12.315 < In < 2.4 × 8.21 = 19.704. Smallest standard 10 × 38 mm size: 15 A; none in it under 15 A.
        Assert.Equal(15, new StringFuse(0, RuleSet.Iec, 8.21, double.PositiveInfinity).SizeA);
        Assert.Equal(15, new StringFuse(0, RuleSet.Iec, 8.21, 15).SizeA);
        Assert.Null(new StringFuse(0, RuleSet.Iec, 8.21, 14.9).SizeA);
    }

    [Theory]
    [InlineData(15)]
    [InlineData(20)]
    public void Three_strings_of_8_21_A_need_fuses_at_15_A_and_by_the_stricter_form_at_20_A_too(double ratingA)
    {
        // (3 − 1) × 8.21 × 1.25 = 20.525 A; the plain form's 16.42 A would let 20 A pass (IEC 62548 against 60364-7-712: the stricter).
        Panel panel = Shed with { ShortCircuitA = 8.21, MaxSeriesFuseA = ratingA };
        Finding finding = Side(One("shed-120"), One("shed-120"), One("shed-120")).On(Input(60), panel).Says("back_feed");
        Assert.Equal(20.525, finding.Value, 1e-9);
        Assert.Equal("Fuses are compulsory: each string needs a 15 A gPV fuse.", finding.Note);
    }

    [Fact]
    public void Two_equal_strings_need_no_fuse_in_practice()
    {
        // NEC 690.9(A): 1.25 × 8.21 = 10.2625 A, under a 15 A rating.
        Panel panel = Shed with { ShortCircuitA = 8.21 };
        Finding finding = Side(One("shed-120"), One("shed-120")).On(Input(60), panel).Says("back_feed");
        Assert.Equal(Level.Go, finding.Level);
        Assert.Null(finding.Note);
    }
}

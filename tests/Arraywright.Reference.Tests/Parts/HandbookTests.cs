using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;
using Arraywright.Parts;

namespace Arraywright.Reference.Tests.Parts;

/// <summary>Examples of the kind a handbook works through, worked by hand here. Each names where its numbers come from.</summary>
public sealed class HandbookTests
{
    private static readonly ConductorPlace Conduit = new(RuleSet.Us, CableClass.Flexible, Laying.Conduit, 30, 2, 60);

    private static readonly ConductorPlace Surface = new(RuleSet.Iec, CableClass.Flexible, Laying.Surface, 60, 2, 60);

    [Theory]
    [InlineData(20, 1.018)]
    [InlineData(70, 1.218)]
    public void Drop_of_10_m_of_4_mm2_at_10_A(double conductorC, double dropV)
    {
        // IEC 60228: 5.09 Ω/km tinned at 20 °C. 2 × 10 m × 10 A × 5.09 mΩ/m = 1.018 V; × (1 + 0.00393 × 50) = 1.218 V.
        Assert.Equal(dropV, 2 * 10 * 10 * CopperResistance.PerMetreOhm(4, CableClass.Flexible, conductorC), 0.0005);
    }

    [Fact]
    public void Drop_of_50_ft_of_10_AWG_at_8_A()
    {
        // NEC chapter 9 Table 8: 1.24 Ω per 1000 ft at 75 °C. 2 × 50 ft × 8 A × 1.24 / 1000 = 0.992 V.
        double mm2 = ConductorSize.Gauges.Single(size => size.Name == "10 AWG").AreaMm2;
        Assert.Equal(0.992, 2 * 50 * 0.3048 * 8 * CopperResistance.PerMetreOhm(mm2, CableClass.Fixed, 75), 1e-9);
    }

    [Theory]
    [InlineData(8.21, 12.828, 15)]
    [InlineData(11, 17.188, 20)]
    [InlineData(6.72, 10.5, 15)]
    [InlineData(5.7, 8.906, 10)]
    public void A_string_fuse_by_156_percent(double shortCircuitA, double leastA, double fuseA)
    {
        // NEC 690.8(A)(1), 690.9(B): 1.25 × 1.25 × Isc, next of 240.6(A) with the sizes for fuses.
        StringFuse fuse = new StringFuse(0, RuleSet.Us, shortCircuitA, 30);
        Assert.Equal(leastA, fuse.LowA, 0.0005);
        Assert.Equal(fuseA, fuse.SizeA);
    }

    [Fact]
    public void A_string_fuse_by_the_window_of_the_iec()
    {
        // IEC 62548: 1.5 × 8.21 = 12.315 < In < 2.4 × 8.21 = 19.704: 15 A.
        StringFuse fuse = new StringFuse(0, RuleSet.Iec, 8.21, 30);
        Assert.Equal((12.315, 19.704, 15.0), (Math.Round(fuse.LowA, 9), Math.Round(fuse.HighA, 9), fuse.SizeA));
    }

    [Fact]
    public void A_fuse_over_the_label_of_the_panel_does_not_fit()
    {
        // 1.5625 × 11 = 17.19 A asks for 20 A; the label bears 15 A.
        Assert.Null(new StringFuse(0, RuleSet.Us, 11, 15).SizeA);
    }

    [Fact]
    public void Ten_AWG_in_60_degrees_with_six_wires_together()
    {
        // 310.16 at 90 °C: 40 A × 0.71 (56 to 60 °C) × 0.80 (4 to 6 wires) = 22.72 A; terminals of 75 °C: 35 / 1.25 = 28 A.
        Assert.Equal(22.72, Carries("10 AWG", Conduit with { AmbientC = 60, Loaded = 6, TerminalC = 75 }), 1e-9);
    }

    [Fact]
    public void Terminals_of_60_degrees_hold_thick_insulation_down()
    {
        // 30 A of the 60 °C column / 1.25 = 24 A, though the insulation would carry 40 A.
        Assert.Equal(24, Carries("10 AWG", Conduit), 1e-9);
    }

    [Fact]
    public void Eight_AWG_with_nine_wires_in_45_degrees()
    {
        // 55 A × 0.87 × 0.70 = 33.495 A; terminals of 75 °C: 50 / 1.25 = 40 A.
        Assert.Equal(33.495, Carries("8 AWG", Conduit with { AmbientC = 45, Loaded = 9, TerminalC = 75 }), 1e-9);
    }

    [Fact]
    public void Solar_cable_in_free_air_behind_hot_panels()
    {
        // 310.17 at 90 °C: 55 A × 0.58 (66 to 70 °C) = 31.9 A; terminals of 90 °C: 40 / 1.25 = 32 A.
        Assert.Equal(31.9, Carries("10 AWG", Conduit with { Laying = Laying.FreeAir, AmbientC = 70, TerminalC = 90 }), 1e-9);
    }

    [Theory]
    [InlineData(60, "8 AWG")]
    [InlineData(75, "10 AWG")]
    public void Two_strings_of_10_A_by_the_us_rules(double terminalC, string size)
    {
        // Maximum current 1.25 × 20 = 25 A; 1.25 × 25 = 31.25 A at the terminals: 30 A of 10 AWG is too little at 60 °C, 35 A enough at 75 °C.
        Assert.Equal(size, ConductorSizing.Choose(new ConductorDuty(25, 0, 0, 0, 0), Conduit with { TerminalC = terminalC }, 0.03).Size.Name);
    }

    [Fact]
    public void Six_mm2_as_one_of_three_pairs()
    {
        // EN 50618: 57 A for a touching pair; three pairs side by side × 0.79 (IEC 60364-5-52 Table B.52.17) = 45.03 A.
        Assert.Equal(45.03, Carries("6 mm²", Surface with { Loaded = 6 }), 1e-9);
    }

    [Fact]
    public void Four_mm2_in_90_degrees()
    {
        // 44 A × √((120 − 90) / (120 − 60)) = 31.11 A.
        Assert.Equal(31.11, Carries("4 mm²", Surface with { AmbientC = 90 }), 0.005);
    }

    [Fact]
    public void Eight_metres_to_a_38_V_input_take_6_mm2_for_3_percent()
    {
        // 3 % of 37.8 V is 1.134 V: at 12.7 A over 2 × 8 m no more than 5.58 mΩ/m. At 50 °C 4 mm² has 5.09 × 1.1179 = 5.69, 6 mm² 3.79.
        ConductorChoice choice = ConductorSizing.Choose(new ConductorDuty(16.8, 12.7, 37.8, 8, 0), Surface, 0.03);
        Assert.Equal("6 mm²", choice.Size.Name);
        Assert.Equal(2 * 8 * 12.7 * 0.00339 * 1.1179 / 37.8, choice.DropFraction, 1e-9);
    }

    [Theory]
    [InlineData(16.8, 20)]
    [InlineData(20, 20)]
    [InlineData(33.6, 40)]
    public void The_next_usual_switch(double designA, double sizeA)
    {
        // Usual sizes 16, 20, 25, 32, 40, 50 A: common practice.
        Assert.Equal(sizeA, UsualRatings.SwitchForA(designA));
    }

    private static double Carries(string size, ConductorPlace place) =>
        Ampacity.Of(ConductorSize.Gauges.Concat(ConductorSize.Metric).Single(made => made.Name == size).AreaMm2, place).CarriesA;
}

using Arraywright.Gear;

namespace Arraywright.Tests.Gear;

public sealed class PanelFillTests
{
    private static readonly PanelLabel Bare = new() { Name = "shed-120", PowerW = 120, OpenCircuitV = 22.9, ShortCircuitA = 6.72 };

    public static TheoryData<PanelLabel, string> Incomplete => new()
    {
        { Bare with { OpenCircuitV = null }, "voc" },
        { Bare with { ShortCircuitA = null }, "isc" },
        { Bare with { PowerW = null }, "power" },
        { Bare with { PowerW = null, MaximumPowerV = 18.9 }, "power" },
        { Bare with { PowerW = null, MaximumPowerA = 6.35 }, "power" },
    };

    [Theory]
    [MemberData(nameof(Incomplete))]
    public void A_label_that_lacks_what_it_must_have_is_refused_by_name(PanelLabel label, string missing)
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
        Assert.Null(panel);
        LabelDoubt doubt = Assert.Single(doubts);
        Assert.Equal((missing, true), (doubt.Field, doubt.Refused));
        Assert.Contains("missing", doubt.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_that_says_nothing_is_told_everything_it_needs() =>
        Assert.Equal(["voc", "isc", "power"], PanelReader.Read(new PanelLabel { Name = "empty" }).Doubts.Select(doubt => doubt.Field));

    [Fact]
    public void All_faults_of_a_label_come_at_once_refusals_first()
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(Bare with
        {
            MaximumPowerV = 22.9,
            MaximumPowerA = 6.9,
            OpenCircuitPerK = 0.0029,
            ShortCircuitPerK = -0.0003,
            ToleranceFraction = 0.3,
            NoctC = 113,
            Price = -1,
        });
        Assert.Null(panel);
        Assert.Equal(["noct", "price", "vmp", "imp", "voc_temperature", "tolerance", "isc_temperature"], doubts.Select(doubt => doubt.Field));
        Assert.Equal([true, true, true, true, true, false, false], doubts.Select(doubt => doubt.Refused));
        Assert.All(doubts, doubt => Assert.Equal("shed-120", doubt.Panel));
    }

    [Fact]
    public void Power_is_derived_from_vmp_and_imp()
    {
        Panel panel = Read(Bare with { PowerW = null, MaximumPowerV = 18.9, MaximumPowerA = 6.35 });
        Assert.Equal(120.015, panel.PowerW.Value, 1e-9); // By hand: 18.9 × 6.35.
        Assert.Equal(Origin.Derived, panel.PowerW.Origin);
        Assert.Equal("product of vmp and imp: 18.9 V × 6.35 A", panel.PowerW.Why);
    }

    [Fact]
    public void Imp_is_derived_from_power_and_vmp()
    {
        Panel panel = Read(Bare with { MaximumPowerV = 18.9 });
        Assert.Equal(6.349206, panel.MaximumPowerA.Value, 1e-6); // By hand: 120 / 18.9.
        Assert.Equal("power over vmp: 120 W / 18.9 V", panel.MaximumPowerA.Why);
    }

    [Fact]
    public void Vmp_is_derived_from_power_and_imp()
    {
        Panel panel = Read(Bare with { MaximumPowerA = 6.35 });
        Assert.Equal(18.897638, panel.MaximumPowerV.Value, 1e-6); // By hand: 120 / 6.35.
        Assert.Equal("power over imp: 120 W / 6.35 A", panel.MaximumPowerV.Why);
    }

    // Coefficients must lie within the datasheet ranges (from memory) of the shared reference values, section 8.6.
    [Theory]
    [InlineData(null, -0.36, -0.26, 0.04, 0.06)]
    [InlineData(Technology.MonoPerc, -0.30, -0.26, 0.04, 0.06)]
    [InlineData(Technology.Multicrystalline, -0.36, -0.30, 0.04, 0.06)]
    [InlineData(Technology.TopCon, -0.27, -0.24, 0.04, 0.05)]
    [InlineData(Technology.Heterojunction, -0.26, -0.22, 0.03, 0.05)]
    [InlineData(Technology.BackContact, -0.27, -0.22, 0.03, 0.05)]
    [InlineData(Technology.CadmiumTelluride, -0.28, -0.24, 0.04, 0.04)]
    [InlineData(Technology.Cigs, -0.32, -0.26, 0.01, 0.04)]
    [InlineData(Technology.AmorphousSilicon, -0.36, -0.28, 0.06, 0.10)]
    public void Missing_coefficients_are_typical_of_the_technology(Technology? technology, double vocLow, double vocHigh, double iscLow, double iscHigh)
    {
        Panel panel = Read(Bare with { PowerW = 100, Technology = technology });
        Assert.InRange(panel.OpenCircuitPerK.Value * 100, vocLow - 1e-9, vocHigh + 1e-9);
        Assert.InRange(panel.ShortCircuitPerK.Value * 100, iscLow - 1e-9, iscHigh + 1e-9);
        Assert.Equal(Origin.Assumed, panel.OpenCircuitPerK.Origin);
        Assert.Null(panel.PowerPerK);
    }

    // Cell counts of common panels of such a voltage: common practice, no source.
    [Theory]
    [InlineData(10.8, null, 18)]
    [InlineData(21.6, null, 36)]
    [InlineData(22.9, null, 36)]
    [InlineData(32.9, null, 54)]
    [InlineData(37.8, null, 60)]
    [InlineData(22.5, Technology.MonoPerc, 36)]
    [InlineData(41.1, Technology.MonoPerc, 60)]
    [InlineData(49.9, Technology.MonoPerc, 72)]
    [InlineData(38.8, Technology.TopCon, 54)]
    [InlineData(48.2, Technology.TopCon, 66)]
    [InlineData(64.9, Technology.BackContact, 96)]
    [InlineData(5.5, null, 8)]
    public void Missing_cells_come_from_the_voltage(double vocV, Technology? technology, int cells)
    {
        Panel panel = Read(new PanelLabel { Name = "a", OpenCircuitV = vocV, ShortCircuitA = 10, PowerW = vocV * 7.8, Technology = technology });
        Assert.Equal((cells, Origin.Assumed), (panel.Cells.Value, panel.Cells.Origin));
    }

    // One for 18 to 24 cells, one for a small panel: common practice, no source.
    [Theory]
    [InlineData(36, 10, 1)]
    [InlineData(20, 60, 1)]
    [InlineData(36, 120, 2)]
    [InlineData(54, 200, 3)]
    [InlineData(72, 400, 3)]
    public void Missing_bypass_diodes_are_those_of_common_practice(int cells, double powerW, int diodes)
    {
        double vocV = cells * 0.63;
        Panel panel = Read(new PanelLabel { Name = "a", Cells = cells, OpenCircuitV = vocV, PowerW = powerW, ShortCircuitA = powerW / vocV / 0.78 });
        Assert.Equal((diodes, Origin.Assumed), (panel.BypassDiodes.Value, panel.BypassDiodes.Origin));
    }

    [Fact]
    public void A_bare_label_lists_all_that_was_assumed_and_what_it_moves()
    {
        IReadOnlyList<Assumption> assumed = PanelAssumptions.Of(Read(Bare));
        Assert.Equal(
            ["vmp", "imp", "voc_temperature", "isc_temperature", "cells", "bypass_diodes", "tolerance", "technology"],
            assumed.Select(one => one.What.Replace("shed-120 ", "", StringComparison.Ordinal)));
        Assert.Equal("3 %", assumed[6].Value);

        // By hand: 1 % of 22.9 V.
        Assert.Equal("Labels commonly say ±3 %. Each 1 % adds 0.229 V a panel to the volts held against the limit.", assumed[6].Why);
        Assert.All(assumed, one => Assert.EndsWith(".", one.Why, StringComparison.Ordinal));
    }

    [Fact]
    public void A_derived_figure_is_listed_as_computed_not_guessed()
    {
        Assumption power = PanelAssumptions.Of(Read(Bare with { PowerW = null, MaximumPowerV = 18.9, MaximumPowerA = 6.35 }))[0];
        Assert.Equal(new Assumption("shed-120 power", "120 W", "Product of vmp and imp: 18.9 V × 6.35 A. Computed from the label, nothing guessed."), power);
    }

    private static Panel Read(PanelLabel label)
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
        Assert.True(panel is not null, string.Join('\n', doubts));
        return panel;
    }
}

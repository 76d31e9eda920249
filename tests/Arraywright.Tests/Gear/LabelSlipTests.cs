using Arraywright.Gear;

namespace Arraywright.Tests.Gear;

/// <summary>Every genuine label with one figure wrong in a way that people get it wrong: each must be caught.</summary>
public sealed class LabelSlipTests
{
    public static TheoryData<Slip> Impossible =>
    [
        new Slip("voc and vmp swapped", l => l with { OpenCircuitV = l.MaximumPowerV, MaximumPowerV = l.OpenCircuitV }, "vmp", "swapped"),
        new Slip("isc and imp swapped", l => l with { ShortCircuitA = l.MaximumPowerA, MaximumPowerA = l.ShortCircuitA }, "imp", "swapped"),
        new Slip("voc typed into vmp", l => l with { MaximumPowerV = l.OpenCircuitV }, "vmp", "Was voc typed into vmp?"),
        new Slip("isc typed into imp", l => l with { MaximumPowerA = l.ShortCircuitA }, "imp", "Was isc typed into imp?"),
        new Slip("vmp typed into voc", l => l with { OpenCircuitV = l.MaximumPowerV }, "vmp", "both"),
        new Slip("voc ten times", l => l with { OpenCircuitV = l.OpenCircuitV * 10 }, "", "decimal point"),
        new Slip("voc a tenth", l => l with { OpenCircuitV = l.OpenCircuitV / 10 }, "vmp", "decimal point"),
        new Slip("vmp ten times", l => l with { MaximumPowerV = l.MaximumPowerV * 10 }, "", "decimal point"),
        new Slip("vmp a tenth", l => l with { MaximumPowerV = l.MaximumPowerV / 10 }, "vmp", "decimal point"),
        new Slip("isc ten times", l => l with { ShortCircuitA = l.ShortCircuitA * 10 }, "imp", "decimal point"),
        new Slip("isc a tenth", l => l with { ShortCircuitA = l.ShortCircuitA / 10 }, "imp", "decimal point"),
        new Slip("imp ten times", l => l with { MaximumPowerA = l.MaximumPowerA * 10 }, "imp", "decimal point"),
        new Slip("imp a tenth", l => l with { MaximumPowerA = l.MaximumPowerA / 10 }, "imp", "decimal point"),
        new Slip("power ten times", l => l with { PowerW = l.PowerW * 10 }, "power", ""),
        new Slip("power a tenth", l => l with { PowerW = l.PowerW / 10 }, "power", ""),
        new Slip("power ten times, no vmp and imp", l => l with { PowerW = l.PowerW * 10, MaximumPowerV = null, MaximumPowerA = null }, "power", ""),
        new Slip("power a tenth, no vmp and imp", l => l with { PowerW = l.PowerW / 10, MaximumPowerV = null, MaximumPowerA = null }, "power", "fill factor"),
        new Slip("vmp a tenth, no power", l => l with { PowerW = null, MaximumPowerV = l.MaximumPowerV / 10 }, "vmp", "decimal point"),
        new Slip("vmp a tenth, no imp", l => l with { MaximumPowerV = l.MaximumPowerV / 10, MaximumPowerA = null }, "", ""),
        new Slip("power from voc and isc", l => l with { PowerW = l.OpenCircuitV * l.ShortCircuitA, MaximumPowerV = null, MaximumPowerA = null }, "power", "voc × isc?"),
        new Slip("voc_temperature without its sign", l => l with { OpenCircuitPerK = -l.OpenCircuitPerK }, "voc_temperature", "the sign is wrong"),
        new Slip("voc_temperature ten times", l => l with { OpenCircuitPerK = l.OpenCircuitPerK * 10 }, "voc_temperature", "decimal point"),
        new Slip("voc_temperature a tenth", l => l with { OpenCircuitPerK = l.OpenCircuitPerK / 10 }, "voc_temperature", "decimal point"),
        new Slip("voc_temperature V/K for mV/K", l => l with { OpenCircuitPerK = l.OpenCircuitPerK * 1000 }, "voc_temperature", "V/K stands for mV/K"),
        new Slip("voc_temperature mV/K for V/K", l => l with { OpenCircuitPerK = l.OpenCircuitPerK / 1000 }, "voc_temperature", "mV/K stands for V/K"),
        new Slip("voc_temperature of one cell", l => l with { OpenCircuitPerK = l.OpenCircuitPerK / l.Cells }, "voc_temperature", "figure of one cell"),
        new Slip("voc_temperature %/K as fraction", l => l with { OpenCircuitPerK = l.OpenCircuitPerK * 100 }, "voc_temperature", ""),
        new Slip("isc_temperature ten times mA", l => l with { ShortCircuitPerK = l.ShortCircuitPerK * 1000 }, "isc_temperature", "A/K stands for mA/K"),
        new Slip("power_temperature without its sign", l => l with { PowerPerK = -l.PowerPerK }, "power_temperature", "the sign is wrong"),
        new Slip("power_temperature ten times", l => l with { PowerPerK = l.PowerPerK * 10 }, "power_temperature", "decimal point"),
        new Slip("power_temperature a tenth", l => l with { PowerPerK = l.PowerPerK / 10 }, "power_temperature", "decimal point"),
        new Slip("max_series_fuse a tenth", l => l with { MaxSeriesFuseA = l.MaxSeriesFuseA / 10 }, "max_series_fuse", "blow"),
        new Slip("more diodes than cells", l => l with { BypassDiodes = l.Cells + 1 }, "bypass_diodes", "more than the"),
        new Slip("max_system_voltage below voc", l => l with { MaxSystemVoltageV = l.OpenCircuitV * 0.9 }, "max_system_voltage", "below voc"),
    ];

    public static TheoryData<Slip> Odd =>
    [
        new Slip("isc_temperature with the wrong sign", l => l with { ShortCircuitPerK = -l.ShortCircuitPerK }, "isc_temperature", "the sign is wrong"),
        new Slip("isc_temperature ten times", l => l with { ShortCircuitPerK = l.ShortCircuitPerK * 10 }, "isc_temperature", "decimal point"),
        new Slip("power 15 % up", l => l with { PowerW = l.PowerW * 1.15 }, "power", "apart"),
        new Slip("fuse just over isc", l => l with { MaxSeriesFuseA = l.ShortCircuitA * 1.1 }, "max_series_fuse", "1.25 × isc"),
        new Slip("max_system_voltage 10 kV", l => l with { MaxSystemVoltageV = 10_000 }, "max_system_voltage", "decimal point"),
        new Slip("tolerance 30 %", l => l with { ToleranceFraction = 0.3 }, "tolerance", "decimal point"),
        new Slip("noct of the air", l => l with { NoctC = 25 }, "noct", "labels say 40 to 50"),
    ];

    /// <summary>Slips that only crystalline panels show: thin films have 0.5 to 2.4 V a cell, and amps that hardly change with heat.</summary>
    public static TheoryData<Slip> OddForCrystalline =>
    [
        new Slip("half cells counted", l => l with { Cells = l.Cells * 2 }, "cells", "half cells"),
        new Slip("cells halved", l => l with { Cells = l.Cells / 2 }, "cells", "V a cell"),
        new Slip("isc_temperature a tenth", l => l with { ShortCircuitPerK = l.ShortCircuitPerK / 10 }, "isc_temperature", "decimal point"),
        new Slip("isc_temperature A/K typed as %/K", l => l with { ShortCircuitPerK = l.ShortCircuitPerK * l.ShortCircuitA / 100 }, "isc_temperature", ""),
        new Slip("isc 15 % up", l => l with { ShortCircuitA = l.ShortCircuitA * 1.15 }, "imp", "of isc"),
        new Slip("voc 15 % up", l => l with { OpenCircuitV = l.OpenCircuitV * 1.15 }, "vmp", "of voc"),
        new Slip("vmp 15 % down, no power", l => l with { MaximumPowerV = l.MaximumPowerV * 0.85, PowerW = null }, "vmp", "of voc"),
        new Slip("voc_temperature and power_temperature swapped", SwapCoefficients, "voc_temperature", ""),
    ];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_cannot_be_true_is_refused(Slip slip) => AssertCaught(slip, GenuineLabels.All.Select(row => row.Data), refused: true);

    [Theory]
    [MemberData(nameof(Odd))]
    public void What_is_odd_is_asked_or_refused(Slip slip) => AssertCaught(slip, GenuineLabels.All.Select(row => row.Data), refused: false);

    [Theory]
    [MemberData(nameof(OddForCrystalline))]
    public void What_is_odd_for_crystalline_silicon_is_asked_or_refused(Slip slip) => AssertCaught(
        slip,
        GenuineLabels.All.Select(row => row.Data).Where(label => label.Technology is not (Technology.CadmiumTelluride or Technology.Cigs or Technology.AmorphousSilicon)),
        refused: false);

    /// <summary>Beyond 50 V, %/K and V/K come near each other and the slip hardly matters.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Percent_and_volts_a_kelvin_confused_are_caught_below_fifty_volts(bool voltsTyped)
    {
        Slip slip = voltsTyped
            ? new("V/K for %/K", l => l with { OpenCircuitPerK = l.OpenCircuitPerK * 100 / l.OpenCircuitV }, "voc_temperature", "V/K stands for %/K")
            : new("%/K for V/K", l => l with { OpenCircuitPerK = l.OpenCircuitPerK * l.OpenCircuitV / 100 }, "voc_temperature", "%/K stands for V/K");
        AssertCaught(slip, GenuineLabels.All.Select(row => row.Data).Where(label => label.OpenCircuitV < 50), refused: false);
    }

    [Fact]
    public void The_power_of_ten_panels_side_by_side_is_asked_about()
    {
        PanelLabel label = GenuineLabels.Named("folding-120w");
        LabelDoubt doubt = Assert.Single(PanelReader.Read(label with { PowerW = 1200, ShortCircuitA = 67.2, MaximumPowerA = 63.5 }).Doubts);
        Assert.Equal("power is 1200 W; no single panel on sale has over 1000 W. Is it the power of several?", doubt.Message);
        Assert.False(doubt.Refused);
    }

    // By hand: 0.77 × 0.875 = 0.674; 15.2 / 20 = 0.76 and 8.6 / 10 = 0.86 are each still usual, 0.76 × 0.86 = 0.654 is not.
    [Theory]
    [InlineData(15.4, 8.75, 0)]
    [InlineData(15.2, 8.6, 1)]
    public void A_low_fill_factor_of_usual_volts_and_amps_is_asked_about(double vmpV, double impA, int doubts)
    {
        IReadOnlyList<LabelDoubt> found = PanelReader.Read(
            new PanelLabel { Name = "tired", OpenCircuitV = 20, ShortCircuitA = 10, MaximumPowerV = vmpV, MaximumPowerA = impA }).Doubts;
        Assert.Equal(doubts, found.Count);
        Assert.All(found, doubt => Assert.Contains("0.654 of voc × isc (the fill factor)", doubt.Message, StringComparison.Ordinal));
        Assert.All(found, doubt => Assert.False(doubt.Refused));
    }

    [Fact]
    public void A_thin_film_label_that_does_not_say_so_is_asked_to()
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(
            GenuineLabels.Named("amorphous-triple-136w") with { Technology = null, Cells = null });
        Assert.NotNull(panel);
        Assert.Contains(doubts, doubt => doubt.Message.EndsWith("If the panel is thin film, say so with technology.", StringComparison.Ordinal));
    }

    /// <summary>Leaves a label alone whose two coefficients are all but equal.</summary>
    private static PanelLabel SwapCoefficients(PanelLabel label) => label.OpenCircuitPerK - label.PowerPerK > 0.0003
        ? label with { OpenCircuitPerK = label.PowerPerK, PowerPerK = label.OpenCircuitPerK }
        : label;

    private static void AssertCaught(Slip slip, IEnumerable<PanelLabel> genuine, bool refused)
    {
        List<string> missed = [];
        int tried = 0;
        foreach (PanelLabel label in genuine)
        {
            PanelLabel slipped = slip.Make(label);
            if (slipped == label)
            {
                continue; // The label is silent about this figure.
            }

            tried++;
            (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(slipped);
            bool caught = doubts.Any(doubt => (doubt.Refused || !refused)
                && (slip.Field.Length == 0 || doubt.Field == slip.Field)
                && doubt.Message.Contains(slip.Says, StringComparison.Ordinal));
            if (!caught || (panel is null) != doubts.Any(doubt => doubt.Refused))
            {
                missed.Add($"{label.Name}: {string.Join(" / ", doubts)}");
            }
        }

        Assert.True(tried >= 10, $"Only {tried} labels state this figure.");
        Assert.Empty(missed);
    }

    /// <summary>One way to get a label wrong, the field that the doubt must name and what it must say; empty where several are right.</summary>
    public sealed record Slip(string Name, Func<PanelLabel, PanelLabel> Make, string Field, string Says)
    {
        public override string ToString() => Name;
    }
}

using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Tests.Electrical;

public sealed class PanelModelTests
{
    private static readonly Conditions Morning = new(600, 30);

    [Fact]
    public void The_model_is_fitted_to_the_label_of_the_panel()
    {
        PanelModel model = PanelModel.FitTo(Panel(3));
        Assert.Equal(LabelFit.To(new LabelPoints(13.8, 37.1, 31.0, 12.9, -0.00275 * 37.1, 0.00045 * 13.8, 54, Technology.MonoPerc)), model.Fit);
        Assert.Equal(model.Fit.Parameters, model.At(Conditions.Standard));
    }

    [Fact]
    public void An_unshaded_panel_is_its_groups_in_series()
    {
        PanelModel model = PanelModel.FitTo(Panel(3));
        PanelAtWork work = model.Under(Morning, Shade.None);
        Assert.Equal(3, work.Groups.Length);

        // Same junction voltages in each group: at one current three groups stand at the voltage of the whole.
        DiodeParameters whole = model.At(Morning);
        Assert.Equal(DiodeCurve.OpenCircuitV(whole), 3 * DiodeCurve.OpenCircuitV(work.Groups[1]), 1e-12);
        Assert.Equal(DiodeCurve.CurrentA(whole, 24), DiodeCurve.CurrentA(work.Groups[2], 8), 1e-13);
    }

    [Fact]
    public void Shade_takes_its_share_of_light_and_shunt_group_by_group()
    {
        PanelModel model = PanelModel.FitTo(Panel(3));
        PanelAtWork work = model.Under(Morning, new Shade(0.5, [0, 0.8, 1], []));
        AssertSame(model.At(new Conditions(300, 30)).OneOf(3), work.Groups[0]);
        AssertSame(model.At(new Conditions(60, 30)).OneOf(3), work.Groups[1]);
        AssertSame(model.At(new Conditions(0, 30)).OneOf(3), work.Groups[2]);
        Assert.Equal(0, work.Groups[2].LightCurrentA);
        Assert.True(work.Groups[2].ShuntSiemens > 0);
    }

    [Fact]
    public void Groups_that_the_shade_does_not_name_are_unshaded()
    {
        PanelModel model = PanelModel.FitTo(Panel(3));
        PanelAtWork work = model.Under(Morning, new Shade(0, [0.4], []));
        AssertSame(model.At(Morning).OneOf(3), work.Groups[2]);
        AssertSame(model.At(new Conditions(360, 30)).OneOf(3), work.Groups[0]);
    }

    [Fact]
    public void The_bypass_diode_drops_half_a_volt_at_the_short_circuit_current()
    {
        BypassDiode diode = PanelModel.FitTo(Panel(3)).Under(Morning, Shade.None).Bypass;
        Assert.Equal(13.8, diode.SaturationCurrentA * (Math.Exp(0.5 / diode.IdealityV) - 1), 1e-10);
    }

    [Fact]
    public void Without_bypass_diodes_the_darkest_part_governs_the_one_group()
    {
        PanelModel model = PanelModel.FitTo(Panel(0));
        PanelAtWork work = model.Under(Morning, new Shade(0.5, [0, 0.8, 0.2], []));
        AssertSame(model.At(new Conditions(60, 30)), Assert.Single(work.Groups));
        Assert.Equal(BypassDiode.None, work.Bypass);
    }

    [Fact]
    public void More_shaded_groups_than_diodes_is_the_callers_fault() =>
        Assert.Throws<ArgumentException>(() => PanelModel.FitTo(Panel(1)).Under(Morning, new Shade(0, [0.1, 0.2], [])));

    private static void AssertSame(in DiodeParameters expected, in DiodeParameters actual)
    {
        Assert.Equal(expected.LightCurrentA, actual.LightCurrentA, 1e-13);
        Assert.Equal(expected.ShuntSiemens, actual.ShuntSiemens, 1e-15);
        Assert.Equal(expected.SaturationCurrentA, actual.SaturationCurrentA);
        Assert.Equal(expected.SeriesOhm, actual.SeriesOhm);
        Assert.Equal(expected.IdealityV, actual.IdealityV);
    }

    /// <summary>A half-cut panel of 400 W.</summary>
    private static Panel Panel(int bypassDiodes) => new()
    {
        Name = "north",
        PowerW = Sourced.Given(400.0),
        OpenCircuitV = 37.1,
        ShortCircuitA = 13.8,
        MaximumPowerV = Sourced.Given(31.0),
        MaximumPowerA = Sourced.Given(12.9),
        OpenCircuitPerK = Sourced.Given(-0.00275),
        ShortCircuitPerK = Sourced.Given(0.00045),
        Cells = Sourced.Given(54),
        BypassDiodes = Sourced.Given(bypassDiodes),
        ToleranceFraction = Sourced.Given(0.03),
        Technology = Sourced.Given(Technology.MonoPerc),
    };
}

using Arraywright.Electrical;
using Arraywright.Gear;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class DeSotoTests
{
    private static readonly BandGap Silicon = BandGap.Of(Technology.MonoPerc);

    private static readonly DiodeParameters Panel = new(8.2271404, 4.372225e-10, 0.3351005, 1 / 160.50792, 1.3921337);

    [Fact]
    public void Nothing_moves_at_the_reference() =>
        Assert.Equal(Panel, DeSoto.Translate(Panel, Silicon, 0.0032, Conditions.Standard, Conditions.Standard));

    [Fact]
    public void Each_parameter_follows_its_own_law()
    {
        // By hand: half the sun, 25 K warmer.
        DiodeParameters there = DeSoto.Translate(Panel, Silicon, 0.0032, Conditions.Standard, new Conditions(500, 50));
        Assert.Equal(0.5 * (8.2271404 + 0.08), there.LightCurrentA, 1e-14);
        Assert.Equal(Panel.SeriesOhm, there.SeriesOhm);
        Assert.Equal(0.5 / 160.50792, there.ShuntSiemens, 1e-17);
        Assert.Equal(1.3921337 * 323.15 / 298.15, there.IdealityV, 1e-15);
    }

    [Fact]
    public void A_dark_panel_keeps_a_millionth_of_its_shunt_and_gives_nothing()
    {
        DiodeParameters dark = DeSoto.Translate(Panel, Silicon, 0.0032, Conditions.Standard, new Conditions(0, -10));
        Assert.Equal(0, dark.LightCurrentA);
        Assert.Equal(1e-6 / 160.50792, dark.ShuntSiemens, 1e-22);
        Assert.Equal(0, DiodeCurve.OpenCircuitV(dark));
    }

    [Fact]
    public void There_and_back_is_where_it_was() =>
        Labels.Conditions.Where(there => there.IrradianceWPerM2 > 1).Sample(
            there =>
            {
                DiodeParameters moved = DeSoto.Translate(Panel, Silicon, 0.0032, Conditions.Standard, there);
                DiodeParameters back = DeSoto.Translate(moved, Silicon, 0.0032 * there.IrradianceWPerM2 / 1000, there, Conditions.Standard);
                Assert.Equal(1, back.LightCurrentA / Panel.LightCurrentA, 1e-12);
                Assert.Equal(1, back.SaturationCurrentA / Panel.SaturationCurrentA, 1e-11);
                Assert.Equal(1, back.ShuntSiemens / Panel.ShuntSiemens, 1e-12);
                Assert.Equal(1, back.IdealityV / Panel.IdealityV, 1e-12);
            },
            iter: 2000);

    [Fact]
    public void More_sun_more_current_and_voltage_and_more_heat_less_voltage() =>
        Gen.Select(Labels.Plausible, Labels.Conditions, Gen.Double[1, 200], Gen.Double[1, 20]).Sample(
            (label, conditions, brighter, warmer) =>
            {
                Conditions at = new(Math.Min(1300, conditions.IrradianceWPerM2) + 50, Math.Min(90, conditions.CellC));
                PanelFit fit = LabelFit.To(label);
                DiodeParameters here = fit.At(at);
                DiodeParameters bright = fit.At(at with { IrradianceWPerM2 = at.IrradianceWPerM2 + brighter });
                DiodeParameters warm = fit.At(at with { CellC = at.CellC + warmer });
                Assert.True(DiodeCurve.CurrentA(bright, 0) > DiodeCurve.CurrentA(here, 0));

                // Under De Soto's law a leaky panel gains shunt with the sun, so its voltage may stand still but for rounding.
                Assert.True(DiodeCurve.OpenCircuitV(bright) >= DiodeCurve.OpenCircuitV(here));
                Assert.True(DiodeCurve.OpenCircuitV(warm) < DiodeCurve.OpenCircuitV(here));
            },
            iter: 2000);

    [Theory]
    [InlineData(-1, 25)]
    [InlineData(double.NaN, 25)]
    [InlineData(double.PositiveInfinity, 25)]
    [InlineData(1000, -300)]
    [InlineData(1000, double.NaN)]
    [InlineData(1000, 500)]
    public void Conditions_of_no_panel_are_the_callers_fault(double irradianceWPerM2, double cellC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            DeSoto.Translate(Panel, Silicon, 0.0032, Conditions.Standard, new Conditions(irradianceWPerM2, cellC)));
}

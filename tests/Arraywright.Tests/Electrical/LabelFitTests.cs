using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Tests.Electrical;

public sealed class LabelFitTests
{
    [Theory]
    [MemberData(nameof(TypicalLabels.All), MemberType = typeof(TypicalLabels))]
    public void A_typical_label_is_met_on_all_five_conditions(
        string name, double iscA, double vocV, double vmpV, double impA, double vocPercentPerK, double iscPercentPerK, int cells, Technology technology)
    {
        LabelPoints label = TypicalLabels.Points(iscA, vocV, vmpV, impA, vocPercentPerK, iscPercentPerK, cells, technology);
        PanelFit fit = LabelFit.To(label);
        Assert.True(fit.Physical, $"{name}: {fit.Note}");
        FitAssert.IsPhysical(fit.Parameters);
        FitAssert.MeetsTheLabel(label, fit, 1e-10);
        FitAssert.HasTheCoefficient(label, fit, 1e-7);
    }

    [Theory]
    [MemberData(nameof(TypicalLabels.All), MemberType = typeof(TypicalLabels))]
    public void A_typical_label_gives_credible_parameters(
        string name, double iscA, double vocV, double vmpV, double impA, double vocPercentPerK, double iscPercentPerK, int cells, Technology technology)
    {
        // Common practice: ideality near 1 a junction, series resistance a few per cent of Voc/Isc, shunt conductance well under Isc/Voc.
        PanelFit fit = LabelFit.To(TypicalLabels.Points(iscA, vocV, vmpV, impA, vocPercentPerK, iscPercentPerK, cells, technology));
        bool manyJunctions = name.Contains("junction", StringComparison.Ordinal) || name.Contains("microcrystalline", StringComparison.Ordinal);
        Assert.InRange(fit.IdealityPerCell, 0.6, manyJunctions ? 3 : 1.5);
        Assert.InRange(fit.Parameters.SeriesOhm * iscA / vocV, 0.01, 0.3);
        Assert.InRange(fit.Parameters.ShuntSiemens * vocV / iscA, 1e-6, 0.5);
    }

    [Fact]
    public void A_flat_curve_that_needs_no_shunt_is_met_with_an_effective_band_gap_and_says_so()
    {
        // Imp/Isc of 0.961: so high that the ideality which the coefficient asks for would need a negative shunt.
        PanelFit fit = LabelFit.To(TypicalLabels.Points(10.2, 24.3, 20.4, 9.80, -0.28, 0.05, 36, Technology.MonoPerc));
        Assert.True(fit.Physical);
        Assert.InRange(fit.BandGap.StandardEv, 1.122, 2.199);
        Assert.Contains("effective band gap", fit.Note, StringComparison.Ordinal);
        Assert.InRange(fit.Parameters.ShuntSiemens, 1e-6 * 10.2 / 24.3, 1.01e-6 * 10.2 / 24.3);
    }

    [Fact]
    public void A_coefficient_that_needs_a_wider_gap_than_any_cell_has_takes_precedence_over_the_summit_of_power()
    {
        // -1 %/K at Imp/Isc of 0.961: the three points stay, the coefficient is nearly kept, the summit of power lies beside the label's.
        LabelPoints label = TypicalLabels.Points(10.2, 24.3, 20.4, 9.80, -1, 0.05, 36, Technology.MonoPerc);
        PanelFit fit = LabelFit.To(label);
        Assert.False(fit.Physical);
        Assert.StartsWith("No physical curve", fit.Note, StringComparison.Ordinal);
        Assert.Equal(2.2, fit.BandGap.StandardEv, 1e-12);
        Assert.True(Math.Abs(fit.Residuals.Slope) > 0.01);
        Assert.Equal(0, fit.Residuals.MaximumPowerCurrent, 1e-10);
        Assert.Equal(0, fit.Residuals.OpenCircuitCoefficient, 0.02);
        FitAssert.HasTheCoefficient(label, fit, 0.02);
    }

    [Fact]
    public void A_voltage_that_rises_with_heat_is_missed_and_said()
    {
        // No diode does that; the label's reader refuses it, the fit only has to survive and to say so.
        PanelFit fit = LabelFit.To(TypicalLabels.Points(10.2, 24.3, 20.4, 9.80, 0.35, 0.05, 36, Technology.MonoPerc));
        Assert.False(fit.Physical);
        Assert.True(Math.Abs(fit.Residuals.OpenCircuitCoefficient) > 0.01);
        FitAssert.IsPhysical(fit.Parameters);
    }

    // In order: squarer than the sharpest diode; maximum power under half the open-circuit voltage; under half the short-circuit current;
    // open-circuit voltage printed twice; three with the maximum power under the line from Isc to Voc or in its very corner.
    [Theory]
    [InlineData(10, 20, 13.0, 9.95)]
    [InlineData(10, 20, 9.0, 9.0)]
    [InlineData(10, 20, 18.0, 4.5)]
    [InlineData(10, 20, 19.99, 9.0)]
    [InlineData(10, 20, 8.0, 4.0)]
    [InlineData(10, 20, 0.001, 0.001)]
    [InlineData(10, 20, 19.999, 9.999)]
    public void A_label_that_no_curve_meets_gets_the_nearest_physical_one_with_the_rest_reported(double iscA, double vocV, double vmpV, double impA)
    {
        LabelPoints label = TypicalLabels.Points(iscA, vocV, vmpV, impA, -0.3, 0.05, 36, Technology.MonoPerc);
        PanelFit fit = LabelFit.To(label);
        FitAssert.IsPhysical(fit.Parameters);
        Assert.False(fit.Physical);
        Assert.True(double.IsFinite(fit.Residuals.Largest));
        Assert.StartsWith("No physical curve", fit.Note, StringComparison.Ordinal);

        // What is kept in every case: the two ends of the curve.
        Assert.Equal(0, fit.Residuals.ShortCircuit, 1e-10);
        Assert.Equal(0, fit.Residuals.OpenCircuit, 1e-10);
    }

    [Fact]
    public void The_nearest_curve_still_passes_through_the_points_where_any_does()
    {
        LabelPoints label = TypicalLabels.Points(10, 20, 13.0, 9.95, -0.3, 0.05, 36, Technology.MonoPerc);
        PanelFit fit = LabelFit.To(label);
        Assert.Equal(0, fit.Residuals.MaximumPowerCurrent, 1e-10);
        Assert.True(Math.Abs(fit.Residuals.Slope) > 1e-3);
    }

    [Theory]
    [InlineData(0, 20, 16, 9)]
    [InlineData(10, 20, 20, 9)]
    [InlineData(10, 20, 16, 10)]
    [InlineData(10, 20, -16, 9)]
    [InlineData(double.NaN, 20, 16, 9)]
    [InlineData(10, double.PositiveInfinity, 16, 9)]
    public void Figures_of_no_panel_are_the_callers_fault(double iscA, double vocV, double vmpV, double impA) =>
        Assert.Throws<ArgumentException>(() => LabelFit.To(TypicalLabels.Points(iscA, vocV, vmpV, impA, -0.3, 0.05, 36, Technology.MonoPerc)));

    [Fact]
    public void Cells_only_scale_the_reported_ideality()
    {
        PanelFit few = LabelFit.To(TypicalLabels.Points(8.21, 32.9, 26.3, 7.61, -0.374, 0.039, 54, Technology.Multicrystalline));
        PanelFit many = LabelFit.To(TypicalLabels.Points(8.21, 32.9, 26.3, 7.61, -0.374, 0.039, 108, Technology.Multicrystalline));
        Assert.Equal(few.Parameters, many.Parameters);
        Assert.Equal(few.IdealityPerCell, 2 * many.IdealityPerCell, 1e-12);
    }
}

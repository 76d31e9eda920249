using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class LabelFitProperties
{
    [Fact]
    public void A_plausible_label_is_met_or_honestly_reported() =>
        Labels.Plausible.Sample(
            label =>
            {
                PanelFit fit = LabelFit.To(label);
                FitAssert.IsPhysical(fit.Parameters);
                Assert.True(double.IsFinite(fit.Residuals.Largest));
                Assert.Equal(fit.Physical, !fit.Note.StartsWith("No physical curve", StringComparison.Ordinal));
                if (fit.Physical)
                {
                    FitAssert.MeetsTheLabel(label, fit, 1e-10);
                    FitAssert.HasTheCoefficient(label, fit, 1e-6);
                }
                else
                {
                    // What stands in keeps the three points, and stays close in power and coefficient.
                    (double voltageV, double currentA) = DiodeCurve.MaximumPower(fit.Parameters);
                    Assert.Equal(0, fit.Residuals.MaximumPowerCurrent, 1e-10);
                    Assert.InRange(voltageV * currentA / (label.MaximumPowerV * label.MaximumPowerA), 1 - 1e-9, 1.03);
                    Assert.Equal(0, fit.Residuals.OpenCircuitCoefficient, 0.1);
                }
            },
            iter: 3000);

    [Fact]
    public void Nearly_all_plausible_labels_are_met()
    {
        // Labels of uniform fill factor and shape are harsher than the market; what is not met is a curve too square or too skew for one diode.
        int met = 0, all = 0;
        Labels.Plausible.Sample(
            label =>
            {
                all++;
                met += LabelFit.To(label).Physical ? 1 : 0;
            },
            iter: 3000,
            threads: 1);
        Assert.True(met > 0.9 * all, $"{met} of {all}");
    }

    [Fact]
    public void No_label_breaks_the_fit_or_the_curve_of_the_fitted_panel_anywhere() =>
        Gen.Select(Labels.Possible, Labels.Conditions).Sample(
            (label, conditions) =>
            {
                PanelFit fit = LabelFit.To(label);
                FitAssert.IsPhysical(fit.Parameters);
                Assert.True(double.IsFinite(fit.Residuals.Largest) && double.IsFinite(fit.IdealityPerCell));

                DiodeParameters p = fit.At(conditions);
                (double voltageV, double currentA) = DiodeCurve.MaximumPower(p);
                double openV = DiodeCurve.OpenCircuitV(p);
                Assert.True(double.IsFinite(openV) && openV >= 0, $"{openV} {p}");
                Assert.InRange(voltageV, 0, openV);
                Assert.InRange(currentA, 0, p.LightCurrentA);
            },
            iter: 3000);

    [Fact]
    public void A_fit_comes_out_the_same_every_time() =>
        Labels.Plausible.Sample(label => LabelFit.To(label).Equals(LabelFit.To(label)), iter: 200);
}

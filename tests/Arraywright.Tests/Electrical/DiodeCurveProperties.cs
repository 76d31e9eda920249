using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class DiodeCurveProperties
{
    /// <summary>A plausible panel under any conditions, from near darkness up.</summary>
    private static readonly Gen<(LabelPoints Label, DiodeParameters Curve)> Curves =
        Gen.Select(Labels.Plausible, Labels.Conditions, (label, conditions) =>
            (label, LabelFit.To(label).At(conditions with { IrradianceWPerM2 = conditions.IrradianceWPerM2 + 0.01 })));

    [Fact]
    public void Current_satisfies_the_diode_equation_at_any_voltage() =>
        Gen.Select(Curves, Gen.Double[-1, 1.5]).Sample(
            (drawn, share) =>
            {
                double voltageV = share * drawn.Label.OpenCircuitV;
                double currentA = DiodeCurve.CurrentA(drawn.Curve, voltageV);
                double x = voltageV + (currentA * drawn.Curve.SeriesOhm);

                // What a last-bit change of the junction voltage already does to the equation, several times over.
                double rounding = 1e-14 * (drawn.Curve.LightCurrentA + Math.Abs(currentA)
                    + (FitAssert.Conductance(drawn.Curve, x) * (Math.Abs(x) + Math.Abs(voltageV) + Math.Abs(currentA * drawn.Curve.SeriesOhm))));
                Assert.Equal(0, FitAssert.Unbalanced(drawn.Curve, voltageV, currentA), rounding);
            },
            iter: 3000);

    [Fact]
    public void Current_falls_as_voltage_rises() =>
        Gen.Select(Curves, Gen.Double[-1, 1.5], Gen.Double[0.001, 0.5]).Sample(
            (drawn, share, step) =>
            {
                double lowA = DiodeCurve.CurrentA(drawn.Curve, (share + step) * drawn.Label.OpenCircuitV);
                return lowA < DiodeCurve.CurrentA(drawn.Curve, share * drawn.Label.OpenCircuitV);
            },
            iter: 2000);

    [Fact]
    public void No_current_flows_at_the_open_circuit_voltage() =>
        Curves.Sample(
            drawn =>
            {
                double openV = DiodeCurve.OpenCircuitV(drawn.Curve);
                Assert.Equal(0, FitAssert.Unbalanced(drawn.Curve, openV, 0) / (FitAssert.Conductance(drawn.Curve, openV) * openV), 1e-14);
            },
            iter: 3000);

    [Fact]
    public void No_point_of_the_curve_gives_more_than_the_maximum_power() =>
        Curves.Sample(
            drawn =>
            {
                (double bestV, double bestA) = DiodeCurve.MaximumPower(drawn.Curve);
                double openV = DiodeCurve.OpenCircuitV(drawn.Curve);
                Assert.Equal(bestA, DiodeCurve.CurrentA(drawn.Curve, bestV), 1e-11 * drawn.Curve.LightCurrentA);
                for (int i = 1; i < 100; i++)
                {
                    double voltageV = i * openV / 100;
                    Assert.True(voltageV * DiodeCurve.CurrentA(drawn.Curve, voltageV) <= bestV * bestA * (1 + 1e-13));
                }
            },
            iter: 500);

    [Fact]
    public void Slope_agrees_with_differences_of_current() =>
        Gen.Select(Curves, Gen.Double[0, 1.1]).Sample(
            (drawn, share) =>
            {
                double voltageV = share * drawn.Label.OpenCircuitV;
                double stepV = 1e-5 * drawn.Label.OpenCircuitV;
                double slope = (DiodeCurve.CurrentA(drawn.Curve, voltageV + stepV) - DiodeCurve.CurrentA(drawn.Curve, voltageV - stepV)) / (2 * stepV);
                Assert.Equal(slope, DiodeCurve.SlopeSiemens(drawn.Curve, voltageV), (1e-6 * Math.Abs(slope)) + (1e-9 * drawn.Curve.LightCurrentA / drawn.Label.OpenCircuitV));
            },
            iter: 2000);
}

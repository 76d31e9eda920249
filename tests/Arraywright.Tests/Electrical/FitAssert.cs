using Arraywright.Electrical;

namespace Arraywright.Tests.Electrical;

/// <summary>The conditions of a fit, by putting numbers into the diode equation with the platform's own exponential: none of the solver's code.</summary>
internal static class FitAssert
{
    public static void IsPhysical(in DiodeParameters p)
    {
        Assert.True(p.LightCurrentA > 0 && double.IsFinite(p.LightCurrentA), $"{p}");
        Assert.True(p.SaturationCurrentA > 0 && double.IsFinite(p.SaturationCurrentA), $"{p}");
        Assert.True(p.SeriesOhm >= 0 && double.IsFinite(p.SeriesOhm), $"{p}");
        Assert.True(p.ShuntSiemens > 0 && double.IsFinite(p.ShuntSiemens), $"{p}");
        Assert.True(p.IdealityV > 0 && double.IsFinite(p.IdealityV), $"{p}");
    }

    /// <summary>Three points and the summit of power.</summary>
    public static void MeetsTheLabel(LabelPoints label, PanelFit fit, double tolerance)
    {
        DiodeParameters p = fit.Parameters;
        Assert.Equal(0, Unbalanced(p, 0, label.ShortCircuitA) / label.ShortCircuitA, tolerance);
        Assert.Equal(0, Unbalanced(p, label.OpenCircuitV, 0) / label.ShortCircuitA, tolerance);
        Assert.Equal(0, Unbalanced(p, label.MaximumPowerV, label.MaximumPowerA) / label.ShortCircuitA, tolerance);

        double g = Conductance(p, label.MaximumPowerV + (label.MaximumPowerA * p.SeriesOhm));
        double slope = 1 - (label.MaximumPowerV / label.MaximumPowerA * g / (1 + (g * p.SeriesOhm)));
        Assert.Equal(0, slope, tolerance);
    }

    /// <summary>The label's dVoc/dT, by a central difference over 0.02 K on open-circuit voltages found here by halving.</summary>
    public static void HasTheCoefficient(LabelPoints label, PanelFit fit, double tolerance)
    {
        double warmV = OpenCircuitV(fit.At(new Conditions(1000, 25.01)), 2 * label.OpenCircuitV);
        double coolV = OpenCircuitV(fit.At(new Conditions(1000, 24.99)), 2 * label.OpenCircuitV);
        Assert.Equal(1, (warmV - coolV) / 0.02 / label.OpenCircuitVPerK, tolerance);
    }

    public static double Unbalanced(in DiodeParameters p, double voltageV, double currentA)
    {
        double x = voltageV + (currentA * p.SeriesOhm);
        return p.LightCurrentA - (p.SaturationCurrentA * (Math.Exp(x / p.IdealityV) - 1)) - (x * p.ShuntSiemens) - currentA;
    }

    public static double Conductance(in DiodeParameters p, double x) =>
        (p.SaturationCurrentA / p.IdealityV * Math.Exp(x / p.IdealityV)) + p.ShuntSiemens;

    private static double OpenCircuitV(in DiodeParameters p, double highV)
    {
        double lowV = 0;
        for (int halving = 0; halving < 80; halving++)
        {
            double middleV = 0.5 * (lowV + highV);
            (lowV, highV) = Unbalanced(p, middleV, 0) > 0 ? (middleV, highV) : (lowV, middleV);
        }

        return lowV;
    }
}

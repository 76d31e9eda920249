using System.Globalization;

namespace Arraywright.Electrical;

/// <summary>Fits the five-parameter model to a label.</summary>
/// <remarks>
/// Five conditions (De Soto, Klein, Beckman 2006): the curve passes through (0, Isc), (Voc, 0) and (Vmp, Imp), its power has its
/// summit at Vmp, and its dVoc/dT at 25 °C, the exact derivative, is the label's. Nested searches of one unknown between fixed ends
/// instead of five unknowns at once: nothing depends on a first guess and nothing can run away.
/// </remarks>
public static class LabelFit
{
    /// <summary>Voc/a of the sharpest and of the softest diode searched at all; labels of real panels ask for 20 to 45.</summary>
    private const double Sharpest = 100, Softest = 5;

    /// <summary>Effective band gaps allowed, eV: from under any cell sold to over the widest single junction.</summary>
    private const double LeastGapEv = 0.8, MostGapEv = 2.2;

    /// <summary>Halvings that bring a to the last bit.</summary>
    private const int Halvings = 56;

    /// <summary>The physical model that meets the label, or the nearest there is, with what is left over.</summary>
    /// <exception cref="ArgumentException">The figures describe no panel at all: see <see cref="LabelPoints"/>.</exception>
    public static PanelFit To(LabelPoints label)
    {
        if (!label.DescribeAPanel)
        {
            throw new ArgumentException($"A panel has 0 < Vmp < Voc, 0 < Imp < Isc, finite coefficients and at least one cell: {label}.", nameof(label));
        }

        PointFamily family = new(label);
        BandGap own = BandGap.Of(label.Technology);
        double lowV = SharpestPhysicalV(label, own);
        if (family.At(lowV) is not { } sharpest)
        {
            DiodeParameters nearest = family.NearestAt(lowV);
            return Report(label, nearest, EffectiveGap(label, nearest, own), "No physical curve has the label's maximum power together with its voltage coefficient; the nearest one stands in.");
        }

        // A larger a makes the coefficient more negative (so in every label tried). Where it asks for an a beyond an end, the end is held.
        double Miss(in DiodeParameters p) => DeSoto.OpenCircuitVPerK(p, own, label.ShortCircuitAPerK) - label.OpenCircuitVPerK;
        if (Miss(sharpest) <= 0)
        {
            return Held(label, sharpest, own);
        }

        DiodeParameters softest = SoftEnough(family, sharpest, label.OpenCircuitV / Softest, p => Miss(p) < 0);
        if (Miss(softest) >= 0)
        {
            return Held(label, softest, own);
        }

        double metV = RootSearch.Between(a => Miss(family.At(a) ?? softest), lowV, softest.IdealityV);
        return Report(label, family.At(metV) ?? softest, own, "The curve meets the label's three points, its maximum power and its voltage coefficient.");
    }

    /// <summary>The a under which no band gap allowed gives the label's coefficient: without shunt, dVoc/dT = Voc/T − a·d ln I0/dT.</summary>
    private static double SharpestPhysicalV(LabelPoints label, BandGap own)
    {
        double perK = DeSoto.SaturationPerK(own with { StandardEv = MostGapEv });
        double idealityV = ((label.OpenCircuitV / DeSoto.StandardK) - label.OpenCircuitVPerK) / perK;
        return Math.Clamp(idealityV, label.OpenCircuitV / Sharpest, 0.99 * label.OpenCircuitV / Softest);
    }

    /// <summary>By halving, a physical curve that is soft enough; where none is, that of the highest a.</summary>
    /// <remarks>There is one at <paramref name="sharpest"/>, and from some a upwards none.</remarks>
    private static DiodeParameters SoftEnough(PointFamily family, DiodeParameters sharpest, double highV, Func<DiodeParameters, bool> enough)
    {
        DiodeParameters softest = sharpest;
        for (int halving = 0; halving < Halvings && !enough(softest); halving++)
        {
            double middleV = 0.5 * (softest.IdealityV + highV);
            if (family.At(middleV) is { } curve)
            {
                softest = curve;
            }
            else
            {
                highV = middleV;
            }
        }

        return softest;
    }

    /// <summary>The curve at an end of the physical range, with the band gap that mends its voltage coefficient.</summary>
    private static PanelFit Held(LabelPoints label, in DiodeParameters p, BandGap own)
    {
        BandGap gap = EffectiveGap(label, p, own);
        string gave = gap.StandardEv is LeastGapEv or MostGapEv
            ? "No physical curve through the label's points has its voltage coefficient; the nearest one stands in."
            : string.Create(CultureInfo.InvariantCulture, $"The voltage coefficient is met with an effective band gap of {gap.StandardEv:0.000} eV instead of {own.StandardEv:0.000} eV.");
        return Report(label, p, gap, gave);
    }

    /// <summary>The band gap with which this curve has the label's coefficient, which is linear in it; held between the allowed ends.</summary>
    private static BandGap EffectiveGap(LabelPoints label, in DiodeParameters p, BandGap own)
    {
        double least = DeSoto.OpenCircuitVPerK(p, own with { StandardEv = LeastGapEv }, label.ShortCircuitAPerK);
        double most = DeSoto.OpenCircuitVPerK(p, own with { StandardEv = MostGapEv }, label.ShortCircuitAPerK);
        double share = Math.Clamp((label.OpenCircuitVPerK - least) / (most - least), 0, 1);
        return own with { StandardEv = LeastGapEv + (share * (MostGapEv - LeastGapEv)) };
    }

    private static PanelFit Report(LabelPoints label, in DiodeParameters p, BandGap gap, string note)
    {
        FitResiduals residuals = Residuals(label, p, gap);
        double ideality = p.IdealityV / (label.Cells * DeSoto.BoltzmannVPerK * DeSoto.StandardK);
        return new PanelFit(p, gap, label.ShortCircuitAPerK, ideality, residuals, note + WhatIsLeft(label, p, residuals));
    }

    /// <summary>Measured on the finished curve, not taken from the searches.</summary>
    private static FitResiduals Residuals(LabelPoints label, in DiodeParameters p, BandGap gap)
    {
        double coefficientScale = Math.Max(Math.Abs(label.OpenCircuitVPerK), 1e-4 * label.OpenCircuitV);
        double currentA = DiodeCurve.CurrentA(p, label.MaximumPowerV);
        double slopeA = currentA + (label.MaximumPowerV * DiodeCurve.SlopeSiemens(p, label.MaximumPowerV));
        return new FitResiduals(
            (DiodeCurve.CurrentA(p, 0) / label.ShortCircuitA) - 1,
            (DiodeCurve.OpenCircuitV(p) / label.OpenCircuitV) - 1,
            (currentA / label.MaximumPowerA) - 1,
            slopeA / label.MaximumPowerA,
            (DeSoto.OpenCircuitVPerK(p, gap, label.ShortCircuitAPerK) - label.OpenCircuitVPerK) / coefficientScale);
    }

    private static string WhatIsLeft(LabelPoints label, in DiodeParameters p, FitResiduals residuals)
    {
        if (residuals.Largest <= PanelFit.Tolerance)
        {
            return "";
        }

        (double voltageV, double currentA) = DiodeCurve.MaximumPower(p);
        return string.Create(
            CultureInfo.InvariantCulture,
            $" Its maximum power is {voltageV * currentA:0.0} W at {voltageV:0.00} V (label {label.MaximumPowerV * label.MaximumPowerA:0.0} W at {label.MaximumPowerV:0.00} V); its voltage coefficient is {100 * Math.Abs(residuals.OpenCircuitCoefficient):0.0} % off the label's.");
    }
}

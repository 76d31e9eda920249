namespace Arraywright.Electrical;

/// <summary>How the five parameters move with irradiance and cell temperature.</summary>
/// <remarks>
/// W. De Soto, S. A. Klein, W. A. Beckman, "Improvement and validation of a model for photovoltaic array performance",
/// Solar Energy 80 (2006) 78, with the spectral ratio M/M_ref at 1:
/// a ∝ T; IL = (S/S₀)·(IL₀ + α·ΔT); I0 = I0₀·(T/T₀)³·exp((Eg₀/T₀ − Eg/T)/k); Gsh ∝ S; Rs constant.
/// </remarks>
public static class DeSoto
{
    /// <summary>Boltzmann's constant over the elementary charge, V/K (exact, SI 2019).</summary>
    internal const double BoltzmannVPerK = 1.380649e-23 / 1.602176634e-19;

    /// <summary>0 °C, K.</summary>
    internal const double ZeroCelsiusK = 273.15;

    /// <summary>The least share of the reference shunt conductance that remains in the dark, so that the current of a dark panel stays defined.</summary>
    internal const double LeastShuntShare = 1e-6;

    /// <summary>The parameters under other conditions.</summary>
    /// <param name="p">The parameters under <paramref name="from"/>.</param>
    /// <param name="bandGap">Of the cells.</param>
    /// <param name="lightCurrentAPerK">α: change of the light current a kelvin at the irradiance of <paramref name="from"/>, A/K.</param>
    /// <param name="from">Where <paramref name="p"/> holds; irradiance over 0.</param>
    /// <param name="to">Irradiance from 0, W/m²; cell from −100 to 200 °C. Made for 0 to 1500 W/m² and −60 to 110 °C.</param>
    /// <returns>IL = 0 in the dark; Gsh never under 1e-6 of its reference value.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="to"/> is not finite or outside the range.</exception>
    public static DiodeParameters Translate(in DiodeParameters p, BandGap bandGap, double lightCurrentAPerK, Conditions from, Conditions to)
    {
        if (!(to.IrradianceWPerM2 >= 0 && double.IsFinite(to.IrradianceWPerM2) && to.CellC >= -100 && to.CellC <= 200))
        {
            throw new ArgumentOutOfRangeException(nameof(to), to, "Irradiance is finite and from 0 W/m², cell temperature from −100 to 200 °C.");
        }

        double sun = to.IrradianceWPerM2 / from.IrradianceWPerM2;
        double fromK = from.CellC + ZeroCelsiusK;
        double toK = to.CellC + ZeroCelsiusK;
        double warmth = toK / fromK;
        double exponent = ((bandGap.AtEv(from.CellC) / fromK) - (bandGap.AtEv(to.CellC) / toK)) / BoltzmannVPerK;
        return new DiodeParameters(
            Math.Max(0, sun * (p.LightCurrentA + (lightCurrentAPerK * (toK - fromK)))),
            p.SaturationCurrentA * warmth * warmth * warmth * Exponential.Of(exponent),
            p.SeriesOhm,
            p.ShuntSiemens * Math.Max(sun, LeastShuntShare),
            p.IdealityV * warmth);
    }

    /// <summary>Slope of the open-circuit voltage over cell temperature at standard test conditions, V/K: the exact derivative of the law above.</summary>
    /// <param name="p">The parameters at standard test conditions.</param>
    /// <param name="bandGap">Of the cells.</param>
    /// <param name="lightCurrentAPerK">α, A/K.</param>
    public static double OpenCircuitVPerK(in DiodeParameters p, BandGap bandGap, double lightCurrentAPerK)
    {
        double openCircuitV = DiodeCurve.OpenCircuitV(p);
        double diodeA = p.SaturationCurrentA * Exponential.Of(openCircuitV / p.IdealityV);
        double rise = diodeA * openCircuitV / (p.IdealityV * StandardK);
        double fall = (diodeA - p.SaturationCurrentA) * SaturationPerK(bandGap);
        return (lightCurrentAPerK + rise - fall) / ((diodeA / p.IdealityV) + p.ShuntSiemens);
    }

    /// <summary>25 °C, K.</summary>
    internal const double StandardK = 25 + ZeroCelsiusK;

    /// <summary>d ln I0/dT at 25 °C, 1/K: (3 + Eg/(k·T)·(1 − T·(dEg/dT)/Eg))/T.</summary>
    internal static double SaturationPerK(BandGap bandGap) =>
        (3 + (bandGap.StandardEv * (1 - (bandGap.PerK * StandardK)) / (BoltzmannVPerK * StandardK))) / StandardK;
}

namespace Arraywright.Electrical;

/// <summary>
/// The curves through the three points of a label, each with its summit of power at (Vmp, Imp): one for each a, as long as Rs and Gsh stay physical.
/// </summary>
/// <remarks>
/// For given a and Rs the three points are linear in Gsh and J = I0·exp(Voc/a), the diode's current at open circuit, which has the
/// size of Isc where I0 itself spans forty decades. With x the junction voltage and y = Voc − x:
/// Isc = J·(1 − exp(−y_sc/a)) + Gsh·y_sc and Imp = J·(1 − exp(−y_mp/a)) + Gsh·y_mp.
/// The summit asks J/a·exp(−y_mp/a) + Gsh = Imp/(Vmp − Imp·Rs). What is left of it, as a function of Rs, rises through at most one
/// zero; the a with a physical zero reach from the smallest to a highest one. (So in all of 24,000 random labels tried; not proved.)
/// </remarks>
internal sealed class PointFamily(LabelPoints label)
{
    /// <summary>The least shunt conductance counted as physical, S: a million times the panel's own Voc/Isc as resistance.</summary>
    private readonly double _leastShuntSiemens = 1e-6 * label.ShortCircuitA / label.OpenCircuitV;

    /// <summary>Below this Rs the junction stays under Voc at maximum power and above that of short circuit, and the slope asked for is positive.</summary>
    private readonly double _mostSeriesOhm = 0.999999999 * Math.Min(
        (label.OpenCircuitV - label.MaximumPowerV) / label.MaximumPowerA,
        label.MaximumPowerV / Math.Max(label.MaximumPowerA, label.ShortCircuitA - label.MaximumPowerA));

    /// <summary>True when some physical curve passes through the points: the maximum power lies above the straight line from Isc to Voc.</summary>
    private readonly bool _hasPoints =
        label.MaximumPowerA / label.ShortCircuitA > 1.0000001 - (label.MaximumPowerV / label.OpenCircuitV);

    /// <summary>The curve of this a; null when it would need Rs or Gsh below their least.</summary>
    public DiodeParameters? At(double idealityV)
    {
        if (!_hasPoints || SlopeError(idealityV, 0) > 0 || SlopeError(idealityV, _mostSeriesOhm) < 0)
        {
            return null;
        }

        DiodeParameters curve = Through(idealityV, RootSearch.Between(ohm => SlopeError(idealityV, ohm), 0, _mostSeriesOhm));
        return curve.ShuntSiemens >= _leastShuntSiemens ? curve : null;
    }

    /// <summary>Where <see cref="At"/> has none: the physical curve of this a through the points that comes nearest to the summit.</summary>
    /// <returns>Where even the points cannot be met, the curve without resistances through Isc and Voc alone.</returns>
    public DiodeParameters NearestAt(double idealityV)
    {
        if (!_hasPoints || Through(idealityV, 0).ShuntSiemens < _leastShuntSiemens)
        {
            double shuntA = _leastShuntSiemens * label.OpenCircuitV;
            double diodeA = (label.ShortCircuitA - shuntA) / (1 - Exponential.Of(-label.OpenCircuitV / idealityV));
            return Curve(idealityV, 0, diodeA, _leastShuntSiemens);
        }

        if (SlopeError(idealityV, 0) > 0)
        {
            return Through(idealityV, 0);
        }

        // The summit asks for more Rs, but Gsh falls as Rs grows: as much as Gsh allows.
        DiodeParameters most = Through(idealityV, _mostSeriesOhm);
        if (most.ShuntSiemens >= _leastShuntSiemens)
        {
            return most;
        }

        double allowed = RootSearch.Between(ohm => Through(idealityV, ohm).ShuntSiemens - _leastShuntSiemens, 0, _mostSeriesOhm);
        return Through(idealityV, allowed) with { ShuntSiemens = _leastShuntSiemens };
    }

    /// <summary>What is left of the condition on the summit, S; negative when the summit lies above Vmp.</summary>
    private double SlopeError(double idealityV, double seriesOhm)
    {
        DiodeParameters curve = Through(idealityV, seriesOhm);
        double dropV = label.MaximumPowerA * seriesOhm;
        return DiodeCurve.JunctionSiemens(curve, label.MaximumPowerV + dropV) - (label.MaximumPowerA / (label.MaximumPowerV - dropV));
    }

    /// <summary>The curve through the three points for this a and Rs.</summary>
    private DiodeParameters Through(double idealityV, double seriesOhm)
    {
        double atShort = label.OpenCircuitV - (label.ShortCircuitA * seriesOhm);
        double atMaximum = label.OpenCircuitV - label.MaximumPowerV - (label.MaximumPowerA * seriesOhm);
        double lostAtShort = 1 - Exponential.Of(-atShort / idealityV);
        double lostAtMaximum = 1 - Exponential.Of(-atMaximum / idealityV);

        double determinant = (lostAtShort * atMaximum) - (lostAtMaximum * atShort);
        double diodeA = ((label.ShortCircuitA * atMaximum) - (label.MaximumPowerA * atShort)) / determinant;
        double shuntSiemens = ((lostAtShort * label.MaximumPowerA) - (lostAtMaximum * label.ShortCircuitA)) / determinant;
        return Curve(idealityV, seriesOhm, diodeA, shuntSiemens);
    }

    private DiodeParameters Curve(double idealityV, double seriesOhm, double diodeA, double shuntSiemens)
    {
        double saturationA = diodeA * Exponential.Of(-label.OpenCircuitV / idealityV);
        double lightA = diodeA - saturationA + (label.OpenCircuitV * shuntSiemens);
        return new DiodeParameters(lightA, saturationA, seriesOhm, shuntSiemens, idealityV);
    }
}

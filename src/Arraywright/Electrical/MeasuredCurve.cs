namespace Arraywright.Electrical;

/// <summary>A measured curve as a least-squares problem in (IL, J, Rs, Gsh, a), J the diode current at the highest voltage measured.</summary>
internal sealed class MeasuredCurve
{
    private readonly IReadOnlyList<CurvePoint> _points;
    private readonly double _highestV;
    private readonly double _highestA;
    private readonly CurvePoint _best;

    private MeasuredCurve(IReadOnlyList<CurvePoint> points)
    {
        _points = points;
        foreach (CurvePoint point in points)
        {
            _highestV = Math.Max(_highestV, point.VoltageV);
            _highestA = Math.Max(_highestA, point.CurrentA);
            if (point.VoltageV > 0 && point.VoltageV * point.CurrentA > _best.VoltageV * _best.CurrentA)
            {
                _best = point;
            }
        }

        double ohm = _highestV / _highestA;
        Least = [1e-6 * _highestA, 1e-9 * _highestA, 0, 0, _highestV / 200];
        Most = [10 * _highestA, 1e6 * _highestA, ohm, 10 / ohm, _highestV];
    }

    /// <summary>Lower bounds of the unknowns.</summary>
    public double[] Least { get; }

    /// <summary>Upper bounds of the unknowns.</summary>
    public double[] Most { get; }

    /// <summary>The problem of these points.</summary>
    /// <exception cref="ArgumentException">See <see cref="MeasuredFit.Of"/>.</exception>
    public static MeasuredCurve Of(IReadOnlyList<CurvePoint> points)
    {
        bool finite = points.All(point => double.IsFinite(point.VoltageV) && double.IsFinite(point.CurrentA));
        if (points.Count < MeasuredFit.FewestPoints || !finite || !points.Any(point => point.VoltageV > 0 && point.CurrentA > 0))
        {
            throw new ArgumentException(
                $"A curve to fit has at least {MeasuredFit.FewestPoints} finite points, some of positive voltage and current; here are {points.Count}.", nameof(points));
        }

        return new MeasuredCurve(points);
    }

    /// <summary>A start: light and diode current from the curve, a weak shunt, the rest as stated.</summary>
    /// <param name="sharpness">Voc/a.</param>
    /// <param name="seriesShare">Share of the voltage between maximum power and the highest that Rs takes at the current of maximum power.</param>
    public double[] Start(double sharpness, double seriesShare)
    {
        double ohm = Math.Min(seriesShare * (_highestV - _best.VoltageV) / _best.CurrentA, Most[2]);
        return [_highestA, _highestA, ohm, 0.01 * _highestA / _highestV, _highestV / sharpness];
    }

    /// <summary>The five parameters of these unknowns.</summary>
    public DiodeParameters Parameters(ReadOnlySpan<double> unknowns) => new(
        unknowns[0],
        unknowns[1] * Exponential.Of(-_highestV / unknowns[4]),
        unknowns[2],
        unknowns[3],
        unknowns[4]);

    /// <summary>Explicit residuals (see <see cref="CurrentError"/>) and their derivatives.</summary>
    public void ExplicitErrors(ReadOnlySpan<double> unknowns, Span<double> errors, Span<double> derivatives)
    {
        for (int row = 0; row < errors.Length; row++)
        {
            CurvePoint point = _points[row];
            Span<double> slopes = derivatives.Slice(row * 5, 5);
            errors[row] = Sides(unknowns, point.VoltageV, point.CurrentA, slopes) - point.CurrentA;
        }
    }

    /// <summary>True implicit residuals and their derivatives: those of the explicit ones at the model's own current, over 1 + Rs·g.</summary>
    public void TrueErrors(ReadOnlySpan<double> unknowns, Span<double> errors, Span<double> derivatives)
    {
        DiodeParameters p = Parameters(unknowns);
        for (int row = 0; row < errors.Length; row++)
        {
            CurvePoint point = _points[row];
            Span<double> slopes = derivatives.Slice(row * 5, 5);
            double junctionV = DiodeCurve.JunctionV(p, point.VoltageV);
            double currentA = DiodeCurve.JunctionCurrentA(p, junctionV);
            Sides(unknowns, point.VoltageV, currentA, slopes);
            double share = 1 / (1 + (p.SeriesOhm * DiodeCurve.JunctionSiemens(p, junctionV)));
            foreach (ref double slope in slopes)
            {
                slope *= share;
            }

            errors[row] = currentA - point.CurrentA;
        }
    }

    /// <summary>The right side of the diode equation for a current on it, and its derivatives by the unknowns.</summary>
    private double Sides(ReadOnlySpan<double> unknowns, double voltageV, double currentA, Span<double> slopes)
    {
        (double lightA, double diodeA, double seriesOhm, double shuntSiemens, double idealityV) =
            (unknowns[0], unknowns[1], unknowns[2], unknowns[3], unknowns[4]);
        double junctionV = voltageV + (currentA * seriesOhm);
        double over = (junctionV - _highestV) / idealityV;
        double rise = Exponential.Of(over);
        double none = Exponential.Of(-_highestV / idealityV);
        slopes[0] = 1;
        slopes[1] = none - rise;
        slopes[2] = -currentA * ((diodeA / idealityV * rise) + shuntSiemens);
        slopes[3] = -junctionV;
        slopes[4] = diodeA * ((over * rise) + (_highestV / idealityV * none)) / idealityV;
        return lightA + (diodeA * slopes[1]) - (junctionV * shuntSiemens);
    }
}

namespace Arraywright.Electrical;

/// <summary>What is called the error of a model current; the two give different best parameters and errors that must not be compared.</summary>
public enum CurrentError
{
    /// <summary>The explicit residual, usual in the literature: the measured current put into the right side of the diode equation, IL − I0·(exp((V + I·Rs)/a) − 1) − (V + I·Rs)·Gsh − I.</summary>
    Explicit,

    /// <summary>The true implicit residual: the model's own current at the measured voltage, the equation solved, less the measured current.</summary>
    TrueCurrent,
}

/// <summary>The five parameters extracted from a measured curve.</summary>
/// <param name="Parameters">Under the conditions of the measurement. Rs and Gsh from 0: a curve may ask for none.</param>
/// <param name="RmsA">Root of the mean square error, A.</param>
/// <param name="Error">The error that was made least.</param>
/// <param name="Converged">False when the search was cut short; the parameters are then the best found.</param>
public sealed record MeasuredFit(DiodeParameters Parameters, double RmsA, CurrentError Error, bool Converged)
{
    /// <summary>Fewest points that five unknowns may be taken from with something left to judge by.</summary>
    public const int FewestPoints = 6;

    /// <summary>Voc/a and the share of the voltage behind maximum power given to Rs, from which the searches start.</summary>
    private static readonly (double Sharpness, double SeriesShare)[] Starts =
        [(12, 0), (12, 0.5), (20, 0), (20, 0.5), (30, 0.2), (30, 0.7), (45, 0.4), (45, 0.9)];

    /// <summary>The parameters with the least mean square error.</summary>
    /// <remarks>
    /// Searched in (IL, J, Rs, Gsh, a) with J = I0·exp(Vh/a), Vh the highest voltage measured: J is fixed by the curve there, while I0 and a alone pull each other along.
    /// From eight fixed starts with the explicit error; the best of these is polished with the error asked for.
    /// </remarks>
    /// <param name="points">At least <see cref="FewestPoints"/>, in any order, finite, some of positive voltage and current.</param>
    /// <param name="error">The error to make least.</param>
    /// <exception cref="ArgumentException">Too few points, one that is not finite, or none of positive voltage and current.</exception>
    public static MeasuredFit Of(IReadOnlyList<CurvePoint> points, CurrentError error)
    {
        MeasuredCurve curve = MeasuredCurve.Of(points);
        double[]? best = null;
        (double SumOfSquares, bool Converged) end = (double.PositiveInfinity, false);
        foreach ((double sharpness, double seriesShare) in Starts)
        {
            double[] unknowns = curve.Start(sharpness, seriesShare);
            (double SumOfSquares, bool Converged) here = LeastSquares.Minimise(curve.ExplicitErrors, points.Count, unknowns, curve.Least, curve.Most);
            if (best is null || here.SumOfSquares < end.SumOfSquares)
            {
                (best, end) = (unknowns, here);
            }
        }

        if (error == CurrentError.TrueCurrent)
        {
            end = LeastSquares.Minimise(curve.TrueErrors, points.Count, best, curve.Least, curve.Most);
        }

        return new MeasuredFit(curve.Parameters(best), Math.Sqrt(end.SumOfSquares / points.Count), error, end.Converged);
    }
}

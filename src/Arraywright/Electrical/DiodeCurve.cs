namespace Arraywright.Electrical;

/// <summary>The current-voltage curve of one panel, or one group of cells, alone and without bypass diode.</summary>
/// <remarks>
/// Solved in the junction voltage x = V + I·Rs, in which the current is explicit: I(x) = IL − I0·(exp(x/a) − 1) − x·Gsh.
/// I falls and bends downwards in x, so Newton's method started right of the solution walks to it without overshoot.
/// Every function here needs I0 &gt; 0, a &gt; 0, IL ≥ 0, Rs ≥ 0, Gsh ≥ 0.
/// </remarks>
public static class DiodeCurve
{
    private const int MostSteps = 200;

    /// <summary>Open-circuit voltage, V; 0 in the dark.</summary>
    public static double OpenCircuitV(in DiodeParameters p)
    {
        if (p.LightCurrentA <= 0)
        {
            return 0;
        }

        // Without shunt, or without diode, the voltage would be higher: start from the lower of the two.
        double withoutShuntV = p.IdealityV * (Math.Log(p.LightCurrentA + p.SaturationCurrentA) - Math.Log(p.SaturationCurrentA));
        double x = Math.Min(withoutShuntV, p.LightCurrentA / p.ShuntSiemens);
        for (int step = 0; step < MostSteps; step++)
        {
            double down = -JunctionCurrentA(p, x) / JunctionSiemens(p, x);
            x -= down;
            if (down <= 1e-16 * x)
            {
                break;
            }
        }

        return x;
    }

    /// <summary>Current at a voltage of the terminals, A; negative beyond the open-circuit voltage.</summary>
    /// <param name="p">The curve.</param>
    /// <param name="voltageV">Any finite voltage, V.</param>
    public static double CurrentA(in DiodeParameters p, double voltageV)
    {
        double x = JunctionV(p, voltageV);
        return JunctionCurrentA(p, x);
    }

    /// <summary>Slope dI/dV of the terminals at a voltage, S; negative.</summary>
    /// <param name="p">The curve.</param>
    /// <param name="voltageV">Any finite voltage, V.</param>
    public static double SlopeSiemens(in DiodeParameters p, double voltageV)
    {
        double g = JunctionSiemens(p, JunctionV(p, voltageV));
        return -g / (1 + (g * p.SeriesOhm));
    }

    /// <summary>The point of most power; 0 V and 0 A in the dark.</summary>
    /// <remarks>V·I is concave where V and I are positive, so there is one such point and dP/dx has one zero between 0 and Voc.</remarks>
    public static (double VoltageV, double CurrentA) MaximumPower(in DiodeParameters p)
    {
        double openCircuitV = OpenCircuitV(p);
        if (openCircuitV <= 0)
        {
            return (0, 0);
        }

        DiodeParameters curve = p;
        double x = RootSearch.Between(
            x =>
            {
                double currentA = JunctionCurrentA(curve, x);
                return currentA - (JunctionSiemens(curve, x) * (x - (2 * currentA * curve.SeriesOhm)));
            },
            0,
            openCircuitV);
        double bestA = JunctionCurrentA(p, x);
        return (x - (bestA * p.SeriesOhm), bestA);
    }

    /// <summary>I(x), A.</summary>
    internal static double JunctionCurrentA(in DiodeParameters p, double x) =>
        p.LightCurrentA - (p.SaturationCurrentA * ExponentialLessOne(x / p.IdealityV)) - (x * p.ShuntSiemens);

    /// <summary>exp(y) − 1, kept exact near 0: in the faintest light the whole curve lies there, and the plain difference would be all rounding.</summary>
    private static double ExponentialLessOne(double y) => Math.Abs(y) < 1e-3
        ? y * (1 + (y / 2 * (1 + (y / 3 * (1 + (y / 4 * (1 + (y / 5))))))))
        : Exponential.Of(y) - 1;

    /// <summary>−dI/dx, S; positive.</summary>
    internal static double JunctionSiemens(in DiodeParameters p, double x) =>
        (p.SaturationCurrentA / p.IdealityV * Exponential.Of(x / p.IdealityV)) + p.ShuntSiemens;

    /// <summary>The junction voltage x = V + I(x)·Rs at terminals held at V.</summary>
    internal static double JunctionV(in DiodeParameters p, double voltageV)
    {
        if (p.SeriesOhm == 0)
        {
            return voltageV;
        }

        double x = JunctionBoundV(p, voltageV);
        for (int step = 0; step < MostSteps; step++)
        {
            double excess = x - voltageV - (JunctionCurrentA(p, x) * p.SeriesOhm);
            double down = excess / (1 + (JunctionSiemens(p, x) * p.SeriesOhm));
            x -= down;
            if (down <= 1e-16 * Math.Abs(x))
            {
                break;
            }
        }

        return x;
    }

    /// <summary>A junction voltage at or above the solution: the lower of what it would be without the diode and without all but the diode.</summary>
    private static double JunctionBoundV(in DiodeParameters p, double voltageV)
    {
        double sum = voltageV + (p.SeriesOhm * (p.LightCurrentA + p.SaturationCurrentA));
        double withoutDiode = sum / (1 + (p.SeriesOhm * p.ShuntSiemens));
        if (sum <= 0)
        {
            return withoutDiode;
        }

        double onlyDiode = p.IdealityV * (Math.Log(sum) - Math.Log(p.SeriesOhm * p.SaturationCurrentA));
        return Math.Min(withoutDiode, Math.Max(0, onlyDiode));
    }
}

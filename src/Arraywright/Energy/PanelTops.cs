using System.Numerics;
using Arraywright.Electrical;

namespace Arraywright.Energy;

/// <summary>The maximum power of single panels through changing conditions: Newton's method from where each was, as many panels at a time as a register holds.</summary>
/// <remarks>
/// With the junction voltage x as unknown, current and voltage are explicit, i(x) = IL − I0·(exp(x/a) − 1) − x·Gsh and v(x) = x − i·Rs,
/// and P(x) = v·i has one summit. The start is the last summit, shifted by the change of open-circuit voltage. Each panel stops on its own,
/// so that its figure does not depend on its neighbours in the register.
/// </remarks>
internal sealed class PanelTops
{
    /// <summary>Usual place of the summit below open circuit, as a share: the first start.</summary>
    private const double UsualShare = 0.12;

    /// <summary>Newton's step, as a share of the open-circuit voltage, that ends the climb: the power left is of the order of its cube.</summary>
    private const double LastStep = 2e-5;

    private const int MostSteps = 50;

    private readonly double[] _lightA;
    private readonly double[] _saturationA;
    private readonly double[] _idealityV;
    private readonly double[] _seriesOhm;
    private readonly double[] _shuntS;
    private readonly double[] _openV;
    private readonly double[] _belowOpenShare;
    private readonly double[] _powerW;

    /// <summary>Makes room for a number of panels, all dark.</summary>
    public PanelTops(int count)
    {
        int width = Vector<double>.Count;
        int padded = (count + width - 1) / width * width;
        _lightA = new double[padded];
        _saturationA = new double[padded];
        _idealityV = new double[padded];
        _seriesOhm = new double[padded];
        _shuntS = new double[padded];
        _openV = new double[padded];
        _belowOpenShare = new double[padded];
        _powerW = new double[padded];
        Array.Fill(_idealityV, 1);
        Array.Fill(_shuntS, 1);
        Array.Fill(_belowOpenShare, UsualShare);
    }

    /// <summary>Gives a panel its parameters.</summary>
    public void Set(int panel, in DiodeParameters p)
    {
        bool isDark = p.LightCurrentA <= p.SaturationCurrentA;
        _lightA[panel] = isDark ? 0 : p.LightCurrentA;
        _saturationA[panel] = p.SaturationCurrentA;
        _idealityV[panel] = p.IdealityV;
        _seriesOhm[panel] = p.SeriesOhm;
        _shuntS[panel] = p.ShuntSiemens;
        _openV[panel] = isDark ? 0 : Math.Min(p.IdealityV * Math.Log((p.LightCurrentA / p.SaturationCurrentA) + 1), p.LightCurrentA / p.ShuntSiemens);
    }

    /// <summary>Watts at a panel's summit as last solved; 0 in the dark.</summary>
    public double PowerW(int panel) => _powerW[panel];

    /// <summary>A voltage that the panel's open-circuit voltage does not pass, V.</summary>
    public double MostOpenV(int panel) => _openV[panel];

    /// <summary>Finds every summit.</summary>
    public void Solve()
    {
        for (int i = 0; i < _lightA.Length; i += Vector<double>.Count)
        {
            Climb(i);
        }
    }

    private void Climb(int at)
    {
        Vector<double> saturationA = new(_saturationA, at);
        Vector<double> currentAtZero = new Vector<double>(_lightA, at) + saturationA;
        Vector<double> perA = Vector<double>.One / new Vector<double>(_idealityV, at);
        Vector<double> ohm = new(_seriesOhm, at);
        Vector<double> shuntS = new(_shuntS, at);
        Vector<double> openV = new(_openV, at);
        Vector<double> x = openV * (Vector<double>.One - new Vector<double>(_belowOpenShare, at));
        Vector<double> low = Vector<double>.Zero;
        Vector<double> high = openV;
        Vector<double> powerW = Vector<double>.Zero;
        Vector<long> climbing = Vector.GreaterThan(openV, Vector<double>.Zero);
        for (int step = 0; step < MostSteps && climbing != Vector<long>.Zero; step++)
        {
            Vector<double> diodeA = saturationA * Exponential.Of(x * perA);
            Vector<double> slopeS = (diodeA * perA) + shuntS;
            Vector<double> currentA = currentAtZero - diodeA - (x * shuntS);
            Vector<double> voltageV = x - (currentA * ohm);
            Vector<double> stretch = Vector<double>.One + (slopeS * ohm);
            Vector<double> bend = diodeA * perA * perA;
            Vector<double> rise = (stretch * currentA) - (voltageV * slopeS);
            Vector<double> curvature = (bend * ohm * currentA) - (2 * stretch * slopeS) - (voltageV * bend);
            Vector<long> isBelow = Vector.GreaterThan(rise, Vector<double>.Zero);
            low = Vector.ConditionalSelect(isBelow, x, low);
            high = Vector.ConditionalSelect(isBelow, high, x);
            Vector<double> next = x - (rise / curvature);
            Vector<long> isInside = Vector.GreaterThan(next, low) & Vector.LessThan(next, high);
            next = Vector.ConditionalSelect(isInside, next, 0.5 * (low + high));
            Vector<double> moved = next - x;

            // Along the parabola of the last step: half its slope times its length.
            powerW = Vector.ConditionalSelect(climbing, (voltageV * currentA) + (0.5 * rise * moved), powerW);
            x = Vector.ConditionalSelect(climbing, next, x);
            climbing &= Vector.GreaterThan(Vector.Abs(moved), LastStep * openV);
        }

        Vector.Max(powerW, Vector<double>.Zero).CopyTo(_powerW, at);
        Vector<long> lit = Vector.GreaterThan(openV, Vector<double>.Zero);
        Vector<double> share = Vector<double>.One - (x / Vector.ConditionalSelect(lit, openV, Vector<double>.One));
        Vector.ConditionalSelect(lit, share, new Vector<double>(_belowOpenShare, at)).CopyTo(_belowOpenShare, at);
    }
}

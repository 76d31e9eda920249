using Arraywright.Electrical;

namespace Arraywright.Energy;

/// <summary>The maximum power of one panel by itself through changing conditions: Newton's method from where it was.</summary>
/// <remarks>
/// With the junction voltage x as unknown, current and voltage are explicit, i(x) = IL − I0·(exp(x/a) − 1) − x·Gsh and v(x) = x − i·Rs,
/// and P(x) = v·i has one summit. The start is the last summit, shifted by the change of open-circuit voltage.
/// </remarks>
internal struct PanelTop
{
    private double _belowOpenShare;

    /// <summary>Watts at the summit; 0 in the dark.</summary>
    /// <param name="p">The panel under its conditions.</param>
    public double PowerW(in DiodeParameters p)
    {
        if (p.LightCurrentA <= p.SaturationCurrentA)
        {
            return 0;
        }

        double openX = p.IdealityV * Math.Log((p.LightCurrentA / p.SaturationCurrentA) + 1);
        openX = Math.Min(openX, p.LightCurrentA / p.ShuntSiemens);
        double x = openX * (1 - (_belowOpenShare > 0 ? _belowOpenShare : 0.12));
        double powerW = 0;
        double low = 0;
        double high = openX;
        for (int step = 0; step < 50; step++)
        {
            double diodeA = p.SaturationCurrentA * Exponential.Of(x / p.IdealityV);
            double slopeS = (diodeA / p.IdealityV) + p.ShuntSiemens;
            double bend = diodeA / (p.IdealityV * p.IdealityV);
            double i = p.LightCurrentA + p.SaturationCurrentA - diodeA - (x * p.ShuntSiemens);
            double v = x - (i * p.SeriesOhm);
            double stretch = 1 + (slopeS * p.SeriesOhm);
            double rise = (stretch * i) - (v * slopeS);
            double curvature = (bend * p.SeriesOhm * i) - (2 * stretch * slopeS) - (v * bend);
            powerW = v * i;
            (low, high) = rise > 0 ? (x, high) : (low, x);
            double next = x - (rise / curvature);
            next = next > low && next < high ? next : 0.5 * (low + high);
            double moved = next - x;
            x = next;
            if (Math.Abs(moved) <= 1e-7 * openX)
            {
                // The power left on the table is the square of the step.
                _belowOpenShare = 1 - (x / openX);
                break;
            }
        }

        return Math.Max(0, powerW);
    }
}

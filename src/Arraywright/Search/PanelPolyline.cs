using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>A line of straight pieces on and above a panel's voltage at each current, with corners at shared currents only.</summary>
/// <remarks>
/// Because corners are shared, the lines of panels in series add corner by corner, and the sum lies on and above the string's curve.
/// Between two currents a group of cells has a slope between two known bounds, since the conductance of its cells falls and that of its
/// bypass diode rises with current. So its curve lies under two straight lines from the ends; the chord, lifted to their meeting, covers it.
/// </remarks>
internal static class PanelPolyline
{
    /// <summary>A Newton step this small, in diode volts, leaves an error of its square.</summary>
    private const double Settled = 1e-6;

    /// <summary>Share of the voltage that both ends of a piece may be lifted by.</summary>
    private const double SmallLift = 1e-3;

    /// <summary>Corners of the line, V.</summary>
    /// <param name="panel">The panel at work.</param>
    /// <param name="currentsA">Shared currents, ascending.</param>
    /// <param name="contactOhm">Resistance in series, Ω.</param>
    /// <param name="voltagesV">Receives a voltage for each current, falling.</param>
    public static void Above(PanelAtWork panel, ReadOnlySpan<double> currentsA, double contactOhm, Span<double> voltagesV)
    {
        voltagesV.Clear();
        Span<double> group = new double[currentsA.Length];
        for (int g = 0; g < panel.Groups.Length; g++)
        {
            if (g == 0 || panel.Groups[g] != panel.Groups[g - 1])
            {
                AboveGroup(panel.Groups[g], panel.Bypass, currentsA, group);
            }

            for (int k = 0; k < currentsA.Length; k++)
            {
                voltagesV[k] += group[k];
            }
        }

        for (int k = 0; k < currentsA.Length; k++)
        {
            voltagesV[k] -= currentsA[k] * contactOhm;
        }

        Falling(voltagesV);
    }

    /// <summary>The same for two lines side by side: at each voltage the currents add.</summary>
    /// <param name="first">Corners of one, V, falling, at the shared currents.</param>
    /// <param name="second">Corners of the other.</param>
    /// <param name="currentsA">Shared currents, ascending.</param>
    /// <param name="voltagesV">Receives a voltage for each current, falling.</param>
    public static void AboveParallel(ReadOnlySpan<double> first, ReadOnlySpan<double> second, ReadOnlySpan<double> currentsA, Span<double> voltagesV)
    {
        int n = currentsA.Length;
        double[] cornersV = new double[2 * n];
        double[] cornersA = new double[2 * n];
        int f = 0;
        int s = 0;
        for (int i = 0; i < cornersV.Length; i++)
        {
            bool fromFirst = s == n || (f < n && first[f] >= second[s]);
            cornersV[i] = fromFirst ? first[f] : second[s];
            cornersA[i] = fromFirst
                ? currentsA[f] + CurrentAt(second, currentsA, s, first[f])
                : currentsA[s] + CurrentAt(first, currentsA, f, second[s]);
            (f, s) = fromFirst ? (f + 1, s) : (f, s + 1);
        }

        int at = 0;
        for (int k = 0; k < n; k++)
        {
            while (at < cornersV.Length - 1 && cornersA[at + 1] <= currentsA[k])
            {
                at++;
            }

            voltagesV[k] = Interpolate(cornersV, cornersA, at, currentsA[k]);
        }

        Lift(cornersV, cornersA, currentsA, voltagesV);
        Falling(voltagesV);
    }

    private static void AboveGroup(DiodeParameters cells, BypassDiode bypass, ReadOnlySpan<double> currentsA, Span<double> voltagesV)
    {
        int n = currentsA.Length;
        Span<double> cellS = new double[n];
        Span<double> bypassS = new double[n];
        double x = JunctionFrom(cells, currentsA[0]);
        for (int k = 0; k < n; k++)
        {
            (x, voltagesV[k], cellS[k], bypassS[k]) = SolveGroup(cells, bypass, currentsA[k], x);
        }

        Span<double> lift = new double[n];
        for (int k = 0; k + 1 < n; k++)
        {
            double stepA = currentsA[k + 1] - currentsA[k];
            double flattest = -1 / (cellS[k] + bypassS[k + 1]);
            double steepest = -1 / (cellS[k + 1] + bypassS[k]);
            LiftPiece(lift, k, voltagesV[k], Bulge(voltagesV[k], voltagesV[k + 1], stepA, flattest, steepest), voltagesV[k] + (flattest * stepA) - voltagesV[k + 1]);
        }

        Raise(voltagesV, lift);
    }

    /// <summary>How far the two lines from the ends of a piece meet above its chord.</summary>
    private static double Bulge(double startV, double endV, double stepA, double flattest, double steepest)
    {
        double chord = (endV - startV) / stepA;
        return flattest > chord && steepest < chord ? (flattest - chord) * (chord - steepest) / (flattest - steepest) * stepA : 0;
    }

    /// <summary>Lifts piece k above the curve: both its ends a little, or, where the voltage drops away within the piece, its low end alone, since a lifted high end would stand for power that is not there.</summary>
    private static void LiftPiece(Span<double> lift, int k, double startV, double bothV, double endAloneV)
    {
        bool dropsAway = bothV > SmallLift * Math.Abs(startV);
        lift[k] = Math.Max(lift[k], dropsAway ? 0 : bothV);
        lift[k + 1] = Math.Max(lift[k + 1], dropsAway ? endAloneV : bothV);
    }

    private static void Raise(Span<double> voltagesV, ReadOnlySpan<double> lift)
    {
        for (int k = 0; k < lift.Length; k++)
        {
            voltagesV[k] += lift[k];
        }
    }

    /// <summary>A junction voltage at or right of the one that gives a current.</summary>
    private static double JunctionFrom(DiodeParameters cells, double currentA)
    {
        double amps = Math.Max(cells.LightCurrentA - currentA, 0) + (1e-3 * cells.SaturationCurrentA);
        return cells.IdealityV * Math.Log((amps / cells.SaturationCurrentA) + 1);
    }

    /// <summary>Junction voltage, terminal voltage and the conductances of cells and diode at a current, by Newton from the right, where the curve bends towards the root.</summary>
    private static (double X, double V, double CellS, double BypassS) SolveGroup(DiodeParameters cells, BypassDiode bypass, double currentA, double x)
    {
        // The diode never carries more than the whole current, which bounds the root from the left: else a step may leap far into its exponential.
        double leastX = bypass.SaturationCurrentA > 0 && currentA > 0
            ? Math.Min(0, (cells.LightCurrentA * cells.SeriesOhm) - (bypass.IdealityV * Math.Log((currentA / bypass.SaturationCurrentA) + 1)))
            : double.NegativeInfinity;
        double v = 0, cellS = 0, bypassS = 0;
        for (int step = 0; step < 200; step++)
        {
            double grown = cells.SaturationCurrentA * Exponential.Of(x / cells.IdealityV);
            double cellA = cells.LightCurrentA - (grown - cells.SaturationCurrentA) - (x * cells.ShuntSiemens);
            double junctionS = (grown / cells.IdealityV) + cells.ShuntSiemens;
            v = x - (cellA * cells.SeriesOhm);
            double diode = bypass.SaturationCurrentA > 0 && v < 40 * bypass.IdealityV ? bypass.SaturationCurrentA * Exponential.Of(-v / bypass.IdealityV) : 0;
            bypassS = diode / bypass.IdealityV;
            double rise = 1 + (junctionS * cells.SeriesOhm);
            cellS = junctionS / rise;
            double excessA = cellA + diode - bypass.SaturationCurrentA - currentA;
            double move = excessA / (junctionS + (bypassS * rise));

            move = Math.Max(x + move, leastX) - x;
            x += move;
            v += move * rise;
            if (Math.Abs(move) <= Settled * cells.IdealityV)
            {
                break;
            }
        }

        return (x, v, cellS, bypassS);
    }

    /// <summary>Current of a line at a voltage between its corners <paramref name="next"/> − 1 and <paramref name="next"/>; beyond its ends the current at the end, which is none too low where it matters: above the first corner the true current is lower, and below the last the sum has left the shared currents.</summary>
    private static double CurrentAt(ReadOnlySpan<double> lineV, ReadOnlySpan<double> currentsA, int next, double voltageV)
    {
        if (next == 0 || next == lineV.Length)
        {
            return currentsA[next == 0 ? 0 : next - 1];
        }

        double share = (lineV[next - 1] - voltageV) / (lineV[next - 1] - lineV[next]);
        return currentsA[next - 1] + (share * (currentsA[next] - currentsA[next - 1]));
    }

    private static double Interpolate(double[] cornersV, double[] cornersA, int at, double currentA)
    {
        if (at >= cornersV.Length - 1 || currentA <= cornersA[at])
        {
            return cornersV[at];
        }

        double share = (currentA - cornersA[at]) / (cornersA[at + 1] - cornersA[at]);
        return cornersV[at] + (share * (cornersV[at + 1] - cornersV[at]));
    }

    /// <summary>Raises the corners until no corner of the finer line stands above the chords.</summary>
    private static void Lift(double[] cornersV, double[] cornersA, ReadOnlySpan<double> currentsA, Span<double> voltagesV)
    {
        Span<double> lift = new double[currentsA.Length];
        int i = 0;
        for (int k = 0; k + 1 < currentsA.Length; k++)
        {
            double stepA = currentsA[k + 1] - currentsA[k];
            double bothV = 0;
            double endAloneV = 0;
            while (i < cornersV.Length && cornersA[i] < currentsA[k])
            {
                i++;
            }

            for (; i < cornersV.Length && cornersA[i] <= currentsA[k + 1]; i++)
            {
                double share = (cornersA[i] - currentsA[k]) / stepA;
                double above = cornersV[i] - (voltagesV[k] + (share * (voltagesV[k + 1] - voltagesV[k])));
                bothV = Math.Max(bothV, above);
                endAloneV = above > 0 ? Math.Max(endAloneV, above / share) : endAloneV;
            }

            // No corner stands above the piece's start: both lines fall.
            LiftPiece(lift, k, voltagesV[k], bothV, Math.Min(endAloneV, voltagesV[k] - voltagesV[k + 1]));
        }

        Raise(voltagesV, lift);
    }

    /// <summary>Makes the line fall everywhere, so that each voltage has one current.</summary>
    private static void Falling(Span<double> voltagesV)
    {
        for (int k = voltagesV.Length - 2; k >= 0; k--)
        {
            voltagesV[k] = Math.Max(voltagesV[k], voltagesV[k + 1] + 1e-9);
        }
    }
}

using Arraywright.Electrical;

namespace Arraywright.Tests.Electrical;

/// <summary>The plain other route to a circuit's curve: every group of cells written out point by point, added in series at equal amps and in parallel at equal volts.</summary>
/// <remarks>
/// Nothing is solved: for a junction voltage x a group's amps and volts are explicit, I = IL − I0·(exp(x/a) − 1) − x·Gsh and V = x − I·Rs, and
/// its diode adds Is·(exp(−V/ab) − 1). Points lie close enough for straight lines between them to be within 1e-5 of the power.
/// </remarks>
internal sealed class SampledCurve
{
    private const double MostA = 80;
    private const double DiodeStepV = 0.0005;
    private const int PointsPerIdeality = 60;
    private const int PlacesInPiece = 8;

    private readonly (double V, double A)[] _points;

    private SampledCurve(IEnumerable<(double V, double A)> points) => _points = [.. points];

    /// <summary>The curve of a tree.</summary>
    public static SampledCurve Of(CircuitTree tree)
    {
        SampledCurve bare = tree switch
        {
            CircuitTree.Group group => Leaf(group.Cells, group.Bypass),
            CircuitTree.Series series => series.Parts.Select(Of).Aggregate((a, b) => Added(a, b, point => point.A, (volts, amps) => (volts, amps))),
            CircuitTree.Parallel parallel => parallel.Parts.Select(Of).Aggregate((a, b) => Added(a, b, point => -point.V, (amps, minusV) => (-minusV, amps))),
            _ => throw new ArgumentException("A group, a series or a parallel.", nameof(tree)),
        };
        return new SampledCurve(bare._points.Select(point => (point.V - (point.A * tree.WireOhm), point.A)));
    }

    /// <summary>The most power at no less than a voltage and no more than a current, W; 0 when there is none.</summary>
    public double MostW(double minV, double maxA)
    {
        double most = 0;
        for (int i = 1; i < _points.Length; i++)
        {
            (double lowV, double highA) = _points[i - 1];
            (double highV, double lowA) = _points[i];
            double from = Math.Max(Share(lowV, highV, minV), Share(highA, lowA, maxA));
            if (from <= 1 && highV >= minV && lowA <= maxA)
            {
                // What is left of the piece, at a few places: where only shunts carry current a piece is long.
                for (int k = 0; k <= PlacesInPiece; k++)
                {
                    double share = from + ((1 - from) * k / PlacesInPiece);
                    most = Math.Max(most, (lowV + (share * (highV - lowV))) * (highA + (share * (lowA - highA))));
                }
            }
        }

        return most;
    }

    private static double Share(double start, double end, double wanted) => (end > start) == (wanted > start) && end != start ? (wanted - start) / (end - start) : 0;

    private static SampledCurve Leaf(DiodeParameters cells, BypassDiode bypass)
    {
        var points = new List<(double V, double A)>();
        foreach (double x in Junctions(cells))
        {
            double cellsA = cells.LightCurrentA - (cells.SaturationCurrentA * (Math.Exp(x / cells.IdealityV) - 1)) - (x * cells.ShuntSiemens);
            double v = x - (cellsA * cells.SeriesOhm);
            double diodeA = bypass.SaturationCurrentA > 0 ? bypass.SaturationCurrentA * (Math.Exp(-v / bypass.IdealityV) - 1) : 0;
            if (Math.Abs(cellsA + diodeA) < 20 * MostA)
            {
                points.Add((v, cellsA + diodeA));
            }
        }

        return new SampledCurve(points);
    }

    /// <summary>Junction voltages, rising: far apart where only the shunt carries current, close together where the cells do, and closest where the diode does: at terminals 0 to 0.9 V backwards.</summary>
    private static IEnumerable<double> Junctions(DiodeParameters cells)
    {
        double endV = cells.IdealityV * Math.Log((cells.LightCurrentA + (2 * MostA)) / cells.SaturationCurrentA);
        double diodeV = cells.LightCurrentA * cells.SeriesOhm;
        for (double far = 2 * MostA / cells.ShuntSiemens; far > 1; far /= 1.1)
        {
            yield return -far;
        }

        double stepV;
        for (double x = -1; x < endV; x += stepV)
        {
            yield return x;
            stepV = Math.Abs(x - diodeV + 0.45) < 0.5 ? DiodeStepV : cells.IdealityV / PointsPerIdeality;
        }
    }

    /// <summary>Adds one quantity of two curves at equal values of the other, which is given falling along both.</summary>
    private static SampledCurve Added(SampledCurve a, SampledCurve b, Func<(double V, double A), double> at, Func<double, double, (double V, double A)> point)
    {
        Func<(double V, double A), double> sum = point(1, 0).V == 1 ? p => p.V : p => p.A;
        double[] wanted = [.. a._points.Concat(b._points).Select(at).OrderDescending()];
        double[] first = Read(a._points, at, sum, wanted);
        double[] second = Read(b._points, at, sum, wanted);
        return new SampledCurve(wanted.Select((value, i) => point(first[i] + second[i], value)).Where(p => double.IsFinite(p.V) && double.IsFinite(p.A)));
    }

    /// <summary>A curve's values at others, falling; NaN beyond its ends.</summary>
    private static double[] Read((double V, double A)[] points, Func<(double V, double A), double> at, Func<(double V, double A), double> value, double[] wanted)
    {
        double[] read = new double[wanted.Length];
        int i = 1;
        for (int k = 0; k < wanted.Length; k++)
        {
            while (i < points.Length - 1 && at(points[i]) > wanted[k])
            {
                i++;
            }

            double share = (at(points[i - 1]) - wanted[k]) / (at(points[i - 1]) - at(points[i]));
            read[k] = share is >= 0 and <= 1 ? value(points[i - 1]) + (share * (value(points[i]) - value(points[i - 1]))) : double.NaN;
        }

        return read;
    }
}

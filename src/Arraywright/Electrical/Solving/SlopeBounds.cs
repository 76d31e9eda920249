namespace Arraywright.Electrical.Solving;

/// <summary>Bounds of the slope and the curvature of I(V) over a whole interval between two solved points.</summary>
/// <remarks>
/// In a tree of elements whose current falls as their voltage rises, every group's voltage rises with the terminal voltage. So between two solved
/// points each junction voltage lies between its two values, and the monotone parts of each group's slope and curvature are known at both ends.
/// Series and parallel of intervals of slope and curvature follow from interval arithmetic. Nothing can hide between the points.
/// </remarks>
internal sealed class SlopeBounds
{
    /// <summary>Least widening of the bounds: the slopes of a solved point are from before its last Newton step, mostly under 1e-5 ideality voltages away.</summary>
    private const double LeastSlack = 1e-4;

    /// <summary>Widening over the last Newton step: a group's bypass diode bends up to so many times as sharply as its cells, by which the step is measured.</summary>
    private const double SlackPerStep = 30;

    private readonly Network _network;
    private readonly Range[] _ranges;
    private readonly double[] _slope;
    private readonly double[] _curvature;

    public SlopeBounds(Network network)
    {
        _network = network;
        _ranges = new Range[network.Layout.Parent.Length];
        _slope = new double[_ranges.Length];
        _curvature = new double[_ranges.Length];
    }

    /// <summary>Least and greatest slope −dI/dV (S) and curvature d²I/dV² (A/V²).</summary>
    public record struct Range(double SlopeLow, double SlopeHigh, double CurvatureLow, double CurvatureHigh);

    /// <summary>Slope −dI/dV, S, and curvature d²I/dV², A/V², at one solved point.</summary>
    public (double SlopeS, double Curvature) At(Snapshot point)
    {
        Layout layout = _network.Layout;
        Array.Clear(_slope);
        Array.Clear(_curvature);
        for (int leaf = 0; leaf < _network.Leaves.Count; leaf++)
        {
            double stretch = point.Stretch[leaf];
            double curvature = (point.BypassSlopeS[leaf] * _network.Leaves.PerBypassV[leaf]) - (point.CellCurvature[leaf] / (stretch * stretch * stretch));
            AddAt(layout.LeafParent[leaf], point.CellSlopeS[leaf] + point.BypassSlopeS[leaf], curvature, layout.LeafCount[leaf]);
        }

        int last = _slope.Length - 1;
        for (int node = 0; node <= last; node++)
        {
            // Resistance is added to V(I), whose slope is 1/s and whose curvature is k/s³.
            if (layout.IsSeries[node] || layout.Ohm[node] != 0)
            {
                (double ohm, double bend) = layout.IsSeries[node] ? (_slope[node], _curvature[node]) : (1 / _slope[node], _curvature[node] / Cube(_slope[node]));
                ohm += layout.Ohm[node];
                (_slope[node], _curvature[node]) = (1 / ohm, bend / Cube(ohm));
            }

            if (node < last)
            {
                AddAt(layout.Parent[node], _slope[node], _curvature[node], layout.Count[node]);
            }
        }

        return (_slope[last], _curvature[last]);
    }

    private void AddAt(int parent, double slopeS, double curvature, double count)
    {
        if (_network.Layout.IsSeries[parent])
        {
            double ohm = 1 / slopeS;
            _slope[parent] += count * ohm;
            _curvature[parent] += count * curvature * ohm * ohm * ohm;
        }
        else
        {
            _slope[parent] += count * slopeS;
            _curvature[parent] += count * curvature;
        }
    }

    /// <summary>Bounds over the interval between two solved points.</summary>
    /// <param name="left">The point with the lower terminal voltage.</param>
    /// <param name="right">The point with the higher.</param>
    public Range Between(Snapshot left, Snapshot right)
    {
        Layout layout = _network.Layout;
        double slack = Math.Max(LeastSlack, SlackPerStep * Math.Max(left.LastStep, right.LastStep));
        Array.Clear(_ranges);
        for (int leaf = 0; leaf < _network.Leaves.Count; leaf++)
        {
            Add(layout.LeafParent[leaf], OfLeaf(leaf, left, right, slack), layout.LeafCount[leaf]);
        }

        int last = _ranges.Length - 1;
        for (int node = 0; node < last; node++)
        {
            _ranges[node] = Finished(_ranges[node], layout.IsSeries[node], layout.Ohm[node]);
            Add(layout.Parent[node], _ranges[node], layout.Count[node]);
        }

        return Finished(_ranges[last], layout.IsSeries[last], layout.Ohm[last]);
    }

    private Range OfLeaf(int leaf, Snapshot left, Snapshot right, double slack)
    {
        double perAb = _network.Leaves.PerBypassV[leaf];
        double less = 1 - slack;
        double more = 1 + slack;
        return new Range(
            (left.CellSlopeS[leaf] + right.BypassSlopeS[leaf]) * less,
            (right.CellSlopeS[leaf] + left.BypassSlopeS[leaf]) * more,
            (-right.CellCurvature[leaf] * more / Cube(left.Stretch[leaf])) + (right.BypassSlopeS[leaf] * perAb * less),
            (-left.CellCurvature[leaf] * less / Cube(right.Stretch[leaf])) + (left.BypassSlopeS[leaf] * perAb * more));
    }

    /// <summary>Adds a child: in a parallel slopes and curvatures add; in a series the resistances 1/s and the curvatures of V(I), k/s³.</summary>
    private void Add(int parent, Range child, double count)
    {
        Range added = _network.Layout.IsSeries[parent] ? Inverse(child) : child;
        Range sum = _ranges[parent];
        _ranges[parent] = new Range(
            sum.SlopeLow + (count * added.SlopeLow),
            sum.SlopeHigh + (count * added.SlopeHigh),
            sum.CurvatureLow + (count * added.CurvatureLow),
            sum.CurvatureHigh + (count * added.CurvatureHigh));
    }

    private static Range Finished(Range sum, bool isSeries, double ohm)
    {
        if (!isSeries)
        {
            if (ohm == 0)
            {
                return sum;
            }

            sum = Inverse(sum);
        }

        return Inverse(sum with { SlopeLow = sum.SlopeLow + ohm, SlopeHigh = sum.SlopeHigh + ohm });
    }

    /// <summary>From I(V) to V(I) and, being its own inverse, back: slope 1/s, curvature k/s³.</summary>
    private static Range Inverse(Range range)
    {
        double low = 1 / range.SlopeHigh;
        double high = 1 / range.SlopeLow;
        return new Range(
            low,
            high,
            range.CurvatureLow * Cube(range.CurvatureLow < 0 ? high : low),
            range.CurvatureHigh * Cube(range.CurvatureHigh > 0 ? high : low));
    }

    private static double Cube(double value) => value * value * value;
}

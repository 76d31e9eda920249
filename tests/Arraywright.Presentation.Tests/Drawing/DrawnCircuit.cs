using Arraywright.Electrical;
using Arraywright.Presentation.Drawing;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>The circuit read back from a drawing by following its lines: which terminals of the panels are joined, and which reach the unit.</summary>
internal sealed class DrawnCircuit
{
    private const double Near = 0.01;
    private static readonly string[] Pairs = ["extension", "run", "switch", "watt meter", "adapter"];

    private readonly DrawnGeometry _drawn;
    private readonly List<Spot> _spots = [];
    private readonly List<int> _parents = [];

    public DrawnCircuit(DrawnGeometry drawn)
    {
        _drawn = drawn;
        foreach ((Spot[] points, _) in drawn.Wires)
        {
            Join([points[0], points[^1]]);
        }

        JoinWhereTheyTouch();
        for (int thing = 1; thing < drawn.Things; thing++)
        {
            JoinWithin(thing);
        }
    }

    /// <summary>Terminals of panels and units, each with a number that joined terminals share: "1+", "1−", "unit 1+".</summary>
    public Dictionary<string, int> Nodes()
    {
        Dictionary<string, int> nodes = new(StringComparer.Ordinal);
        int units = 0;
        for (int thing = 1; thing < _drawn.Things; thing++)
        {
            string title = _drawn.Title(thing);
            Spot[] ends = [.. Ends(thing)];
            if (title.StartsWith("panel ", StringComparison.Ordinal))
            {
                string number = title[6..title.IndexOf(',')];
                bool isUpright = ends.All(end => Math.Abs(end.XPx - ends[0].XPx) < Near);
                Spot[] along = [.. ends.OrderBy(end => isUpright ? end.YPx : end.XPx)];
                nodes.Add(number + "+", Node(along[0]));
                nodes.Add(number + "-", Node(along[^1]));
            }
            else if (IsIntoUnit(title))
            {
                units++;
                Spot[] upper = [.. ends.OrderBy(end => end.YPx).Take(2).OrderBy(end => end.XPx)];
                nodes.Add($"unit {units}+", Node(upper[0]));
                nodes.Add($"unit {units}-", Node(upper[1]));
            }
        }

        return nodes;
    }

    /// <summary>The same from the wiring itself.</summary>
    public static Dictionary<string, int> Nodes(IEnumerable<Wiring> wirings)
    {
        Dictionary<string, int> nodes = new(StringComparer.Ordinal);
        (int panel, int node, int unit) = (0, 0, 0);
        foreach (Wiring wiring in wirings)
        {
            (int plus, int minus) = (node++, node++);
            unit++;
            nodes.Add($"unit {unit}+", plus);
            nodes.Add($"unit {unit}-", minus);
            Walk(wiring, plus, minus);
        }

        return nodes;

        void Walk(Wiring part, int plus, int minus)
        {
            switch (part)
            {
                case Wiring.Single:
                    panel++;
                    nodes.Add(panel + "+", plus);
                    nodes.Add(panel + "-", minus);
                    break;
                case Wiring.Series series:
                    for (int i = 0; i < series.Parts.Length; i++)
                    {
                        int below = i == series.Parts.Length - 1 ? minus : node++;
                        Walk(series.Parts[i], plus, below);
                        plus = below;
                    }

                    break;
                case Wiring.Parallel parallel:
                    Array.ForEach([.. parallel.Parts], branch => Walk(branch, plus, minus));
                    break;
                default:
                    throw new InvalidOperationException();
            }
        }
    }

    private static bool IsIntoUnit(string title) => title.EndsWith("into unit's socket", StringComparison.Ordinal);

    private IEnumerable<Spot> Ends(int thing) => _drawn.Wires.Where(wire => wire.Thing == thing).SelectMany(wire => new[] { wire.Points[0], wire.Points[^1] });

    private void JoinWhereTheyTouch()
    {
        Segment[] segments = [.. _drawn.WireSegments];
        foreach ((Spot[] points, _) in _drawn.Wires)
        {
            foreach (Spot end in new[] { points[0], points[^1] })
            {
                foreach ((Spot[] other, _) in _drawn.Wires.Where(other => other.Points.Zip(other.Points.Skip(1)).Any(pair => IsOn(end, pair.First, pair.Second))))
                {
                    Join([end, other[0]]);
                }
            }
        }
    }

    /// <summary>Plugs, fuses and cables carry on; pieces with two poles carry each on; a branch connector joins what ends at its body.</summary>
    private void JoinWithin(int thing)
    {
        string title = _drawn.Title(thing);
        Spot[] ends = [.. Ends(thing)];
        if (title.StartsWith("panel ", StringComparison.Ordinal) || IsIntoUnit(title))
        {
            return;
        }

        if (title.StartsWith("branch connector", StringComparison.Ordinal))
        {
            Frame body = _drawn.Boxes.Single(box => box.Thing == thing);
            ends = [.. _drawn.Wires.SelectMany(wire => new[] { wire.Points[0], wire.Points[^1] }).Where(end => IsOnEdge(end, body))];
            Join(ends);
        }
        else if (Array.Exists(Pairs, pair => title.StartsWith(pair, StringComparison.Ordinal)))
        {
            foreach (IGrouping<double, Spot> pole in ends.GroupBy(end => Math.Round(end.XPx, 2)))
            {
                Join([.. pole]);
            }
        }
        else
        {
            Join(ends);
        }
    }

    private static bool IsOnEdge(Spot end, Frame body) =>
        (Math.Abs(end.XPx - body.Left) < Near || Math.Abs(end.XPx - body.Right) < Near) && end.YPx > body.Top && end.YPx < body.Bottom;

    public static bool IsOn(Spot spot, Spot from, Spot to) =>
        Math.Abs(((to.XPx - from.XPx) * (spot.YPx - from.YPx)) - ((to.YPx - from.YPx) * (spot.XPx - from.XPx))) < Near
        && spot.XPx > Math.Min(from.XPx, to.XPx) - Near && spot.XPx < Math.Max(from.XPx, to.XPx) + Near
        && spot.YPx > Math.Min(from.YPx, to.YPx) - Near && spot.YPx < Math.Max(from.YPx, to.YPx) + Near;

    private int Node(Spot spot)
    {
        int index = Index(spot);
        while (_parents[index] != index)
        {
            index = _parents[index];
        }

        return index;
    }

    private int Index(Spot spot)
    {
        int index = _spots.FindIndex(known => Math.Abs(known.XPx - spot.XPx) < Near && Math.Abs(known.YPx - spot.YPx) < Near);
        if (index < 0)
        {
            index = _spots.Count;
            _spots.Add(spot);
            _parents.Add(index);
        }

        return index;
    }

    private void Join(Spot[] spots)
    {
        foreach (Spot spot in spots)
        {
            _parents[Node(spot)] = Node(spots[0]);
        }
    }
}

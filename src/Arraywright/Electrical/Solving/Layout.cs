namespace Arraywright.Electrical.Solving;

/// <summary>A circuit tree flattened into arrays: leaves, and above them nodes in an order where children come before parents.</summary>
/// <remarks>
/// Series within series are joined, and equal siblings are kept once with a count: a string of four equal panels of three equal groups
/// is one leaf counted twelve times. The last node is the root.
/// </remarks>
internal sealed class Layout
{
    private readonly List<CircuitTree.Group> _leaves = [];
    private readonly List<int> _leafParent = [];
    private readonly List<double> _leafCount = [];
    private readonly List<bool> _isSeries = [];
    private readonly List<int> _parent = [];
    private readonly List<double> _count = [];
    private readonly List<double> _ohm = [];

    public Layout(CircuitTree tree)
    {
        AddNode(tree as CircuitTree.Parallel ?? (CircuitTree)Flat(tree), 1);
        Leaves = [.. _leaves];
        LeafParent = [.. _leafParent];
        LeafCount = [.. _leafCount];
        IsSeries = [.. _isSeries];
        Parent = [.. _parent];
        Count = [.. _count];
        Ohm = [.. _ohm];
        Times = new double[Count.Length];
        for (int node = Times.Length - 1; node >= 0; node--)
        {
            Times[node] = Count[node] * (Parent[node] < 0 ? 1 : Times[Parent[node]]);
        }
    }

    public CircuitTree.Group[] Leaves { get; }

    /// <summary>Index of the node above each leaf.</summary>
    public int[] LeafParent { get; }

    /// <summary>How many equal siblings each leaf stands for.</summary>
    public double[] LeafCount { get; }

    /// <summary>Whether each node is a series (else a parallel).</summary>
    public bool[] IsSeries { get; }

    /// <summary>Index of the node above each node; −1 at the root.</summary>
    public int[] Parent { get; }

    /// <summary>How many equal siblings each node stands for.</summary>
    public double[] Count { get; }

    /// <summary>Resistance in series with each node, Ω.</summary>
    public double[] Ohm { get; }

    /// <summary>How often each node stands in the whole tree.</summary>
    public double[] Times { get; }

    private int AddNode(CircuitTree tree, double count)
    {
        bool isSeries = tree is not CircuitTree.Parallel;
        CircuitTree node = isSeries ? Flat(tree) : tree;
        List<(CircuitTree Part, double Count)> parts = Grouped(node is CircuitTree.Series series ? series.Parts : ((CircuitTree.Parallel)node).Parts);
        List<int> below = [];
        List<int> leaves = [];
        foreach ((CircuitTree part, double times) in parts)
        {
            if (part is CircuitTree.Group { WireOhm: 0 } group)
            {
                leaves.Add(_leaves.Count);
                _leaves.Add(group);
                _leafCount.Add(times);
                _leafParent.Add(-1);
            }
            else
            {
                below.Add(AddNode(part, times));
            }
        }

        int me = _parent.Count;
        _isSeries.Add(isSeries);
        _parent.Add(-1);
        _count.Add(count);
        _ohm.Add(node.WireOhm);
        below.ForEach(child => _parent[child] = me);
        leaves.ForEach(leaf => _leafParent[leaf] = me);
        return me;
    }

    /// <summary>The node as one series with no series inside, its parts' own resistance drawn out where they were series.</summary>
    private static CircuitTree.Series Flat(CircuitTree tree)
    {
        List<CircuitTree> parts = [];
        double ohm = 0;
        Collect(tree);
        return (CircuitTree.Series)new CircuitTree.Series([.. parts]).WithWire(ohm);

        void Collect(CircuitTree node)
        {
            switch (node)
            {
                case CircuitTree.Series series:
                    ohm += series.WireOhm;
                    foreach (CircuitTree part in series.Parts)
                    {
                        Collect(part);
                    }

                    break;
                case CircuitTree.Group group:
                    ohm += group.WireOhm;
                    parts.Add(group.WithWire(0));
                    break;
                default:
                    parts.Add(node);
                    break;
            }
        }
    }

    private static List<(CircuitTree Part, double Count)> Grouped(IReadOnlyList<CircuitTree> parts)
    {
        List<(CircuitTree Part, double Count)> groups = [];
        foreach (CircuitTree part in parts)
        {
            int found = groups.FindIndex(group => group.Part.Equals(part));
            if (found < 0)
            {
                groups.Add((part, 1));
            }
            else
            {
                groups[found] = (part, groups[found].Count + 1);
            }
        }

        return groups;
    }
}

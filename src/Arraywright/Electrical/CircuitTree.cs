using System.Collections.Immutable;

namespace Arraywright.Electrical;

/// <summary>A wiring turned into circuit elements: what the solver computes and what a netlist prints, from one source.</summary>
/// <remarks>Every node has a resistance in series with it (copper and contacts), which may be 0.</remarks>
public abstract record CircuitTree
{
    private CircuitTree()
    {
    }

    /// <summary>Resistance in series with this node, Ω.</summary>
    public double WireOhm { get; private init; }

    /// <summary>A bypassed group of cells.</summary>
    /// <param name="Cells">Its five parameters.</param>
    /// <param name="Bypass">The diode across it.</param>
    /// <param name="Kind">Kind of the panel it belongs to.</param>
    /// <param name="Place">Its place in the panel, from 0.</param>
    public sealed record Group(DiodeParameters Cells, BypassDiode Bypass, int Kind, int Place) : CircuitTree;

    /// <summary>Nodes in series.</summary>
    /// <param name="Parts">At least one.</param>
    public sealed record Series(ImmutableArray<CircuitTree> Parts) : CircuitTree
    {
        /// <summary>Equal when resistance and parts are equal in order.</summary>
        public bool Equals(Series? other) => other is not null && WireOhm == other.WireOhm && Parts.SequenceEqual(other.Parts);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(1, WireOhm, Parts.Length, Parts[0]);
    }

    /// <summary>Nodes in parallel.</summary>
    /// <param name="Parts">At least one.</param>
    public sealed record Parallel(ImmutableArray<CircuitTree> Parts) : CircuitTree
    {
        /// <summary>Equal when resistance and parts are equal in order.</summary>
        public bool Equals(Parallel? other) => other is not null && WireOhm == other.WireOhm && Parts.SequenceEqual(other.Parts);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(2, WireOhm, Parts.Length, Parts[0]);
    }

    /// <summary>The circuit of a wiring.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="panels">The panel of a given name, as it works now.</param>
    /// <param name="wires">Copper and contacts.</param>
    public static CircuitTree Of(Wiring wiring, Func<string, PanelAtWork> panels, WireResistances wires)
    {
        CircuitTree array = wiring is Wiring.Parallel parallel
            ? new Parallel([.. parallel.Parts.Select(part => Branch(part, panels, wires).Behind(wires.StringOhm))])
            : Node(wiring, panels, wires).Behind(wires.StringOhm);
        return array.Behind(wires.RunOhm + wires.ContactOhm);
    }

    private static CircuitTree Node(Wiring wiring, Func<string, PanelAtWork> panels, WireResistances wires) => wiring switch
    {
        Wiring.Single single => PanelNode(panels(single.Panel)).Behind(wires.ContactOhm),
        Wiring.Series series => new Series([.. series.Parts.Select(part => Node(part, panels, wires))]),
        Wiring.Parallel parallel => new Parallel([.. parallel.Parts.Select(part => Branch(part, panels, wires))]),
        _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
    };

    private static CircuitTree Branch(Wiring wiring, Func<string, PanelAtWork> panels, WireResistances wires) =>
        Node(wiring, panels, wires).Behind(wires.ContactOhm);

    private static Series PanelNode(PanelAtWork panel) =>
        new([.. panel.Groups.Select(CircuitTree (cells, place) => new Group(cells, panel.Bypass, panel.Kind, FirstEqual(panel, place)))]);

    /// <summary>Equal groups of a panel share the place of the first, so that they are solved once.</summary>
    private static int FirstEqual(PanelAtWork panel, int place) => panel.Groups.IndexOf(panel.Groups[place]);

    /// <summary>The same node with this resistance in series with it instead of its own.</summary>
    internal CircuitTree WithWire(double ohm) => this with { WireOhm = ohm };

    private CircuitTree Behind(double ohm) => WithWire(WireOhm + ohm);
}

using System.Collections.Immutable;

namespace Arraywright.Electrical;

/// <summary>What meters show at one part of a working array, and at the parts within it.</summary>
/// <param name="VoltageV">Between the ends of the part, its own cable and contacts included, V: where it joins its neighbours; for the whole array, at the input.</param>
/// <param name="InnerV">Within its own cable and contacts, V; for a parallel, where its branches join.</param>
/// <param name="CurrentA">Out of its plus, A; negative where its neighbours drive it backwards.</param>
/// <param name="Parts">Its parts in the wiring's order; empty for a panel.</param>
public sealed record PartReading(double VoltageV, double InnerV, double CurrentA, ImmutableArray<PartReading> Parts)
{
    /// <summary>The readings of an array that works at a terminal voltage.</summary>
    /// <remarks>Each part is solved by itself from what it shares with its neighbours, current in series and voltage in parallel: that the parts add up to the whole is not put in.</remarks>
    /// <param name="wiring">The wiring.</param>
    /// <param name="tree">Its circuit, as <see cref="CircuitTree.Of"/> makes it.</param>
    /// <param name="voltageV">Volts at the input.</param>
    public static PartReading Of(Wiring wiring, CircuitTree tree, double voltageV) =>
        At(wiring, tree, voltageV, new Circuit(tree).CurrentAt(voltageV));

    private static PartReading At(Wiring wiring, CircuitTree tree, double voltageV, double currentA)
    {
        double innerV = voltageV + (currentA * tree.WireOhm);
        return new PartReading(voltageV, innerV, currentA, (wiring, tree) switch
        {
            (Wiring.Single, _) => [],
            (Wiring.Series series, CircuitTree.Series parts) =>
                [.. series.Parts.Zip(parts.Parts, (part, circuit) => At(part, circuit, new Circuit(circuit).VoltageAt(currentA), currentA))],
            (Wiring.Parallel parallel, CircuitTree.Parallel parts) =>
                [.. parallel.Parts.Zip(parts.Parts, (part, circuit) => At(part, circuit, innerV, new Circuit(circuit).CurrentAt(innerV)))],
            _ => throw new ArgumentException("The circuit is not that of the wiring.", nameof(tree)),
        });
    }
}

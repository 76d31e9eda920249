using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Parts;

/// <summary>The current through every node of a wiring, where its input holds it, by the circuit itself.</summary>
internal static class TreeCurrents
{
    /// <summary>Currents by path ("" for the whole, "2.1" for the first part of the second), A; one fed backwards is negative.</summary>
    /// <param name="wiring">The wiring, canonical.</param>
    /// <param name="tree">Its circuit.</param>
    /// <param name="voltageV">Volts at the input.</param>
    /// <param name="currentA">Amps into the input.</param>
    public static Dictionary<string, double> Of(Wiring wiring, CircuitTree tree, double voltageV, double currentA)
    {
        Dictionary<string, double> found = new(StringComparer.Ordinal);
        Visit(found, wiring, tree, [], voltageV, currentA);
        return found;
    }

    /// <summary>A path as a key.</summary>
    public static string Key(ImmutableArray<int> path) => string.Join('.', path);

    private static void Visit(Dictionary<string, double> found, Wiring wiring, CircuitTree tree, ImmutableArray<int> path, double voltageV, double currentA)
    {
        found[Key(path)] = currentA;
        switch (wiring, tree)
        {
            case (Wiring.Series series, CircuitTree.Series parts):
                for (int i = 0; i < series.Parts.Length; i++)
                {
                    // The volts of a part matter only to what branches within it.
                    double partV = series.Parts[i] is Wiring.Single ? 0 : new Circuit(parts.Parts[i]).VoltageAt(currentA);
                    Visit(found, series.Parts[i], parts.Parts[i], path.Add(i + 1), partV, currentA);
                }

                break;
            case (Wiring.Parallel parallel, CircuitTree.Parallel branches):
                double joinedV = voltageV + (currentA * tree.WireOhm);
                double branchA = 0;
                for (int i = 0; i < parallel.Parts.Length; i++)
                {
                    bool isLikeLast = i > 0 && branches.Parts[i].Equals(branches.Parts[i - 1]);
                    branchA = isLikeLast ? branchA : new Circuit(branches.Parts[i]).CurrentAt(joinedV);
                    Visit(found, parallel.Parts[i], branches.Parts[i], path.Add(i + 1), joinedV, branchA);
                }

                break;
        }
    }
}

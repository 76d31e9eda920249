using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>What an input really takes from a wiring in each moment, by the circuit; remembered, since the same wiring comes up again.</summary>
internal sealed class ExactWorth(SearchProblem problem, StringCatalog catalog)
{
    private readonly Dictionary<string, PanelAtWork[]> _panels = problem.Stocks.ToDictionary(stock => stock.Name, stock => stock.AtWork.ToArray());
    private readonly Dictionary<(InputStrings Input, string Rows), double[]> _known = [];

    /// <summary>The strings, by place in their input's list, as a wiring; null for none.</summary>
    public Wiring? WiringOf(InputStrings strings, ReadOnlySpan<int> chosen)
    {
        if (chosen.IsEmpty)
        {
            return null;
        }

        var parts = ImmutableArray.CreateBuilder<Wiring>(chosen.Length);
        foreach (int s in chosen)
        {
            parts.Add(catalog.WiringOf(strings.Rows[s]));
        }

        return Wiring.InParallel(parts);
    }

    /// <summary>Watts taken in each moment; NaN where not computed yet.</summary>
    public double[] Of(InputStrings strings, ReadOnlySpan<int> chosen)
    {
        (InputStrings, string) key = (strings, string.Join(',', chosen.ToArray()));
        if (!_known.TryGetValue(key, out double[]? powersW))
        {
            _known[key] = powersW = new double[problem.Weights.Length];
            Array.Fill(powersW, double.NaN);
        }

        return powersW;
    }

    /// <summary>Watts an input takes from a wiring in one moment.</summary>
    public double PowerW(SearchInput input, Wiring wiring, int moment)
    {
        var wires = new WireResistances(input.RunOhm, problem.StringOhm, problem.ContactOhm);
        CircuitTree tree = CircuitTree.Of(wiring, name => _panels[name][moment], wires);
        return new Circuit(tree).PowerTakenW(input.Window);
    }
}

using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>What an input really takes from a wiring in each moment, by the circuit; remembered, since the same wiring comes up again.</summary>
internal sealed class ExactWorth
{
    private readonly SearchProblem _problem;
    private readonly Dictionary<string, PanelAtWork[]> _panels;
    private readonly Dictionary<(InputStrings Input, string Rows), double[]> _known = [];
    private readonly DiodeParameters[][] _groups;
    private readonly int _stride;
    private readonly int _telling;

    /// <summary>Prepares the panels.</summary>
    public ExactWorth(SearchProblem problem)
    {
        _problem = problem;
        _panels = problem.Stocks
            .Select((stock, kind) => (stock.Name, AtWork: stock.AtWork.Select(panel => panel with { Kind = kind }).ToArray()))
            .ToDictionary(entry => entry.Name, entry => entry.AtWork, StringComparer.Ordinal);
        _stride = problem.Stocks.Max(stock => stock.AtWork.Max(panel => panel.Groups.Length));
        _groups = [.. problem.Weights.Select((_, moment) => GroupsIn(problem, moment, _stride))];
        _telling = Enumerable.Range(0, problem.Weights.Length).FirstOrDefault(moment => TellsAll(problem, moment), -1);
    }

    /// <summary>Watts taken in each moment; NaN where not computed yet.</summary>
    public double[] Of(InputStrings strings, ReadOnlySpan<int> chosen)
    {
        (InputStrings, string) key = (strings, string.Join(',', chosen.ToArray()));
        if (!_known.TryGetValue(key, out double[]? powersW))
        {
            _known[key] = powersW = new double[_problem.Weights.Length];
            Array.Fill(powersW, double.NaN);
        }

        return powersW;
    }

    /// <summary>Watts an input takes from a wiring in one moment.</summary>
    /// <param name="input">The input.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="circuit">The wiring's circuit from an earlier moment, or null; receives it for the next.</param>
    public double PowerW(SearchInput input, Wiring wiring, int moment, ref Circuit? circuit)
    {
        if (circuit is null || _telling < 0)
        {
            var wires = new WireResistances(input.RunOhm, _problem.StringOhm, _problem.ContactOhm);
            int first = _telling < 0 ? moment : _telling;
            circuit = new Circuit(CircuitTree.Of(wiring, name => _panels[name][first], wires));
        }

        if (_telling >= 0)
        {
            circuit.Update(_groups[moment], _stride);
        }

        return circuit.PowerTakenW(input.Window);
    }

    /// <summary>Weighted mean power of a wiring, one entry an input, W.</summary>
    public double ObjectiveW(ImmutableArray<Wiring?> wirings)
    {
        double sum = 0;
        var circuits = new Circuit?[wirings.Length];
        for (int moment = 0; moment < _problem.Weights.Length; moment++)
        {
            int at = moment;
            sum += _problem.Weights[moment] * TogetherW(_problem, input => wirings[input] is { } wiring ? PowerW(_problem.Inputs[input], wiring, at, ref circuits[input]) : 0);
        }

        return sum / _problem.Weights.Sum();
    }

    /// <summary>Sum over inputs by themselves and units, each unit held to its most.</summary>
    /// <param name="problem">Inputs and units.</param>
    /// <param name="inputW">Power of each input, W.</param>
    public static double TogetherW(SearchProblem problem, Func<int, double> inputW)
    {
        double sum = 0;
        for (int input = 0; input < problem.Inputs.Length; input++)
        {
            sum += problem.Inputs[input].Unit < 0 ? inputW(input) : 0;
        }

        for (int unit = 0; unit < problem.UnitMaxW.Length; unit++)
        {
            double togetherW = 0;
            for (int input = 0; input < problem.Inputs.Length; input++)
            {
                togetherW += problem.Inputs[input].Unit == unit ? inputW(input) : 0;
            }

            sum += Math.Min(togetherW, problem.UnitMaxW[unit]);
        }

        return sum;
    }

    private static DiodeParameters[] GroupsIn(SearchProblem problem, int moment, int stride)
    {
        var groups = new DiodeParameters[problem.Stocks.Length * stride];
        for (int kind = 0; kind < problem.Stocks.Length; kind++)
        {
            problem.Stocks[kind].AtWork[moment].Groups.CopyTo(groups, kind * stride);
        }

        return groups;
    }

    /// <summary>Whether groups of a panel that are equal in this moment are so in every moment, and diodes are the same: a circuit built now then serves for all.</summary>
    private static bool TellsAll(SearchProblem problem, int moment) => problem.Stocks.All(stock => stock.AtWork.All(other =>
    {
        PanelAtWork now = stock.AtWork[moment];
        bool same = other.Bypass == now.Bypass && other.Groups.Length == now.Groups.Length;
        for (int i = 0; i < now.Groups.Length && same; i++)
        {
            for (int j = 0; j < i && same; j++)
            {
                same = now.Groups[i] != now.Groups[j] || other.Groups[i] == other.Groups[j];
            }
        }

        return same;
    }));
}

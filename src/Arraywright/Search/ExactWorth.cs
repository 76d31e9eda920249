using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>What an input really takes from a wiring in each moment, by the circuit; remembered, since the same wiring comes up again.</summary>
internal sealed class ExactWorth(SearchProblem problem)
{
    private readonly Dictionary<string, PanelAtWork[]> _panels = problem.Stocks.ToDictionary(stock => stock.Name, stock => stock.AtWork.ToArray());
    private readonly Dictionary<(InputStrings Input, string Rows), double[]> _known = [];

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

    /// <summary>Weighted mean power of a wiring, one entry an input, W.</summary>
    public double ObjectiveW(ImmutableArray<Wiring?> wirings)
    {
        double sum = 0;
        for (int moment = 0; moment < problem.Weights.Length; moment++)
        {
            int at = moment;
            sum += problem.Weights[moment] * TogetherW(problem, input => wirings[input] is { } wiring ? PowerW(problem.Inputs[input], wiring, at) : 0);
        }

        return sum / problem.Weights.Sum();
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
}

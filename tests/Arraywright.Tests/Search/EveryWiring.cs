using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Tests.Search;

/// <summary>The plain other route: every wiring written out, each solved by the circuit. No bound, no table, no numbering of parts.</summary>
internal static class EveryWiring
{
    /// <summary>All wirings within the limits, each once, with their exact worth.</summary>
    public static List<(ImmutableArray<Wiring?> Wirings, double ObjectiveW, int Complexity)> Judged(SearchProblem problem)
    {
        var judged = new List<(ImmutableArray<Wiring?>, double, int)>();
        foreach (List<List<List<string>>>[] wiring in Distinct(problem))
        {
            if (problem.Inputs.Select((input, i) => Fits(problem, input, wiring[i])).All(fits => fits))
            {
                ImmutableArray<Wiring?> wirings = [.. wiring.Select(ToWiring)];
                judged.Add((wirings, Worth(problem, wirings), wiring.Sum(strings => strings.Count + strings.Sum(s => s.Sum(b => b.Count)))));
            }
        }

        return judged;
    }

    /// <summary>All wirings of the family, equal panels not told apart, no limit applied: for each input its strings, each a list of blocks of names.</summary>
    public static List<List<List<List<string>>>[]> Distinct(SearchProblem problem)
    {
        string[] panels = [.. problem.Stocks.SelectMany(stock => Enumerable.Repeat(stock.Name, stock.Count))];
        var found = new Dictionary<string, List<List<List<string>>>[]>(StringComparer.Ordinal);
        Place(problem.Family, panels, 0, [.. problem.Inputs.Select(_ => new List<List<List<string>>>())], found);
        return [.. found.Values];
    }

    /// <summary>Weighted mean power by the circuit, W.</summary>
    public static double Worth(SearchProblem problem, ImmutableArray<Wiring?> wirings)
    {
        double sum = 0;
        for (int moment = 0; moment < problem.Weights.Length; moment++)
        {
            double[] powersW = [.. wirings.Select((wiring, input) => wiring is null ? 0 : PowerW(problem, problem.Inputs[input], wiring, moment))];
            double total = powersW.Where((_, input) => problem.Inputs[input].Unit < 0).Sum();
            for (int unit = 0; unit < problem.UnitMaxW.Length; unit++)
            {
                total += Math.Min(problem.UnitMaxW[unit], powersW.Where((_, input) => problem.Inputs[input].Unit == unit).Sum());
            }

            sum += problem.Weights[moment] * total;
        }

        return sum / problem.Weights.Sum();
    }

    private static double PowerW(SearchProblem problem, SearchInput input, Wiring wiring, int moment)
    {
        var wires = new WireResistances(input.RunOhm, problem.StringOhm, problem.ContactOhm);
        var tree = CircuitTree.Of(wiring, name => problem.Stocks.Single(stock => stock.Name == name).AtWork[moment], wires);
        return new Circuit(tree).TakenBy(input.Window).PowerW;
    }

    private static void Place(WiringFamily family, string[] panels, int next, List<List<List<string>>>[] wiring, Dictionary<string, List<List<List<string>>>[]> found)
    {
        if (next == panels.Length)
        {
            // A lone block of several panels is not a string of its own: it is as many strings.
            if (wiring.All(strings => strings.All(s => s.Count > 1 || s[0].Count == 1)))
            {
                found.TryAdd(Text(wiring), [.. wiring.Select(strings => strings.Select(s => s.Select(b => b.ToList()).ToList()).ToList())]);
            }

            return;
        }

        Place(family, panels, next + 1, wiring, found);
        foreach (List<List<List<string>>> strings in wiring)
        {
            strings.Add([[panels[next]]]);
            Place(family, panels, next + 1, wiring, found);
            strings.RemoveAt(strings.Count - 1);
            foreach (List<List<string>> blocks in strings.ToArray())
            {
                blocks.Add([panels[next]]);
                Place(family, panels, next + 1, wiring, found);
                blocks.RemoveAt(blocks.Count - 1);
                foreach (List<string> block in family == WiringFamily.Strings ? [] : blocks.ToArray())
                {
                    block.Add(panels[next]);
                    Place(family, panels, next + 1, wiring, found);
                    block.RemoveAt(block.Count - 1);
                }
            }
        }
    }

    private static string Text(List<List<List<string>>>[] wiring) =>
        string.Join('/', wiring.Select(strings => string.Join('|', strings.Select(s =>
            string.Join('+', s.Select(b => string.Join('&', b.Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal))));

    private static Wiring? ToWiring(List<List<List<string>>> strings) => strings.Count == 0
        ? null
        : Wiring.InParallel(strings.Select(s => Wiring.InSeries(s.Select(b => Wiring.InParallel(b.Select(Wiring (name) => new Wiring.Single(name)))))));

    /// <summary>A sum that only the order of adding lifts over a limit breaks no rule; round limits such as 14 A meet sums of hundredths of an ampere exactly.</summary>
    public static bool Within(double sum, double limit) => sum <= limit + (1e-11 * Math.Abs(limit));

    private static bool Fits(SearchProblem problem, SearchInput input, List<List<List<string>>> strings)
    {
        SearchStock Of(string name) => problem.Stocks.Single(stock => stock.Name == name);
        foreach (List<List<string>> s in strings)
        {
            double labelV = s.Sum(b => b.Max(name => Of(name).ColdLabelV));
            double modelV = s.Sum(b => b.Max(name => Of(name).ColdModelV));
            double coldV = Math.Max(labelV, modelV);
            if (!Within(coldV, input.MaxVoltageV) || s.Any(b => b.Any(name => !Within(coldV, Of(name).MaxSystemV))))
            {
                return false;
            }
        }

        return Within(strings.Sum(s => s.Max(b => b.Sum(name => Of(name).LabelIscA))), input.MaxIscSumA)
            && Within(strings.Sum(s => s.Sum(b => b.Sum(name => Of(name).LabelPowerW))), input.MaxLabelPowerW);
    }
}

using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>Walks every wiring of a sharing-out depth first, cutting off whatever its bound shows not to matter.</summary>
/// <remarks>
/// At a node some strings are chosen and a part R of the pile is left for the input at hand. Power there is at most the sum of the chosen
/// strings' u plus B(R), cell by cell; the other inputs count with what is known or bounded of them. The next string always holds the
/// first kind left, and among strings with the same first kind numbers never fall: each wiring is met once.
/// </remarks>
internal sealed class WiringTree
{
    /// <summary>Nodes granted beyond any budget while no wiring at all is found.</summary>
    private const int NodesForTheFirst = 100_000;

    private readonly SearchProblem _problem;
    private readonly StringCatalog _catalog;
    private readonly InputStrings[] _strings;
    private readonly PartBounds _bounds;
    private readonly ExactWorth _exact;
    private readonly Shortlist _shortlist;
    private readonly Effort _effort;
    private readonly long _until;
    private readonly float[] _nothing;
    private readonly float[][] _sums;
    private readonly List<(double BoundW, int String)>[] _children;
    private readonly InputsTogether _inputs;
    private readonly AlikeInputs _alike;
    private readonly List<int>[] _chosen;
    private int[] _parts = [];
    private int _stringsChosen;
    private long _walked;

    /// <summary>Prepares a walk.</summary>
    public WiringTree(
        SearchProblem problem,
        StringCatalog catalog,
        InputStrings[] strings,
        PartBounds bounds,
        ExactWorth exact,
        Shortlist shortlist,
        Effort effort,
        long budget)
    {
        _problem = problem;
        _catalog = catalog;
        _strings = strings;
        _bounds = bounds;
        _exact = exact;
        _shortlist = shortlist;
        _effort = effort;
        _until = effort.Spent + budget;
        int panels = catalog.Pile.Panels[catalog.Pile.Whole];
        int columns = bounds.Covers.Max(cover => cover.Cells.Columns);
        _nothing = new float[columns];
        _sums = [.. Enumerable.Range(0, panels + 1).Select(_ => new float[columns])];
        _children = [.. Enumerable.Range(0, panels + 1).Select(_ => new List<(double, int)>())];
        _inputs = new InputsTogether(problem, bounds);
        _alike = new AlikeInputs(problem);
        _chosen = [.. strings.Select(_ => new List<int>())];
    }

    /// <summary>Whether the budget ended the walk.</summary>
    public bool Stopped => _effort.IsCalledOff || (_effort.Spent >= _until && (_shortlist.BestW > 0 || _walked >= NodesForTheFirst));

    /// <summary>Highest bound among what the budget left unseen, W; 0 when nothing was left.</summary>
    public double UnseenW { get; private set; }

    /// <summary>When set, the walk looks for wirings simpler than <see cref="MostComplexity"/> worth more than this, W, instead of for the best.</summary>
    public double? EnoughW { get; init; }

    /// <summary>Wirings this complex or more are of no interest.</summary>
    public int MostComplexity { get; set; } = int.MaxValue;

    private double FloorW => EnoughW ?? _shortlist.FloorW;

    private void Spend(int nodes)
    {
        _walked += nodes;
        _effort.Spend(nodes);
    }

    /// <summary>Walks the wirings of a sharing-out.</summary>
    public void Walk(Split split)
    {
        if (Stopped)
        {
            UnseenW = Math.Max(UnseenW, split.BoundW);
            return;
        }

        _parts = split.Parts;
        for (int input = 0; input < _parts.Length; input++)
        {
            _inputs.Suppose(input, _parts[input]);
        }

        Enter(0, 0, split.BoundW);
    }

    /// <summary>Goes on with the next input that has panels; with none left, the wiring is complete.</summary>
    private void Enter(int input, int depth, double boundW)
    {
        while (input < _parts.Length && _parts[input] == 0)
        {
            input++;
        }

        if (input == _parts.Length)
        {
            Judge(boundW);
            return;
        }

        _sums[depth].AsSpan().Clear();
        Extend(input, _parts[input], depth, -1, ChosenAmps.None);
        _inputs.Suppose(input, _parts[input]);
    }

    /// <summary>Takes one more string for an input, in every way worth it, best bound first.</summary>
    private void Extend(int input, int rest, int depth, int last, ChosenAmps amps)
    {
        List<(double BoundW, int String)> children = _children[depth];
        children.Clear();
        if (LeastComplexity(input, rest) < MostComplexity)
        {
            Bound(input, rest, depth, last, amps, children);
            children.Sort((a, b) => b.BoundW != a.BoundW ? b.BoundW.CompareTo(a.BoundW) : a.String.CompareTo(b.String));
        }

        CoverTable cover = _bounds.Covers[input];
        foreach ((double boundW, int s) in children)
        {
            if (boundW <= FloorW)
            {
                break;
            }

            if (Stopped)
            {
                UnseenW = Math.Max(UnseenW, boundW);
                break;
            }

            int left = rest - _strings[input].Parts[s];
            _chosen[input].Add(s);
            _stringsChosen++;
            if (left > 0)
            {
                Add(_sums[depth], cover.OfString(s), _sums[depth + 1]);
                Extend(input, left, depth + 1, s, cover.Amps.With(amps, s));
            }
            else
            {
                cover.Cells.Worth(_sums[depth].AsSpan(0, cover.Cells.Columns), cover.OfString(s), cover.Of(0), _inputs.Of(input));
                Enter(input + 1, depth + 1, boundW);
            }

            _chosen[input].RemoveAt(_chosen[input].Count - 1);
            _stringsChosen--;
        }
    }

    private void Bound(int input, int rest, int depth, int last, ChosenAmps amps, List<(double BoundW, int String)> children)
    {
        Pile pile = _catalog.Pile;
        CoverTable cover = _bounds.Covers[input];
        InputStrings strings = _strings[input];
        double fixedW = _inputs.Beside(input);
        Span<float> mostW = stackalloc float[cover.Cells.Lanes];
        ReadOnlySpan<float> sum = _sums[depth].AsSpan(0, cover.Cells.Columns);
        int kind = pile.Lowest[rest];
        int from = last >= 0 && pile.Lowest[strings.Parts[last]] == kind ? last : 0;
        double floorW = FloorW;
        foreach (int s in strings.Buckets[kind])
        {
            int left = rest - strings.Parts[s];
            if (s >= from
                && pile.Within(pile.Packed[strings.Parts[s]], pile.Packed[rest])
                && cover.Amps.Fits(amps, s, left))
            {
                Spend(1);
                cover.Cells.Worth(sum, cover.OfString(s), cover.Of(left), mostW);
                double boundW = fixedW + _inputs.With(input, mostW);
                if (boundW > floorW)
                {
                    children.Add((boundW, s));
                }
            }
        }
    }

    /// <summary>Panels and strings that any completion has at least.</summary>
    private int LeastComplexity(int input, int rest)
    {
        int least = _stringsChosen + (rest > 0 ? 1 : 0);
        for (int i = 0; i < _parts.Length; i++)
        {
            least += _catalog.Pile.Panels[_parts[i]] + (i > input && _parts[i] > 0 ? 1 : 0);
        }

        return least;
    }

    private static void Add(ReadOnlySpan<float> a, ReadOnlySpan<float> b, Span<float> sum)
    {
        for (int i = 0; i < b.Length; i++)
        {
            sum[i] = a[i] + b[i];
        }
    }

    /// <summary>Computes the exact worth of the complete wiring, moment by moment, and gives up as soon as the rest cannot make it matter.</summary>
    private void Judge(double boundW)
    {
        int complexity = LeastComplexity(_parts.Length, 0);
        if (complexity >= MostComplexity || complexity == 0)
        {
            return;
        }

        ImmutableArray<Wiring?> wirings = [.. _strings.Select((strings, input) => WiringOf(strings, _chosen[input]))];
        if (_problem.Accept is { } accept)
        {
            Spend(Effort.Verdict);
            if (!accept(wirings))
            {
                return;
            }
        }

        double[][] known = [.. _strings.Select((strings, input) => _exact.Of(strings, [.. _chosen[input]]))];
        var circuits = new Circuit?[known.Length];
        double giveUpW = EnoughW ?? Math.Min(_shortlist.LeastW, FloorW);
        double exactW = 0;
        for (int moment = 0; moment < _bounds.Shares.Length; moment++)
        {
            double share = _bounds.Shares[moment];
            boundW -= share * ExactWorth.TogetherW(_problem, input => _inputs.Of(input)[moment]);
            exactW += share * ExactWorth.TogetherW(_problem, input => Known(known, wirings, circuits, input, moment));
            if (exactW + boundW <= giveUpW)
            {
                return;
            }
        }

        Accepted(wirings, exactW, complexity);
    }

    private Wiring? WiringOf(InputStrings strings, List<int> chosen) =>
        chosen.Count == 0 ? null : Wiring.InParallel(chosen.Select(s => _catalog.WiringOf(strings.Rows[s])));

    private double Known(double[][] known, ImmutableArray<Wiring?> wirings, Circuit?[] circuits, int input, int moment)
    {
        if (double.IsNaN(known[input][moment]))
        {
            Spend(Effort.Circuit);
            known[input][moment] = wirings[input] is { } wiring ? _exact.PowerW(_problem.Inputs[input], wiring, moment, ref circuits[input]) : 0;
        }

        return known[input][moment];
    }

    private void Accepted(ImmutableArray<Wiring?> wirings, double exactW, int complexity)
    {
        double highestV = 0;
        for (int input = 0; input < _strings.Length; input++)
        {
            foreach (int s in _chosen[input])
            {
                highestV = Math.Max(highestV, _catalog.Rows[_strings[input].Rows[s]].ColdV);
            }
        }

        _shortlist.Add(_alike.Key(wirings), new Candidate(wirings, exactW, complexity - _stringsChosen, _stringsChosen, highestV));
        if (EnoughW is not null)
        {
            MostComplexity = complexity;
        }
    }
}

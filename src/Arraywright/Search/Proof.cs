using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>The exact search: bounds over ever finer voltage cells, a walk after each, until nothing can be better than the best found.</summary>
internal sealed class Proof
{
    private const int FewestCells = 12;
    private const int MostCells = 48;
    private static readonly long[] Budgets = [20_000, 100_000, 400_000, long.MaxValue];

    private readonly SearchProblem _problem;
    private readonly SearchOptions _options;
    private readonly StringCatalog _catalog;
    private readonly CurveLines _lines;
    private readonly InputStrings[] _strings;
    private readonly Shortlist _shortlist;
    private readonly ExactWorth _exact;
    private readonly IProgress<double>? _progress;
    private readonly PartAmps[] _amps;
    private readonly Effort _effort;

    /// <summary>Prepares the search.</summary>
    public Proof(SearchProblem problem, SearchOptions options, StringCatalog catalog, IProgress<double>? progress, Effort effort, bool isForAll = false)
    {
        _problem = problem;
        _options = options;
        _catalog = catalog;
        _progress = progress;
        _effort = effort;
        _lines = new CurveLines(problem, catalog, effort);
        _strings = new InputStrings[problem.Inputs.Length];
        for (int input = 0; input < _strings.Length; input++)
        {
            SearchInput own = problem.Inputs[input] with { Name = "", Unit = -1 };
            _strings[input] = _strings[..input].FirstOrDefault(before => before.Input == own) ?? new InputStrings(own, catalog);
        }

        _amps = Distinct(input => new PartAmps(_strings[input], catalog.Pile, effort));
        _shortlist = new Shortlist(options.Show, isForAll);
        _exact = new ExactWorth(problem);
    }

    /// <summary>Wirings that break no limit.</summary>
    public double CountFeasible() => WiringCount.Allowed(_catalog.Pile, _strings, LabelPowerW, _effort);

    /// <summary>Runs it.</summary>
    /// <returns>Everything worth showing, highest worth first, and the proved bound; infinite when it was called off before there was one.</returns>
    public (ImmutableArray<Candidate> Ranked, double BoundW) Run()
    {
        double boundW = double.PositiveInfinity;
        try
        {
            VoltageCells[] cells = FirstCells();
            PartBounds? bounds = null;
            for (int level = 0; level < Budgets.Length; level++)
            {
                _progress?.Report((double)level / Budgets.Length);
                long before = _effort.Spent;
                bounds = BoundsOver(cells, bounds);
                long tables = _effort.Spent - before;
                boundW = Math.Min(boundW, bounds.HighestW);
                boundW = Math.Min(boundW, Walk(bounds, Math.Min(Budgets[level], _effort.Left)));
                if (boundW <= _shortlist.FloorW || level == Budgets.Length - 1 || _effort.Left <= tables)
                {
                    Simplify(bounds);
                    break;
                }

                bool[][] keep = bounds.CellsAbove(_shortlist.BestW * (1 - _options.NearTieFraction));
                cells = Distinct(input => cells[input].Finer(keep[input], MostCellsInMemory()));
            }
        }
        catch (OperationCanceledException)
        {
            // The best so far stands, and so does the last bound.
        }

        return (_shortlist.Ranked(), Math.Max(boundW, _shortlist.BestW));
    }

    /// <summary>A bound on every wiring's worth without a walk, W.</summary>
    /// <param name="floorW">Worth that some wiring has, W: below it nothing needs telling apart.</param>
    public double BoundW(double floorW)
    {
        VoltageCells[] cells = FirstCells();
        long before = _effort.Spent;
        PartBounds bounds = BoundsOver(cells, before: null);
        if (bounds.HighestW > floorW && _effort.Left > _effort.Spent - before)
        {
            // Once finer is enough: what is left comes from taking unlike panels for alike.
            bool[][] keep = bounds.CellsAbove(floorW);
            cells = Distinct(input => cells[input].Finer(keep[input], MostCellsInMemory()));
            bounds = BoundsOver(cells, bounds);
        }

        return Math.Max(bounds.HighestW, floorW);
    }

    /// <summary>Every wiring that earns anything, highest worth first; null where the budget or the room does not suffice for all.</summary>
    /// <param name="matters">Whether wirings matter that take so many panels of each kind.</param>
    public ImmutableArray<Candidate>? All(Func<int[], bool> matters) =>
        Walk(BoundsOver(FirstCells(), before: null), _effort.Left, matters) <= 0 && _shortlist.Count <= _options.Show ? _shortlist.Ranked() : null;

    /// <summary>Walks the sharings-out from the best bound down; returns a bound on all that was not seen, or the best found.</summary>
    private double Walk(PartBounds bounds, long budget, Func<int[], bool>? matters = null)
    {
        var tree = new WiringTree(_problem, _catalog, _strings, bounds, _exact, _shortlist, _effort, budget);
        double upToW = double.PositiveInfinity;
        foreach (double share in (ReadOnlySpan<double>)[0.998, 0.99, 0.95, 0.8, 0])
        {
            double aboveW = Math.Max(bounds.HighestW * share, _shortlist.FloorW);
            if (upToW <= _shortlist.FloorW)
            {
                break;
            }

            (List<Split> splits, bool cut) = SplitList.Between(bounds, _catalog.Pile, aboveW, upToW, _effort);
            foreach (Split split in splits)
            {
                if (split.BoundW <= _shortlist.FloorW)
                {
                    break;
                }

                if (matters is null || matters(Taken(split)))
                {
                    tree.Walk(split);
                }
            }

            if (cut)
            {
                // Those not listed are bounded as their band is.
                return Math.Min(upToW, bounds.HighestW);
            }

            upToW = aboveW;
            if (tree.Stopped)
            {
                return Math.Max(tree.UnseenW, upToW);
            }
        }

        return tree.UnseenW;
    }

    /// <summary>Looks for the simplest wiring that ties with the best.</summary>
    private void Simplify(PartBounds bounds)
    {
        double enoughW = _shortlist.BestW * (1 - _options.NearTieFraction);
        var tree = new WiringTree(_problem, _catalog, _strings, bounds, _exact, _shortlist, _effort, Math.Max(_options.NodeBudget / 10, 1))
        {
            EnoughW = enoughW,
            MostComplexity = _shortlist.Ranked().Where(candidate => candidate.ObjectiveW >= enoughW).Select(candidate => candidate.Complexity).DefaultIfEmpty(0).Min(),
        };
        foreach (Split split in SplitList.Between(bounds, _catalog.Pile, enoughW, double.PositiveInfinity, _effort).Found)
        {
            tree.Walk(split);
        }
    }

    /// <summary>Panels of each kind that a sharing-out takes.</summary>
    private int[] Taken(Split split) =>
        [.. Enumerable.Range(0, _problem.Stocks.Length).Select(kind => split.Parts.Sum(part => _catalog.Pile.CountOf(part, kind)))];

    private double LabelPowerW(int part)
    {
        double sum = 0;
        for (int kind = 0; kind < _problem.Stocks.Length; kind++)
        {
            sum += _catalog.Pile.CountOf(part, kind) * _problem.Stocks[kind].LabelPowerW;
        }

        return sum;
    }

    private VoltageCells[] FirstCells() => Distinct(input =>
    {
        SearchInput spec = _problem.Inputs[input];
        double[] topV = StringTables.TopVoltages(_catalog, _lines, row => InputStrings.Allows(spec, row));
        return VoltageCells.Coarse(spec.Window, spec.RunOhm + _problem.ContactOhm, topV, MostCurrents(spec), MostCellsInMemory());
    });

    /// <summary>Cells a moment may have for all tables to stay within the memory allowed.</summary>
    private int MostCellsInMemory()
    {
        int lanes = (_problem.Weights.Length + 7) / 8 * 8;
        long rows = _strings.Distinct().Sum(strings => (long)_catalog.Pile.States + strings.Rows.Length);
        return (int)Math.Clamp(_options.TableBytes / (rows * lanes * sizeof(float)), FewestCells, MostCells);
    }

    /// <summary>Most current an input can draw in each moment: by its own limit, or by what its strings' labels may sum to.</summary>
    private double[] MostCurrents(SearchInput input)
    {
        double[] mostA = new double[_problem.Weights.Length];
        for (int moment = 0; moment < mostA.Length; moment++)
        {
            double overLabel = _problem.Stocks.Max(stock => CurveLines.MostLightA(stock, moment) / stock.LabelIscA);
            mostA[moment] = Math.Min(input.Window.MaxA, input.MaxIscSumA * overLabel);
        }

        return mostA;
    }

    private PartBounds BoundsOver(VoltageCells[] cells, PartBounds? before)
    {
        int[] first = [.. Enumerable.Range(0, cells.Length).Where(input => Array.IndexOf(_strings, _strings[input]) == input)];
        float[][] tables = StringTables.Fill(_catalog, _lines, [.. first.Select(input => (cells[input], _strings[input].Place))], _effort);
        var covers = new CoverTable[cells.Length];
        for (int i = 0; i < first.Length; i++)
        {
            covers[first[i]] = new CoverTable(_strings[first[i]], _amps[first[i]], _catalog.Pile, cells[first[i]], tables[i], before?.Covers[first[i]], _effort);
        }

        for (int input = 0; input < covers.Length; input++)
        {
            covers[input] ??= covers[Array.IndexOf(_strings, _strings[input])];
        }

        return new PartBounds(_problem, _catalog.Pile, covers, _effort);
    }

    /// <summary>One value an input, shared among inputs that are alike.</summary>
    private T[] Distinct<T>(Func<int, T> make)
    {
        var all = new T[_strings.Length];
        for (int input = 0; input < all.Length; input++)
        {
            int twin = Array.IndexOf(_strings, _strings[input]);
            all[input] = twin < input ? all[twin] : make(input);
        }

        return all;
    }
}

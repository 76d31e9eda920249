using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>Finds the best wiring of a pile of panels on the inputs at hand and proves that there is none better.</summary>
public static class WiringSearch
{
    /// <summary>Side-by-side blocks of so many parts of the pile still have tables of reasonable size.</summary>
    private const int MostPartsInBlocks = 600;

    /// <summary>Of a pile too large to prove, this share of the work goes to finding; the rest bounds.</summary>
    private const double ShareOfRough = 0.5;

    private const double ShareOfRound = 0.1;

    /// <summary>Runs the search.</summary>
    /// <param name="problem">Pile, inputs and moments.</param>
    /// <param name="options">How far to go.</param>
    /// <param name="progress">Told the share done, 0 to 1, now and then; may be null.</param>
    /// <param name="cancellation">Ends the search early, with the best so far and an honest gap.</param>
    public static SearchOutcome Run(SearchProblem problem, SearchOptions options, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        Check(problem);

        // The strongest panels are placed first: they decide most, so that the walk is cut off early.
        problem = problem with { Stocks = [.. problem.Stocks.OrderByDescending(stock => stock.LabelPowerW)] };
        var effort = new Effort(options.NodeBudget, cancellation);
        try
        {
            cancellation.ThrowIfCancellationRequested();
            return Catalog(problem, options, effort) is { } catalog
                ? Prove(problem, options, catalog, progress, effort)
                : Approach(problem, options, progress, effort);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            return new SearchOutcome([], Report(problem, "", (0, 0), 0, LargePile.PanelsAloneW(problem), effort), effort.Spent);
        }
    }

    /// <summary>Every string of a pile; null when there are too many to prove anything in reasonable time.</summary>
    internal static StringCatalog? Catalog(SearchProblem problem, SearchOptions options, Effort effort)
    {
        int[] counts = [.. problem.Stocks.Select(stock => stock.Count)];
        (double parts, bool packs) = Pile.Measure(counts);
        int mostParts = problem.Family == WiringFamily.Strings ? options.MostParts : Math.Min(options.MostParts, MostPartsInBlocks);
        if (!packs || parts > mostParts)
        {
            return null;
        }

        var catalog = new StringCatalog(problem, new Pile(counts), options.MostStrings, effort);
        return catalog.Complete && TableSize.Nodes(problem, catalog) <= options.MostTableNodes ? catalog : null;
    }

    private static SearchOutcome Prove(SearchProblem problem, SearchOptions options, StringCatalog catalog, IProgress<double>? progress, Effort effort)
    {
        // The counts hold the wiring that connects nothing, which is no answer to anybody.
        double considered = WiringCount.Family([.. problem.Stocks.Select(stock => stock.Count)], problem.Family, problem.Inputs.Length, effort) - 1;
        if (catalog.Rows.Count == 0)
        {
            return new SearchOutcome([], Report(problem, "", (considered, 0), 0, 0, effort), effort.Spent);
        }

        var proof = new Proof(problem, options, catalog, progress, effort);
        double feasible = proof.CountFeasible() - 1;
        (ImmutableArray<Candidate> ranked, double boundW) = proof.Run();
        double bestW = ranked.IsEmpty ? 0 : ranked[0].ObjectiveW;
        boundW = Math.Max(bestW, Math.Min(boundW, LargePile.PanelsAloneW(problem)));
        return new SearchOutcome(Ranking.Of(ranked, options), Report(problem, "", (considered, feasible), bestW, boundW, effort), effort.Spent);
    }

    /// <summary>The best found when nearly equal panels are taken for equal, with a bound on what could be.</summary>
    private static SearchOutcome Approach(SearchProblem problem, SearchOptions options, IProgress<double>? progress, Effort effort)
    {
        StringCatalog? Of(SearchProblem grouped) => Catalog(grouped, options, effort);
        List<ImmutableArray<SearchStock>> groups = LargePile.Groups(
            problem.Stocks,
            groups => Of(problem with { Stocks = [.. groups.Select(LargePile.Worst)] }) is not null && Of(LargePile.Ideal(problem, groups)) is not null);
        SearchProblem rough = problem with
        {
            Stocks = [.. groups.Select(LargePile.Worst)],
            Accept = problem.Accept is { } accept ? wirings => accept(LargePile.Placed(groups, wirings)) : null,
        };
        SearchProblem ideal = LargePile.Ideal(problem, groups);
        if (Of(rough) is not { } catalog || Of(ideal) is not { } idealCatalog)
        {
            throw new ArgumentException("A pile of one kind has too many panels or strings to search.", nameof(problem));
        }

        SearchOutcome found = Prove(rough, options, catalog, progress, effort.Share(ShareOfRough));
        var exact = new ExactWorth(problem);
        var alike = new AlikeInputs(problem);
        List<Candidate> filled =
        [
            .. found.Best.Select(candidate => LargePile.Fill(problem, groups, candidate, exact, effort))
                .Where(candidate => problem.Accept?.Invoke(candidate.Wirings) ?? true),
        ];
        double boundW = LargePile.PanelsAloneW(problem);
        try
        {
            PileRounds.Better(problem, filled, part => Round(part, options, effort));
            double bestSoFarW = filled.Select(candidate => candidate.ObjectiveW).DefaultIfEmpty(0).Max();
            boundW = Math.Min(boundW, idealCatalog.Rows.Count == 0 ? 0 : new Proof(ideal, options, idealCatalog, progress, effort).BoundW(bestSoFarW));
        }
        catch (OperationCanceledException)
        {
            // The best so far stands, against what the panels give alone.
        }

        ImmutableArray<Candidate> ranked = [.. filled.DistinctBy(candidate => alike.Key(candidate.Wirings)).OrderByDescending(candidate => candidate.ObjectiveW)];
        double bestW = ranked.IsEmpty ? 0 : ranked[0].ObjectiveW;
        return new SearchOutcome(
            Ranking.Of(ranked, options),
            Report(rough, ", nearly equal panels taken for equal", (found.Report.Considered, found.Report.Feasible), bestW, Math.Max(bestW, boundW), effort),
            effort.Spent);
    }

    /// <summary>The best of a small part of a pile.</summary>
    private static IEnumerable<Candidate> Round(SearchProblem part, SearchOptions options, Effort effort) =>
        Catalog(part, options, effort) is { Rows.Count: > 0 } catalog
            ? new Proof(part, options, catalog, progress: null, effort.Share(ShareOfRound)).Run().Ranked
            : [];

    private static SearchReport Report(SearchProblem problem, string remark, (double Considered, double Feasible) wirings, double bestW, double boundW, Effort effort)
    {
        double gap = boundW <= bestW * (1 + Shortlist.Resolution) ? 0 : bestW > 0 ? (boundW / bestW) - 1 : 1;
        return new SearchReport(
            (problem.Family == WiringFamily.Strings ? "strings" : "strings of panels and side-by-side blocks") + remark,
            Math.Max(wirings.Considered, wirings.Feasible),
            wirings.Feasible,
            boundW,
            gap * 100,
            gap == 0)
        {
            StoppedEarly = gap > 0 && effort.IsCalledOff,
        };
    }

    private static void Check(SearchProblem problem)
    {
        if (problem.Stocks.IsEmpty || problem.Inputs.IsEmpty || !(problem.Weights.Sum() > 0) || problem.Weights.Any(weight => weight < 0))
        {
            throw new ArgumentException("A search needs panels, inputs and moments that count.", nameof(problem));
        }

        if (problem.Stocks.Any(stock => stock.Count < 1 || stock.AtWork.Length != problem.Weights.Length))
        {
            throw new ArgumentException("Every stock has panels, and one state of work a moment.", nameof(problem));
        }
    }
}

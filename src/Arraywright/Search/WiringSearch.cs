using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>Finds the best wiring of a pile of panels on the inputs at hand and proves that there is none better.</summary>
public static class WiringSearch
{
    /// <summary>Runs the search.</summary>
    /// <param name="problem">Pile, inputs and moments.</param>
    /// <param name="options">How far to go.</param>
    /// <param name="progress">Told the share done, 0 to 1, now and then; may be null.</param>
    /// <param name="cancellation">Ends the search early, with the best so far and an honest gap.</param>
    public static SearchOutcome Run(SearchProblem problem, SearchOptions options, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        // The strongest panels are placed first: they decide most, so that the walk is cut off early.
        problem = problem with { Stocks = [.. problem.Stocks.OrderByDescending(stock => stock.LabelPowerW)] };
        var pile = new Pile([.. problem.Stocks.Select(stock => stock.Count)]);
        var catalog = new StringCatalog(problem, pile, int.MaxValue);
        if (catalog.Rows.Count == 0)
        {
            return NothingFits(problem);
        }

        var proof = new Proof(problem, options, catalog, progress, cancellation);
        (ImmutableArray<Candidate> ranked, double boundW) = proof.Run();
        double bestW = ranked.IsEmpty ? 0 : ranked[0].ObjectiveW;
        double gap = boundW <= bestW * (1 + Shortlist.Resolution) ? 0 : (boundW / bestW) - 1;
        var report = new SearchReport(
            Name(problem.Family),
            WiringCount.Family([.. problem.Stocks.Select(stock => stock.Count)], problem.Family, problem.Inputs.Length),
            proof.CountFeasible(),
            boundW,
            gap * 100,
            gap == 0);
        return new SearchOutcome(Ranking.Of(ranked, options), report, proof.Nodes);
    }

    /// <summary>Not even one panel alone keeps under the voltage of an input: proved without a search.</summary>
    private static SearchOutcome NothingFits(SearchProblem problem) => new(
        [],
        new SearchReport(Name(problem.Family), WiringCount.Family([.. problem.Stocks.Select(stock => stock.Count)], problem.Family, problem.Inputs.Length), 0, 0, 0, true),
        0);

    private static string Name(WiringFamily family) => family == WiringFamily.Strings ? "strings" : "strings of panels and side-by-side blocks";
}

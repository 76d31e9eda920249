using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>Every wiring of a small family, not only the best: for those who want to look at each.</summary>
internal static class WiringList
{
    /// <summary>Work of listing, in nodes: some tenths of a second.</summary>
    private const long NodeBudget = 1_000_000;

    /// <summary>No array gives as much, W.</summary>
    private const double OutOfReachW = 1e12;

    /// <summary>All wirings of a problem's family that break no limit and earn anything in any moment.</summary>
    /// <param name="problem">The problem. What its inputs take does not count here, only what may be connected to them.</param>
    /// <param name="most">As many as that at most.</param>
    /// <param name="matters">Whether wirings matter that take so many panels of each kind, in the order of the problem's stocks; the others are not listed.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <returns>Each once, inputs and units that are alike not told apart; null where there are more, or listing them takes too long.</returns>
    public static ImmutableArray<Candidate>? All(SearchProblem problem, int most, Func<int[], bool> matters, CancellationToken cancellation)
    {
        SearchProblem lit = AllLit(problem);
        int[] place = [.. problem.Stocks.Select(stock => lit.Stocks.ToList().FindIndex(other => other.Name == stock.Name))];
        SearchOptions options = SearchOptions.Default with { Show = most, NodeBudget = NodeBudget };
        var effort = new Effort(NodeBudget, cancellation);
        try
        {
            return WiringSearch.Catalog(lit, options, effort) is { Rows.Count: > 0 } catalog
                ? new Proof(lit, options, catalog, progress: null, effort, isForAll: true).All(taken => matters([.. place.Select(at => taken[at])]))
                : null;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    /// <summary>The same pile in one moment, every panel in the most light it ever has, on inputs that take anything: there no wiring earns nothing but one that never earns.</summary>
    /// <remarks>Inputs and units that differ stay different, by how far their limits are out of reach: else their wirings would count as one.</remarks>
    private static SearchProblem AllLit(SearchProblem problem)
    {
        SearchInput[] bare = [.. problem.Inputs.Select(input => input with { Name = "", Unit = -1 })];
        return problem with
        {
            Stocks = [.. problem.Stocks.OrderByDescending(stock => stock.LabelPowerW).Select(stock => stock with { AtWork = [stock.AtWork.MaxBy(LightA)!] })],
            Inputs = [.. problem.Inputs.Select((input, i) => input with { Window = InputWindow.Open with { MaxW = OutOfReachW + Array.IndexOf(bare, bare[i]) } })],
            UnitMaxW = [.. problem.UnitMaxW.Select(takesW => OutOfReachW + problem.UnitMaxW.IndexOf(takesW))],
            Weights = [1],
        };
    }

    private static double LightA(PanelAtWork panel) => panel.Groups.Max(group => group.LightCurrentA);
}

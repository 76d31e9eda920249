using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Limits;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The best wiring with one string of single panels on each input: it needs no fuse and no branch connector.</summary>
internal static class SingleStrings
{
    /// <summary>Enough for strings alone; what is found is shown beside the answer, not proved.</summary>
    private const long Nodes = 50_000;

    /// <summary>One entry an input, null for nothing; null where none may be connected without asking.</summary>
    public static ImmutableArray<Wiring?>? Best(Plan plan, CancellationToken cancellation)
    {
        Planner.Setting setting = new(plan, PlannerOptions.Default);
        SearchProblem within = new SearchSetup(setting.Physics, setting.Ranking, setting.Judge).Problem(Level.Go);
        SearchProblem alone = within with
        {
            Family = WiringFamily.Strings,
            Stocks = [.. within.Stocks.Select(stock => stock with { MaxBesideA = Math.Min(stock.MaxBesideA, 0) })],
        };
        SearchOutcome outcome = WiringSearch.Run(alone, SearchOptions.Default with { NodeBudget = Nodes }, progress: null, cancellation);
        return outcome.Best.IsEmpty ? null : outcome.Best[0].Wirings;
    }
}

using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>Betters a wiring of a pile too large to search at once: what it uses and some of what lies unused is a pile small enough, in turn until all has been tried.</summary>
internal static class PileRounds
{
    /// <summary>Different panels that are searched in a moment.</summary>
    private const int Panels = 12;

    /// <summary>Adds what is found on the way.</summary>
    /// <param name="problem">The whole pile.</param>
    /// <param name="found">Wirings known, the best of which is bettered; receives more.</param>
    /// <param name="search">Searches a part of the pile.</param>
    public static void Better(SearchProblem problem, List<Candidate> found, Func<SearchProblem, IEnumerable<Candidate>> search)
    {
        Candidate? best = found.MaxBy(candidate => candidate.ObjectiveW);
        var waiting = new Queue<string>(Unused(problem, best));
        while (waiting.Count > 0 && Used(best).Count() < Panels)
        {
            List<string> hand = [.. Used(best)];
            while (hand.Count < Panels && waiting.TryDequeue(out string? next))
            {
                hand.Add(next);
            }

            found.AddRange(search(problem with { Stocks = Part(problem.Stocks, hand) }));
            best = found.MaxBy(candidate => candidate.ObjectiveW);
        }
    }

    private static IEnumerable<string> Unused(SearchProblem problem, Candidate? best)
    {
        Dictionary<string, int> used = Used(best).CountBy(name => name).ToDictionary(StringComparer.Ordinal);
        return problem.Stocks.SelectMany(stock => Enumerable.Repeat(stock.Name, stock.Count - used.GetValueOrDefault(stock.Name)));
    }

    private static IEnumerable<string> Used(Candidate? candidate) =>
        candidate is null ? [] : candidate.Wirings.Where(wiring => wiring is not null).SelectMany(wiring => wiring!.Panels);

    private static ImmutableArray<SearchStock> Part(ImmutableArray<SearchStock> stocks, List<string> names) =>
    [
        .. stocks.Select(stock => stock with { Count = names.Count(name => name == stock.Name) }).Where(stock => stock.Count > 0),
    ];
}

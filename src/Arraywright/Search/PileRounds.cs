using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>Betters a wiring of a pile too large to search at once: what it uses and some of what lies unused is a pile small enough, in turn until all has been tried.</summary>
internal static class PileRounds
{
    /// <summary>Different panels that are searched in a moment.</summary>
    private const int Panels = 12;

    /// <summary>What is found on the way.</summary>
    /// <param name="problem">The whole pile.</param>
    /// <param name="start">The wiring to better; null for none.</param>
    /// <param name="search">Searches a part of the pile, best worth first.</param>
    public static List<Candidate> Better(SearchProblem problem, Candidate? start, Func<SearchProblem, IEnumerable<Candidate>> search)
    {
        var found = new List<Candidate>();
        Candidate? best = start;
        var waiting = new Queue<string>(problem.Stocks.SelectMany(stock => Enumerable.Repeat(stock.Name, stock.Count)));
        foreach (string name in Used(best))
        {
            waiting = new Queue<string>(Without(waiting, name));
        }

        while (waiting.Count > 0 && Used(best).Count() < Panels)
        {
            List<string> hand = [.. Used(best)];
            while (hand.Count < Panels && waiting.TryDequeue(out string? next))
            {
                hand.Add(next);
            }

            Candidate[] round = [.. search(problem with { Stocks = Part(problem.Stocks, hand) })];
            found.AddRange(round);
            best = round.Length > 0 && round[0].ObjectiveW > (best?.ObjectiveW ?? 0) ? round[0] : best;
        }

        return found;
    }

    private static IEnumerable<string> Used(Candidate? candidate) =>
        candidate is null ? [] : candidate.Wirings.Where(wiring => wiring is not null).SelectMany(wiring => wiring!.Panels);

    private static IEnumerable<string> Without(IEnumerable<string> names, string one)
    {
        bool taken = false;
        foreach (string name in names)
        {
            if (!taken && name == one)
            {
                taken = true;
            }
            else
            {
                yield return name;
            }
        }
    }

    private static ImmutableArray<SearchStock> Part(ImmutableArray<SearchStock> stocks, List<string> names) =>
    [
        .. stocks.Select(stock => stock with { Count = names.Count(name => name == stock.Name) }).Where(stock => stock.Count > 0),
    ];
}

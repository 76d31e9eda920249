using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>Orders what was found for a person, and says why one would choose each.</summary>
internal static class Ranking
{
    private const double Nearly = 0.98;

    /// <summary>The list to show: the simplest of those that tie with the best, then by worth; labelled.</summary>
    /// <param name="byWorth">Highest worth first.</param>
    /// <param name="options">How many, and what ties.</param>
    public static ImmutableArray<Candidate> Of(ImmutableArray<Candidate> byWorth, SearchOptions options)
    {
        if (byWorth.IsEmpty)
        {
            return byWorth;
        }

        double bestW = byWorth[0].ObjectiveW;
        Candidate[] nearly = [.. byWorth.Where(candidate => candidate.ObjectiveW >= bestW * Nearly)];
        Candidate first = byWorth.Where(candidate => candidate.ObjectiveW >= bestW * (1 - options.NearTieFraction)).MinBy(candidate => candidate.Complexity)!;
        Candidate simplest = nearly.MinBy(candidate => candidate.Complexity)!;
        Candidate fewest = nearly.MinBy(candidate => candidate.Panels)!;
        Candidate safest = nearly.MinBy(candidate => candidate.HighestColdV)!;
        ImmutableArray<Candidate> shown = [.. new[] { first, simplest, fewest, safest }.Concat(byWorth).Distinct().Take(options.Show)];
        return
        [
            .. shown.Take(1).Concat(shown.Skip(1).OrderByDescending(candidate => candidate.ObjectiveW)).Select(candidate => candidate with
            {
                ChosenFor =
                [
                    .. Reason(candidate == first, "earns most"),
                    .. Reason(candidate == simplest, "simplest"),
                    .. Reason(candidate == fewest && fewest.Panels < first.Panels, "fewest panels"),
                    .. Reason(candidate == safest && safest.HighestColdV < first.HighestColdV, "most voltage margin"),
                ],
            }),
        ];
    }

    private static IEnumerable<string> Reason(bool holds, string text) => holds ? [text] : [];
}

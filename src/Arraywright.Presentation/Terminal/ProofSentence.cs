using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>What the search looked at and what it may claim.</summary>
public static class ProofSentence
{
    /// <summary>A difference under this is not told, %.</summary>
    private const double LeastTold = 0.05;

    /// <summary>One or two sentences, claiming no more than was proved.</summary>
    /// <param name="search">What the search did.</param>
    /// <param name="designs">The designs shown, best first.</param>
    public static string Of(SearchReport search, IReadOnlyList<Design> designs)
    {
        string family = $"the family \"{search.Family}\"";
        if (search.Feasible == 0)
        {
            return $"None of the {Figures.Count(search.Considered)} wirings of {family} keeps under the voltage limit: none of them may be connected.";
        }

        string best = designs.Count > 1 ? "number 1" : "this one";
        // A design that waits for an answer may earn more than the best of those that do not.
        string them = designs[0].Verdict == Level.Go && designs.Any(design => design.Verdict == Level.Ask) ? "those that need no answer" : "them";
        if (search.StoppedEarly)
        {
            return $"Stopped early: of {Figures.Count(search.Considered)} wirings of {family}, the best so far is shown. One of {them} might do better, but by no more than {Figures.Percent(search.GapPercent)}.";
        }

        string looked = $"There are {Figures.Count(search.Considered)} wirings of {family}, of which {Figures.Count(search.Feasible)} break no hard limit.";
        if (search.Exact is { } exact)
        {
            return $"{looked} {Exactly(search, exact, them, best)}";
        }

        return search.Proved
            ? $"{looked} Proved: none of {them} does better than {best}."
            : $"{looked} Not proved to the end: one of {them} might do better than {best}, but by no more than {Figures.Percent(search.GapPercent)}.";
    }

    /// <summary>What is proved over every hour, and what on the moments alone.</summary>
    private static string Exactly(SearchReport search, ExactComparison exact, string them, string best)
    {
        string resolved = exact.Resolved == 1 ? "It was solved again over every hour" : $"The best {exact.Resolved} were solved again over every hour, and are ranked by that";
        if (search.Proved)
        {
            string others = exact.LookedAt == 0 ? "" : exact.LookedAt == 1 ? "; so was the other one" : "; each of the others too, or until it could no longer catch up";
            return $"{resolved}{others}. Proved over every hour: none of {them} does better than {best}.";
        }

        string searched = exact.MomentsProved
            ? $"Proved on {exact.Moments} weighted moments of the weather: none of {them} does better than {best}."
            : $"On {exact.Moments} weighted moments of the weather not proved to the end: one of {them} might do better than {best} by up to {Figures.Percent(exact.MomentsGapPercent)}.";
        string likely = exact.LikelyGapPercent < LeastTold
            ? "None is likely to, going by those solved."
            : $"Going by those solved, {Figures.Percent(exact.LikelyGapPercent)} is likely the most.";
        return $"{searched} {resolved}. Over every hour it is proved that none of {them} does better than {best} by more than {Figures.Percent(search.GapPercent)}. {likely}";
    }
}

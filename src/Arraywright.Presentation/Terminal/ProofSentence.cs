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
        string ways = search.Considered == 1 ? $"There is one way to wire these panels in {search.Family}" : $"There are {Figures.Count(search.Considered)} ways to wire all or some of these panels in {search.Family}";
        if (search.Feasible == 0)
        {
            return $"{ways}; none keeps under the voltage limit, so none may be connected.";
        }

        if (designs[0].Verdict == Level.Stop)
        {
            return $"{ways}; none was found that passes every rule and brings power.";
        }

        string best = designs.Count > 1 ? "the first one listed" : "the one shown";

        // A design that waits for an answer may earn more than the best of those that do not.
        string them = designs[0].Verdict == Level.Go && designs.Any(design => design.Verdict == Level.Ask) ? "the wirings that may be connected without asking anybody" : "them";
        if (search.StoppedEarly)
        {
            return $"Stopped early. {ways}; the best so far is shown. One of {them} might do better, but by no more than {Figures.Percent(search.GapPercent)}.";
        }

        if (search.Feasible == 1)
        {
            return $"{ways}; {(search.Considered == 1 ? "it" : "only one of them")} keeps within the limits, and is shown.";
        }

        string looked = search.Feasible == search.Considered ? $"{ways}; all keep within the limits." : $"{ways}; {Figures.Count(search.Feasible)} of them keep within the limits.";
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
        string resolved = exact.Resolved == 1 ? "The best was worked out again hour by hour" : $"The best {exact.Resolved} were worked out again hour by hour, and are listed by that";
        if (search.Proved)
        {
            string others = exact.LookedAt == 0 ? "" : exact.LookedAt == 1 ? ", and so was the only other one that could have matched it" : ", and so was every other wiring until it could no longer catch up";
            return $"{resolved}{others}. Proved over every hour: none of {them} does better than {best}.";
        }

        string searched = exact.MomentsProved
            ? $"Proved on {exact.Moments} weighted moments of the weather: none of {them} does better than {best}."
            : $"On {exact.Moments} weighted moments of the weather not proved to the end: one of {them} might do better than {best} by up to {Figures.Percent(exact.MomentsGapPercent)}.";
        string likely = exact.LikelyGapPercent < LeastTold
            ? "Going by those worked out, none is likely to."
            : $"Going by those worked out, {Figures.Percent(exact.LikelyGapPercent)} is likely the most.";
        return $"{searched} {resolved}. Over every hour it is proved that none of {them} does better than {best} by more than {Figures.Percent(search.GapPercent)}. {likely}";
    }
}

namespace Arraywright.Presentation.Terminal;

/// <summary>What the search looked at and what it may claim.</summary>
public static class ProofSentence
{
    /// <summary>One or two sentences, claiming no more than was proved.</summary>
    public static string Of(SearchReport search)
    {
        string looked = $"There are {Figures.Count(search.Considered)} wirings of the family \"{search.Family}\", of which {Figures.Count(search.Feasible)} break no hard limit.";
        return search.Proved
            ? $"{looked} Proved: none of them does better than number 1."
            : $"{looked} Not proved to the end: one of them might do better than number 1, but by no more than {Figures.Percent(search.GapPercent)}.";
    }
}

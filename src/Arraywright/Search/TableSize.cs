namespace Arraywright.Search;

/// <summary>What the tables over a pile take to fill, ahead of filling them.</summary>
internal static class TableSize
{
    /// <summary>Nodes that one filling takes at most, and sharing the pile out among the inputs.</summary>
    /// <param name="problem">Inputs and moments.</param>
    /// <param name="catalog">The strings.</param>
    public static double Nodes(SearchProblem problem, StringCatalog catalog)
    {
        Pile pile = catalog.Pile;
        int tables = problem.Inputs.Select(input => input with { Name = "", Unit = -1 }).Distinct().Count();
        double pairs = catalog.Rows.Sum(row => row.IsString ? PartsAround(pile, row.Part) : 0);
        double looks = Looks(pile, catalog);
        double lines = (double)catalog.Rows.Count * problem.Weights.Length * StringTables.NodesPerLine;
        double sharings = (problem.Inputs.Length - 1) * WiringCount.Sharings(pile.Counts);
        return (tables * ((pairs / CoverTable.RaisesPerNode) + (looks / CoverTable.LooksPerNode) + lines)) + (sharings / WiringCount.StepsPerNode);
    }

    /// <summary>Parts that a string is tried as the first string of.</summary>
    private static double PartsAround(Pile pile, int part)
    {
        double parts = 1;
        for (int kind = pile.Lowest[part]; kind < pile.Counts.Length; kind++)
        {
            parts *= pile.Counts[kind] - pile.CountOf(part, kind) + 1;
        }

        return parts;
    }

    /// <summary>Strings looked at for every part: all that hold its first kind.</summary>
    private static double Looks(Pile pile, StringCatalog catalog)
    {
        double[] strings = new double[pile.Counts.Length];
        foreach (Row row in catalog.Rows)
        {
            strings[pile.Lowest[row.Part]]++;
        }

        double looks = 0;
        double above = 1;
        for (int kind = strings.Length - 1; kind >= 0; kind--)
        {
            looks += strings[kind] * above * pile.Counts[kind];
            above *= pile.Counts[kind] + 1;
        }

        return looks;
    }
}

namespace Arraywright.Search;

/// <summary>The strings one input allows, numbered for its tables, in buckets by the first kind they hold.</summary>
/// <remarks>Inputs that are alike share one instance.</remarks>
internal sealed class InputStrings
{
    /// <summary>Lists the strings of an input.</summary>
    public InputStrings(SearchInput input, StringCatalog catalog)
    {
        Input = input;
        Pile pile = catalog.Pile;
        Place = new int[catalog.Rows.Count];
        var rows = new List<int>();
        var buckets = Enumerable.Range(0, pile.Counts.Length).Select(_ => new List<int>()).ToArray();
        for (int i = 0; i < Place.Length; i++)
        {
            Row row = catalog.Rows[i];
            Place[i] = -1;

            // What may stand beside a string is asked last: only of those that the input's own limits let pass.
            if (Allows(input, row) && row.IscA <= Rounded.Most(input.MaxIscSumA) && row.IscA <= MostA(input, catalog, i))
            {
                Place[i] = rows.Count;
                buckets[pile.Lowest[row.Part]].Add(rows.Count);
                rows.Add(i);
            }
        }

        Rows = [.. rows];
        Parts = [.. rows.Select(row => catalog.Rows[row].Part)];
        IscA = [.. rows.Select(row => catalog.Rows[row].IscA)];
        ImpA = [.. rows.Select(row => catalog.Rows[row].ImpA)];
        MostIscA = [.. rows.Select(row => MostA(input, catalog, row))];
        MostImpA = Rounded.Most(input.MaxImpSumA);
        Buckets = [.. buckets.Select(bucket => bucket.ToArray())];
    }

    /// <summary>The input.</summary>
    public SearchInput Input { get; }

    /// <summary>Row of the catalog of each string.</summary>
    public int[] Rows { get; }

    /// <summary>Place of each row of the catalog among the strings; −1 for none.</summary>
    public int[] Place { get; }

    /// <summary>Part of the pile each string takes.</summary>
    public int[] Parts { get; }

    /// <summary>Label short-circuit current of each string, A.</summary>
    public double[] IscA { get; }

    /// <summary>Label current at maximum power of each string, A.</summary>
    public double[] ImpA { get; }

    /// <summary>Most label short-circuit current of all strings together where each stands among them, A.</summary>
    public double[] MostIscA { get; }

    /// <summary>Most label current at maximum power of all strings together, A.</summary>
    public double MostImpA { get; }

    /// <summary>Strings by the first kind they hold, ascending.</summary>
    public int[][] Buckets { get; }

    /// <summary>Whether a row may hang on an input by itself.</summary>
    public static bool Allows(SearchInput input, Row row) =>
        row.IsString && Rounded.Within(row.ColdV, input.MaxVoltageV) && Rounded.Within(row.ImpA, input.MaxImpSumA);

    private static double MostA(SearchInput input, StringCatalog catalog, int row) =>
        Rounded.Most(Math.Min(input.MaxIscSumA, catalog.Rows[row].IscA + catalog.BesideA(row)));
}

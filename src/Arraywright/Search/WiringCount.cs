namespace Arraywright.Search;

/// <summary>How many wirings there are: of the whole family, and of those that break no limit. Connecting nothing counts as one.</summary>
internal static class WiringCount
{
    /// <summary>Wirings of the family on so many inputs, no limit applied; equal panels are not told apart. A double: it may pass 2^63, and is exact below 2^53.</summary>
    /// <remarks>
    /// A wiring is a multiset of strings, each with an input. Kinds with one panel are counted by the string of the first of them (the
    /// recurrence of the Bell numbers); kinds with several by the logarithmic derivative of the product over strings of 1/(1 − x^s)
    /// (Euler's recurrence for partitions, for vectors of counts).
    /// </remarks>
    public static double Family(ReadOnlySpan<int> counts, WiringFamily family, int inputs)
    {
        var multiples = new List<int>();
        int singles = 0;
        foreach (int count in counts)
        {
            if (count == 1)
            {
                singles++;
            }
            else
            {
                multiples.Add(count);
            }
        }

        var pile = new Pile([.. multiples]);
        double[][] strings = Strings(pile, singles, family);
        foreach (double[] row in strings)
        {
            for (int part = 0; part < row.Length; part++)
            {
                row[part] *= inputs;
            }
        }

        double[][] wirings = Multisets(pile, singles, strings);
        double sum = 0;
        for (int held = 0; held <= singles; held++)
        {
            sum += Choose(singles, held) * wirings[held].Sum();
        }

        return sum;
    }

    /// <summary>Wirings whose strings each input's voltage allows, and whose label power it allows. Sums of short-circuit current are not looked at: where they are limited, this is an upper bound.</summary>
    public static double Allowed(Pile pile, InputStrings[] inputs, Func<int, double> labelPowerW)
    {
        double[] ways = new double[pile.States];
        ways[0] = 1;
        foreach (InputStrings strings in inputs)
        {
            if (double.IsFinite(strings.Input.MaxLabelPowerW))
            {
                double[] own = new double[pile.States];
                own[0] = 1;
                Hang(pile, strings, own);
                for (int part = 0; part < own.Length; part++)
                {
                    own[part] = labelPowerW(part) <= strings.Input.MaxLabelPowerW ? own[part] : 0;
                }

                ways = Together(pile, ways, own);
            }
            else
            {
                Hang(pile, strings, ways);
            }
        }

        return ways.Sum();
    }

    /// <summary>Ways to make one string of each content: first index panels of single kinds, second part of the rest.</summary>
    private static double[][] Strings(Pile pile, int singles, WiringFamily family)
    {
        double[][] one = [.. Enumerable.Range(0, singles + 1).Select(_ => Enumerable.Repeat(1.0, pile.States).ToArray())];
        one[0][0] = 0;
        if (family == WiringFamily.Strings)
        {
            return one;
        }

        // A string of blocks is a way to cut its content into blocks, but not the one way that leaves a lone block of several panels.
        double[][] cuts = Multisets(pile, singles, one);
        for (int held = 0; held <= singles; held++)
        {
            for (int part = 0; part < pile.States; part++)
            {
                cuts[held][part] -= held + pile.Panels[part] == 1 ? 0 : 1;
            }
        }

        return cuts;
    }

    /// <summary>Ways to cut each content into things, of which there are so many kinds of each content.</summary>
    private static double[][] Multisets(Pile pile, int singles, double[][] things)
    {
        double[][] ways = [.. Enumerable.Range(0, singles + 1).Select(_ => new double[pile.States])];
        Span<int> scratch = new int[2 * pile.Counts.Length];
        ways[0][0] = 1;
        for (int part = 1; part < pile.States; part++)
        {
            int kind = pile.Lowest[part];
            double sum = 0;
            var taken = new PartsWithin(pile, part, scratch);
            while (taken.Next())
            {
                sum += Repeats(pile, taken.Current, kind, things[0]) * ways[0][part - taken.Current];
            }

            ways[0][part] = Math.Round(sum / pile.CountOf(part, kind));
        }

        for (int held = 1; held <= singles; held++)
        {
            for (int part = 0; part < pile.States; part++)
            {
                ways[held][part] = WithFirstSingle(pile, held, part, things, ways);
            }
        }

        return ways;
    }

    private static double WithFirstSingle(Pile pile, int held, int part, double[][] things, double[][] ways)
    {
        double sum = 0;
        for (int more = 0; more < held; more++)
        {
            double inner = 0;
            var taken = new PartsWithin(pile, part, new int[2 * pile.Counts.Length]);
            do
            {
                inner += things[more + 1][taken.Current] * ways[held - 1 - more][part - taken.Current];
            }
            while (taken.Next());
            sum += Choose(held - 1, more) * inner;
        }

        return sum;
    }

    /// <summary>Sum over q that divide a content of the number of things of content/q, times the panels of a kind in one of them.</summary>
    private static double Repeats(Pile pile, int part, int kind, double[] things)
    {
        double sum = 0;
        for (int q = 1; q <= pile.Panels[part]; q++)
        {
            bool divides = true;
            for (int k = 0; k < pile.Counts.Length && divides; k++)
            {
                divides = pile.CountOf(part, k) % q == 0;
            }

            // Part numbers are linear in the counts, so the content divided by q is the number divided by q.
            sum += divides ? things[part / q] * (pile.CountOf(part, kind) / q) : 0;
        }

        return sum;
    }

    /// <summary>Adds an input's strings, any number of each, to the ways to use each part.</summary>
    private static void Hang(Pile pile, InputStrings strings, double[] ways)
    {
        Span<int> scratch = new int[2 * pile.Counts.Length];
        foreach (int s in strings.Parts)
        {
            var beside = new PartsWithin(pile, pile.Whole - s, scratch);
            do
            {
                ways[s + beside.Current] += ways[beside.Current];
            }
            while (beside.Next());
        }
    }

    private static double[] Together(Pile pile, double[] a, double[] b)
    {
        double[] both = new double[pile.States];
        Span<int> scratch = new int[2 * pile.Counts.Length];
        for (int part = 0; part < both.Length; part++)
        {
            var taken = new PartsWithin(pile, part, scratch);
            do
            {
                both[part] += a[part - taken.Current] * b[taken.Current];
            }
            while (taken.Next());
        }

        return both;
    }

    private static double Choose(int n, int k)
    {
        double ways = 1;
        for (int i = 1; i <= k; i++)
        {
            ways = ways * (n - k + i) / i;
        }

        return Math.Round(ways);
    }
}

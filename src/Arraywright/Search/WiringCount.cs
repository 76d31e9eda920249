namespace Arraywright.Search;

/// <summary>How many wirings there are: of the whole family, and of those that break no limit. Connecting nothing counts as one.</summary>
internal static class WiringCount
{
    /// <summary>Steps of counting in the time of a node: measured.</summary>
    public const int StepsPerNode = 50;

    /// <summary>Sums of amps noted in the time of a node: measured.</summary>
    private const int SumsPerNode = 5;

    private const long MostSteps = 1_000_000;

    private const double MostSharings = 3e7;

    /// <summary>Wirings of the family on so many inputs, no limit applied; equal panels are not told apart. A double: it may pass 2^63, and is exact below 2^53.</summary>
    /// <returns>The number; where that takes too long, the wirings with every panel told apart over the ways to exchange equal ones, which is no more.</returns>
    /// <param name="counts">How many of each kind.</param>
    /// <param name="family">Which wirings.</param>
    /// <param name="inputs">Number of inputs.</param>
    /// <param name="effort">Counts the work.</param>
    /// <remarks>
    /// A wiring is a multiset of strings, each with an input. Kinds with one panel are counted by the string of the first of them (the
    /// recurrence of the Bell numbers); kinds with several by the logarithmic derivative of the product over strings of 1/(1 − x^s)
    /// (Euler's recurrence for partitions, for vectors of counts).
    /// </remarks>
    public static double Family(ReadOnlySpan<int> counts, WiringFamily family, int inputs, Effort effort)
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

        if (Sharings(multiples) > MostSharings)
        {
            double apart = Family([.. Enumerable.Repeat(1, singles + multiples.Sum())], family, inputs, effort);
            double alike = multiples.Aggregate(1.0, (ways, count) => ways * Enumerable.Range(1, count).Aggregate(1.0, (product, k) => product * k));
            return double.IsFinite(apart / alike) ? Math.Ceiling(apart / alike) : double.MaxValue;
        }

        var pile = new Pile([.. multiples]);
        double[][] strings = Strings(pile, singles, family, effort);
        foreach (double[] row in strings)
        {
            for (int part = 0; part < row.Length; part++)
            {
                row[part] *= inputs;
            }
        }

        double[][] wirings = Multisets(pile, singles, strings, effort);
        double sum = 0;
        for (int held = 0; held <= singles; held++)
        {
            sum += Choose(singles, held) * wirings[held].Sum();
        }

        return sum;
    }

    /// <summary>Wirings that break no limit of any input: cold volts, label watts, label amps.</summary>
    /// <param name="pile">The pile.</param>
    /// <param name="inputs">Strings of each input.</param>
    /// <param name="labelPowerW">Label power of a part, W.</param>
    /// <param name="effort">Counts the work.</param>
    /// <returns>The number; where sums of amps are limited and too many to follow, an upper bound that does not look at them.</returns>
    public static double Allowed(Pile pile, InputStrings[] inputs, Func<int, double> labelPowerW, Effort effort)
    {
        double[]? ways = null;
        foreach (InputStrings strings in inputs)
        {
            SearchInput input = strings.Input;
            double[] own = HangWithinAmps(pile, strings, effort) ?? HangAlone(pile, strings, effort);
            for (int part = 0; part < own.Length; part++)
            {
                own[part] = Rounded.Within(labelPowerW(part), input.MaxLabelPowerW) ? own[part] : 0;
            }

            ways = ways is null ? own : Together(pile, ways, own, effort);
        }

        return ways!.Sum();
    }

    /// <summary>Ways to share panels out in two parts.</summary>
    public static double Sharings(IEnumerable<int> counts)
    {
        double ways = 1;
        foreach (int count in counts)
        {
            ways *= (count + 1.0) * (count + 2) / 2;
        }

        return ways;
    }

    /// <summary>Ways to make one string of each content: first index panels of single kinds, second part of the rest.</summary>
    private static double[][] Strings(Pile pile, int singles, WiringFamily family, Effort effort)
    {
        double[][] one = [.. Enumerable.Range(0, singles + 1).Select(_ => Enumerable.Repeat(1.0, pile.States).ToArray())];
        one[0][0] = 0;
        if (family == WiringFamily.Strings)
        {
            return one;
        }

        // A string of blocks is a way to cut its content into blocks, but not the one way that leaves a lone block of several panels.
        double[][] cuts = Multisets(pile, singles, one, effort);
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
    private static double[][] Multisets(Pile pile, int singles, double[][] things, Effort effort)
    {
        double[][] ways = [.. Enumerable.Range(0, singles + 1).Select(_ => new double[pile.States])];
        Span<int> scratch = new int[2 * pile.Counts.Length];
        ways[0][0] = 1;
        double[][] repeats = [.. Enumerable.Range(0, pile.Counts.Length).Select(kind => Enumerable.Range(0, pile.States).Select(part => Repeats(pile, part, kind, things[0])).ToArray())];
        for (int part = 1; part < pile.States; part++)
        {
            int kind = pile.Lowest[part];
            double sum = 0;
            effort.SpendOrGiveUp(pile.PartsIn(part) / StepsPerNode);
            var taken = new PartsWithin(pile, part, scratch);
            while (taken.Next())
            {
                sum += repeats[kind][taken.Current] * ways[0][part - taken.Current];
            }

            ways[0][part] = Math.Round(sum / pile.CountOf(part, kind));
        }

        for (int held = 1; held <= singles; held++)
        {
            for (int part = 0; part < pile.States; part++)
            {
                effort.SpendOrGiveUp(held * pile.PartsIn(part) / StepsPerNode);
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

    /// <summary>Ways to hang each part on an input: its strings, any number of each.</summary>
    private static double[] HangAlone(Pile pile, InputStrings strings, Effort effort)
    {
        double[] ways = new double[pile.States];
        ways[0] = 1;
        Span<int> scratch = new int[2 * pile.Counts.Length];
        foreach (int s in strings.Parts)
        {
            effort.SpendOrGiveUp(pile.PartsIn(pile.Whole - s) / StepsPerNode);
            var beside = new PartsWithin(pile, pile.Whole - s, scratch);
            do
            {
                ways[s + beside.Current] += ways[beside.Current];
            }
            while (beside.Next());
        }

        return ways;
    }

    /// <summary>Ways to hang each part on an input within its sum of amps, telling sums apart by the microampere; null when it does not limit or takes too long.</summary>
    private static double[]? HangWithinAmps(Pile pile, InputStrings strings, Effort effort)
    {
        if (double.IsInfinity(strings.Input.MaxIscSumA))
        {
            return null;
        }

        long most = (long)Math.Round(strings.Input.MaxIscSumA * 1e6);
        var ways = new Dictionary<long, double>?[pile.States];
        ways[0] = new Dictionary<long, double> { [0] = 1 };
        long steps = 0;
        long told = 0;
        Span<int> scratch = new int[2 * pile.Counts.Length];
        for (int s = 0; s < strings.Parts.Length; s++)
        {
            long amps = (long)Math.Round(strings.IscA[s] * 1e6);
            effort.SpendOrGiveUp((pile.PartsIn(pile.Whole - strings.Parts[s]) / StepsPerNode) + ((steps - told) / SumsPerNode));
            told = steps;
            var beside = new PartsWithin(pile, pile.Whole - strings.Parts[s], scratch);
            do
            {
                foreach ((long sum, double count) in ways[beside.Current] ?? [])
                {
                    if (++steps > MostSteps)
                    {
                        return null;
                    }

                    if (sum + amps <= most)
                    {
                        Dictionary<long, double> longer = ways[strings.Parts[s] + beside.Current] ??= [];
                        longer[sum + amps] = longer.GetValueOrDefault(sum + amps) + count;
                    }
                }
            }
            while (beside.Next());
        }

        return [.. ways.Select(sums => sums?.Values.Sum() ?? 0)];
    }

    /// <summary>Ways to hang each part on either of two.</summary>
    private static double[] Together(Pile pile, double[] a, double[] b, Effort effort)
    {
        double[] both = new double[pile.States];
        Span<int> scratch = new int[2 * pile.Counts.Length];
        for (int part = 0; part < both.Length; part++)
        {
            if (b[part] == 0)
            {
                continue;
            }

            effort.SpendOrGiveUp(pile.PartsIn(pile.Whole - part) / StepsPerNode);
            var beside = new PartsWithin(pile, pile.Whole - part, scratch);
            do
            {
                both[part + beside.Current] += b[part] * a[beside.Current];
            }
            while (beside.Next());
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

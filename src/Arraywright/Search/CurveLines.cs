namespace Arraywright.Search;

/// <summary>For every block and moment, a line above its curve with corners at currents shared within the moment.</summary>
internal sealed class CurveLines
{
    /// <summary>Ratio of neighbouring currents where the panels work: chords then lie within about 1e-5 of the power.</summary>
    private const double Ratio = 1.008;
    private const int LowCurrents = 8;

    /// <summary>One line, in nodes: measured.</summary>
    private const int NodesPerLine = 60;
    private static readonly double[] FeedBack = [-1, -0.5, -0.25, -0.12, -0.06, -0.03, -0.015, -0.007, -0.003];

    private readonly double[][][] _linesV;

    /// <summary>Computes the lines.</summary>
    public CurveLines(SearchProblem problem, StringCatalog catalog, Effort effort)
    {
        int moments = problem.Weights.Length;
        CurrentsA = new double[moments][];
        _linesV = new double[moments][][];
        BaseV = new double[moments][];
        double span = CurrentSpan(problem, catalog, out double[] topsA);
        for (int moment = 0; moment < moments; moment++)
        {
            CurrentsA[moment] = Currents(topsA[moment], span);
            _linesV[moment] = Lines(problem, catalog, moment, CurrentsA[moment], effort);

            // One contact a branch of a parallel: a lone string has none, so it is charged only where current runs backwards, which a lone string's never does.
            BaseV[moment] = [.. CurrentsA[moment].Select(amps => -amps * (problem.StringOhm + (amps < 0 ? problem.ContactOhm : 0)))];
        }
    }

    /// <summary>Shared currents of each moment, ascending, A.</summary>
    public double[][] CurrentsA { get; }

    /// <summary>What a string's own run takes off at each shared current, V.</summary>
    public double[][] BaseV { get; }

    /// <summary>Corners of a block's line, V, falling.</summary>
    public ReadOnlySpan<double> Of(int block, int moment) => _linesV[moment][block];

    /// <summary>Largest current worth telling apart over the smallest, all moments; and the top current of each.</summary>
    private static double CurrentSpan(SearchProblem problem, StringCatalog catalog, out double[] topsA)
    {
        int widest = catalog.Blocks.Max(block => block.Kinds.Length);
        topsA = new double[problem.Weights.Length];
        double span = 2;
        for (int moment = 0; moment < topsA.Length; moment++)
        {
            double[] lightA = [.. problem.Stocks.SelectMany(stock => Enumerable.Repeat(MostLightA(stock, moment), stock.Count)).OrderDescending()];
            topsA[moment] = Math.Max(1e-6, lightA.Take(widest).Sum() * 1.001);
            span = Math.Max(span, topsA[moment] / Math.Max(lightA[^1] * 0.6, topsA[moment] / 60));
        }

        return span;
    }

    /// <summary>The most current a panel of a stock can drive at 0 V, A.</summary>
    public static double MostLightA(SearchStock stock, int moment) =>
        stock.Covered.Max(panel => panel.AtWork[moment].Groups.Max(group => group.LightCurrentA));

    /// <summary>The shared currents of a moment, ascending, A: finely spaced from the top down over the span, coarse below and where current runs backwards.</summary>
    internal static double[] Currents(double topA, double span)
    {
        int fine = 1;
        for (double reach = Ratio; reach < span; reach *= Ratio)
        {
            fine++;
        }

        var currents = new double[FeedBack.Length + LowCurrents + fine];
        int at = currents.Length;
        double current = topA;
        for (int i = 0; i < fine; i++, current /= Ratio)
        {
            currents[--at] = current;
        }

        for (int i = LowCurrents - 1; i >= 0; i--)
        {
            currents[--at] = current * i / LowCurrents;
        }

        for (int i = 0; i < FeedBack.Length; i++)
        {
            currents[i] = FeedBack[i] * topA;
        }

        return currents;
    }

    /// <summary>The line above every panel of a stock.</summary>
    private static void Cover(SearchStock stock, int moment, double[] currentsA, double contactOhm, double[] lineV)
    {
        Array.Fill(lineV, double.NegativeInfinity);
        double[] oneV = new double[lineV.Length];
        foreach (SearchStock panel in stock.Covered)
        {
            PanelPolyline.Above(panel.AtWork[moment], currentsA, contactOhm, oneV);
            for (int k = 0; k < lineV.Length; k++)
            {
                lineV[k] = Math.Max(lineV[k], oneV[k]);
            }
        }
    }

    private static double[][] Lines(SearchProblem problem, StringCatalog catalog, int moment, double[] currentsA, Effort effort)
    {
        double[][] panels = [.. problem.Stocks.Select(_ => new double[currentsA.Length])];
        double[][] branches = [.. problem.Stocks.Select(_ => new double[currentsA.Length])];
        for (int kind = 0; kind < panels.Length; kind++)
        {
            effort.SpendOrGiveUp(NodesPerLine);
            Cover(problem.Stocks[kind], moment, currentsA, problem.ContactOhm, panels[kind]);
            for (int k = 0; k < currentsA.Length; k++)
            {
                branches[kind][k] = panels[kind][k] - (currentsA[k] * problem.ContactOhm);
            }
        }

        var byPart = new Dictionary<int, double[]>();
        double[] SideBySide(int[] kinds)
        {
            int last = kinds[^1];
            if (kinds.Length == 1)
            {
                return branches[last];
            }

            int part = kinds.Sum(kind => catalog.Pile.Strides[kind]);
            if (!byPart.TryGetValue(part, out double[]? line))
            {
                effort.SpendOrGiveUp(NodesPerLine);
                byPart[part] = line = new double[currentsA.Length];
                PanelPolyline.AboveParallel(SideBySide(kinds[..^1]), branches[last], currentsA, line);
            }

            return line;
        }

        return [.. catalog.Blocks.Select(block => block.Kinds.Length == 1 ? panels[block.Kinds[0]] : SideBySide(block.Kinds))];
    }
}

using System.Numerics;

namespace Arraywright.Search;

/// <summary>For every string and every voltage cell of an input, the most power the string can give there.</summary>
internal static class StringTables
{
    /// <summary>Covers the solver's tolerance and the rounding of sums of 32-bit numbers.</summary>
    private const double Slack = 3e-6;

    /// <summary>What the line of one string in one moment takes, in nodes: measured.</summary>
    public const int NodesPerLine = 4;

    /// <summary>Highest voltage of any string in each moment, V.</summary>
    public static double[] TopVoltages(StringCatalog catalog, CurveLines lines, Func<Row, bool> allowed)
    {
        double[] topV = new double[lines.CurrentsA.Length];
        for (int moment = 0; moment < topV.Length; moment++)
        {
            int open = Array.BinarySearch(lines.CurrentsA[moment], 0);
            double[] rowV = new double[catalog.Rows.Count];
            for (int i = 0; i < rowV.Length; i++)
            {
                Row row = catalog.Rows[i];
                rowV[i] = (row.Parent < 0 ? 0 : rowV[row.Parent]) + lines.Of(row.LastBlock, moment)[open];
                topV[moment] = allowed(row) ? Math.Max(topV[moment], rowV[i]) : topV[moment];
            }
        }

        return topV;
    }

    /// <summary>The tables of several inputs, filled in one pass over the strings.</summary>
    /// <param name="catalog">The strings.</param>
    /// <param name="lines">Their blocks' curves.</param>
    /// <param name="inputs">Cells of each input, and the place of each row in its table (−1: not one of its strings).</param>
    /// <param name="effort">Counts the work.</param>
    /// <returns>A table an input: one stretch of <see cref="VoltageCells.Columns"/> a string.</returns>
    public static float[][] Fill(StringCatalog catalog, CurveLines lines, IReadOnlyList<(VoltageCells Cells, int[] Place)> inputs, Effort effort)
    {
        float[][] tables = [.. inputs.Select(input => new float[(input.Place.Max() + 1) * input.Cells.Columns])];
        int deepest = catalog.Rows.Max(row => row.Blocks);
        for (int moment = 0; moment < lines.CurrentsA.Length; moment++)
        {
            double[] currentsA = lines.CurrentsA[moment];
            double[][] sums = [lines.BaseV[moment], .. Enumerable.Range(0, deepest).Select(_ => new double[currentsA.Length])];
            double[] topsW = new double[currentsA.Length - 1];
            for (int i = 0; i < catalog.Rows.Count; i++)
            {
                effort.SpendOrGiveUp(NodesPerLine);
                Row row = catalog.Rows[i];
                double[] sum = sums[row.Blocks];
                Add(sums[row.Blocks - 1], lines.Of(row.LastBlock, moment), sum);
                Tops(sum, currentsA, topsW);
                for (int input = 0; input < inputs.Count; input++)
                {
                    (VoltageCells cells, int[] place) = inputs[input];
                    if (place[i] >= 0)
                    {
                        MostInCells(sum, currentsA, topsW, cells.Of(moment), tables[input].AsSpan((place[i] * cells.Columns) + moment), cells.Lanes);
                    }
                }
            }
        }

        return tables;
    }

    private static void Add(ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> sum)
    {
        int k = 0;
        for (; k <= sum.Length - Vector<double>.Count; k += Vector<double>.Count)
        {
            (new Vector<double>(a[k..]) + new Vector<double>(b[k..])).CopyTo(sum[k..]);
        }

        for (; k < sum.Length; k++)
        {
            sum[k] = a[k] + b[k];
        }
    }

    /// <summary>The most of voltage times current on each straight piece of a line.</summary>
    private static void Tops(ReadOnlySpan<double> lineV, ReadOnlySpan<double> currentsA, Span<double> topsW)
    {
        int k = 0;
        for (; k <= topsW.Length - Vector<double>.Count; k += Vector<double>.Count)
        {
            var fromV = new Vector<double>(lineV[k..]);
            var toV = new Vector<double>(lineV[(k + 1)..]);
            var fromA = new Vector<double>(currentsA[k..]);
            var toA = new Vector<double>(currentsA[(k + 1)..]);
            Vector<double> riseV = toV - fromV;
            Vector<double> riseA = toA - fromA;
            Vector<double> startSlope = (fromV * riseA) + (fromA * riseV);
            Vector<double> endSlope = (toV * riseA) + (toA * riseV);
            Vector<double> top = (fromV * fromA) - (startSlope * startSlope / (4 * riseV * riseA));
            Vector<long> within = Vector.GreaterThan(startSlope, Vector<double>.Zero) & Vector.LessThan(endSlope, Vector<double>.Zero);
            Vector.ConditionalSelect(within, top, Vector.Max(fromV * fromA, toV * toA)).CopyTo(topsW[k..]);
        }

        for (; k < topsW.Length; k++)
        {
            topsW[k] = MostOnChord(lineV[k], currentsA[k], lineV[k + 1], currentsA[k + 1]);
        }
    }

    /// <summary>The most of voltage times current along a falling line within each cell.</summary>
    private static void MostInCells(ReadOnlySpan<double> lineV, ReadOnlySpan<double> currentsA, ReadOnlySpan<double> topsW, ReadOnlySpan<(double LowV, double HighV)> cells, Span<float> mostW, int stride)
    {
        int at = lineV.Length - 1;
        for (int i = 0; i < cells.Length; i++)
        {
            (double lowV, double highV) = cells[i];
            int low = FirstAtOrAbove(lineV, at, lowV);
            at = FirstAtOrAbove(lineV, low, highV);
            double lowA = CurrentAt(lineV, currentsA, low, lowV);
            double highA = CurrentAt(lineV, currentsA, at, highV);
            double most;
            if (at == low)
            {
                most = MostOnChord(lowV, lowA, highV, highA);
            }
            else
            {
                // From the low end to the first corner inside, whole pieces, and from the last corner to the high end.
                most = Math.Max(MostOnChord(lowV, lowA, lineV[low], currentsA[low]), MostOnChord(lineV[at + 1], currentsA[at + 1], highV, highA));
                most = Math.Max(most, Most(topsW[(at + 1)..low]));
            }

            mostW[i * stride] = (float)Math.Max(most + (Math.Abs(most) * Slack), VoltageCells.Never / 64);
        }
    }

    private static double Most(ReadOnlySpan<double> values)
    {
        double most = double.NegativeInfinity;
        int k = 0;
        if (values.Length >= Vector<double>.Count)
        {
            Vector<double> lanes = new(most);
            for (; k <= values.Length - Vector<double>.Count; k += Vector<double>.Count)
            {
                lanes = Vector.Max(lanes, new Vector<double>(values[k..]));
            }

            for (int lane = 0; lane < Vector<double>.Count; lane++)
            {
                most = Math.Max(most, lanes[lane]);
            }
        }

        for (; k < values.Length; k++)
        {
            most = Math.Max(most, values[k]);
        }

        return most;
    }

    /// <summary>The last corner, from the high-current end, whose voltage reaches a given one; −1 when none does.</summary>
    private static int FirstAtOrAbove(ReadOnlySpan<double> lineV, int from, double voltageV)
    {
        if (from < 0 || lineV[from] >= voltageV)
        {
            return from;
        }

        int low = -1;
        int high = from;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = lineV[middle] >= voltageV ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Current at a voltage, corner k being the last that reaches it; above the line's first corner, that corner's current (the true one is lower still).</summary>
    private static double CurrentAt(ReadOnlySpan<double> lineV, ReadOnlySpan<double> currentsA, int k, double voltageV)
    {
        if (k < 0)
        {
            return currentsA[0];
        }

        if (k == lineV.Length - 1)
        {
            return currentsA[k];
        }

        double share = (lineV[k] - voltageV) / (lineV[k] - lineV[k + 1]);
        return currentsA[k] + (share * (currentsA[k + 1] - currentsA[k]));
    }

    /// <summary>The most of voltage times current on a straight piece: at an end, or at the top of the parabola between.</summary>
    private static double MostOnChord(double fromV, double fromA, double toV, double toA)
    {
        double riseV = toV - fromV;
        double riseA = toA - fromA;
        double startSlope = (fromV * riseA) + (fromA * riseV);
        double endSlope = (toV * riseA) + (toA * riseV);
        return startSlope > 0 && endSlope < 0
            ? (fromV * fromA) - (startSlope * startSlope / (4 * riseV * riseA))
            : Math.Max(fromV * fromA, toV * toA);
    }
}

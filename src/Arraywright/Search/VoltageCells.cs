using System.Numerics;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>The voltages an input may work at, in each moment cut into cells; what an array is worth to the input is bounded cell by cell.</summary>
/// <remarks>
/// Laid out cell by cell with one lane a moment, so that one pass over the cells keeps the maximum of every moment.
/// Moments with fewer cells, and lanes beyond the last moment, are filled with cells worth nothing.
/// </remarks>
internal sealed class VoltageCells
{
    /// <summary>Stands for "cannot be", low enough that sums of it never count and squares of it stay finite.</summary>
    public const float Never = -1e17f;

    private const int Pieces = 4;

    /// <summary>Width of a first cell, high end over low end, where memory allows.</summary>
    private const double Ratio = 1.06;

    /// <summary>How far below the highest voltage cells begin: below lies one wide cell, as no good design works there.</summary>
    private const double Deepest = 8;

    private readonly (double LowV, double HighV)[][] _cells;
    private readonly float[] _mostW;
    private readonly float[] _lossPerW;

    private VoltageCells((double LowV, double HighV)[][] cells, InputWindow window, double runOhm, double[] mostA)
    {
        _cells = cells;
        Moments = cells.Length;
        Lanes = (Moments + 7) / 8 * 8;
        Columns = cells.Max(list => list.Length) * Lanes;
        Window = window;
        RunOhm = runOhm;
        MostA = mostA;
        _mostW = new float[Columns];
        _lossPerW = new float[Columns];
        Array.Fill(_mostW, Never);
        for (int moment = 0; moment < Moments; moment++)
        {
            for (int i = 0; i < cells[moment].Length; i++)
            {
                double highV = cells[moment][i].HighV;
                double loss = runOhm / (highV * highV);
                double most = Math.Min(mostA[moment] * highV, loss > 0 ? 0.5 / loss : double.PositiveInfinity);
                _mostW[(i * Lanes) + moment] = (float)Math.Min(most * (1 + 1e-6), 1e12);
                _lossPerW[(i * Lanes) + moment] = (float)(loss * (1 - 1e-6));
            }
        }
    }

    /// <summary>Number of moments.</summary>
    public int Moments { get; }

    /// <summary>Moments rounded up to whole vectors.</summary>
    public int Lanes { get; }

    /// <summary>Entries of a row of a table over these cells.</summary>
    public int Columns { get; }

    /// <summary>The input's window.</summary>
    public InputWindow Window { get; }

    private double RunOhm { get; }

    private double[] MostA { get; }

    /// <summary>Cells of a moment, ascending.</summary>
    public ReadOnlySpan<(double LowV, double HighV)> Of(int moment) => _cells[moment];

    /// <summary>The first cells, each a fixed ratio wide.</summary>
    /// <param name="window">The input's window.</param>
    /// <param name="runOhm">Run to the input with its contact, Ω.</param>
    /// <param name="topV">Highest voltage of any string in each moment, V.</param>
    /// <param name="mostA">Most current the input can have in each moment, A.</param>
    /// <param name="most">Cells a moment may have.</param>
    public static VoltageCells Coarse(InputWindow window, double runOhm, double[] topV, double[] mostA, int most) =>
        new([.. topV.Select(top => Cut(window, top, most).ToArray())], window, runOhm, mostA);

    /// <summary>The cells worth keeping, each cut into pieces.</summary>
    /// <param name="keep">One entry a column.</param>
    /// <param name="most">Cells a moment may have, if it can be helped.</param>
    public VoltageCells Finer(bool[] keep, int most)
    {
        var cells = new (double, double)[Moments][];
        for (int moment = 0; moment < Moments; moment++)
        {
            int kept = Enumerable.Range(0, _cells[moment].Length).Count(i => keep[(i * Lanes) + moment]);
            int pieces = Math.Clamp(most / Math.Max(kept, 1), 1, Pieces);
            var finer = new List<(double, double)>();
            for (int i = 0; i < _cells[moment].Length; i++)
            {
                if (keep[(i * Lanes) + moment])
                {
                    (double lowV, double highV) = _cells[moment][i];
                    for (int piece = 0; piece < pieces; piece++)
                    {
                        finer.Add((lowV + ((highV - lowV) * piece / pieces), lowV + ((highV - lowV) * (piece + 1) / pieces)));
                    }
                }
            }

            cells[moment] = [.. finer];
        }

        return new VoltageCells(cells, Window, RunOhm, MostA);
    }

    /// <summary>Bounds on what the input takes in each moment from an array whose power in each cell is at most a sum of three rows.</summary>
    /// <param name="a">A row.</param>
    /// <param name="b">A row.</param>
    /// <param name="c">A row.</param>
    /// <param name="mostW">Receives one bound a lane, W.</param>
    public void Worth(ReadOnlySpan<float> a, ReadOnlySpan<float> b, ReadOnlySpan<float> c, Span<float> mostW)
    {
        ReadOnlySpan<float> most = _mostW;
        ReadOnlySpan<float> loss = _lossPerW;
        a = a[..most.Length];
        b = b[..most.Length];
        c = c[..most.Length];
        for (int lane = 0; lane < Lanes; lane += Vector<float>.Count)
        {
            Vector<float> best = new(Never);
            for (int at = lane; at < most.Length; at += Lanes)
            {
                Vector<float> power = new Vector<float>(a[at..]) + new Vector<float>(b[at..]) + new Vector<float>(c[at..]);
                power = Vector.Min(power, new Vector<float>(most[at..]));
                best = Vector.Max(best, power - (power * power * new Vector<float>(loss[at..])));
            }

            Vector.Min(Vector.Max(best, Vector<float>.Zero), new Vector<float>((float)Math.Min(Window.MaxW * (1 + 1e-7), 1e12))).CopyTo(mostW[lane..]);
        }
    }

    /// <summary>The same for one column, of a row that bounds the whole array.</summary>
    public float WorthAt(int column, float powerW)
    {
        float power = Math.Min(powerW, _mostW[column]);
        return Math.Min(Math.Max(power - (power * power * _lossPerW[column]), 0), (float)Math.Min(Window.MaxW * (1 + 1e-7), 1e12));
    }

    private static IEnumerable<(double LowV, double HighV)> Cut(InputWindow window, double topV, int most)
    {
        // Above the window an input may still work where its current limit holds the array there.
        double highV = Math.Max(topV, window.MinV * Ratio);
        double lowV = Math.Max(window.MinV, highV / Deepest);
        if (lowV > window.MinV)
        {
            yield return (Math.Max(window.MinV, 1e-9), lowV);
        }

        double width = Math.Max(Ratio - 1, (highV - lowV) / (lowV * (most - 1)) / 2);
        double v = lowV;
        for (int i = 1; v < highV; i++)
        {
            double nextV = i >= most - 1 ? highV : Math.Min(v * (1 + width), highV);
            yield return (v, nextV);
            v = nextV;
        }
    }
}

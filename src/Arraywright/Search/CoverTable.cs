using System.Numerics;

namespace Arraywright.Search;

/// <summary>For every part of the pile and every voltage cell, a bound on the power of the part wired up whole, in any way.</summary>
/// <remarks>
/// In parallel the powers at a common voltage add, so B(R) = max over strings s that hold R's first kind of u(s) + B(R − s): the best way
/// to cut R into strings, each cell by itself. As each cell may choose its own wiring, B bounds every wiring of R.
/// </remarks>
internal sealed class CoverTable
{
    /// <summary>Rows raised in the time of a node: measured.</summary>
    public const int RaisesPerNode = 2;

    /// <summary>Strings looked at in the time of a node: measured.</summary>
    public const int LooksPerNode = 100;

    private readonly float[] _mostW;

    /// <summary>Fills the table.</summary>
    /// <param name="strings">Strings of the input.</param>
    /// <param name="amps">What parts their amps allow.</param>
    /// <param name="pile">The pile.</param>
    /// <param name="cells">Cells of the input.</param>
    /// <param name="stringW">Table of the strings over the same cells.</param>
    /// <param name="before">A table no longer needed, whose memory may be taken over; null for none.</param>
    /// <param name="effort">Counts the work.</param>
    public CoverTable(InputStrings strings, PartAmps amps, Pile pile, VoltageCells cells, float[] stringW, CoverTable? before, Effort effort)
    {
        int columns = cells.Columns;
        int entries = checked(pile.States * columns);
        _mostW = before?._mostW.Length >= entries ? before._mostW : GC.AllocateUninitializedArray<float>(entries);
        Cells = cells;
        StringW = stringW;
        Amps = amps;
        _mostW.AsSpan(0, columns).Clear();
        for (int part = 1; part < pile.States; part++)
        {
            Span<float> row = _mostW.AsSpan(part * columns, columns);
            row.Fill(VoltageCells.Never);
            ulong packed = pile.Packed[part];
            long raised = 0;
            foreach (int s in strings.Buckets[pile.Lowest[part]])
            {
                int rest = part - strings.Parts[s];
                if (pile.Within(pile.Packed[strings.Parts[s]], packed) && amps.Fits(ChosenAmps.None, s, rest))
                {
                    raised++;
                    Raise(row, stringW.AsSpan(s * columns, columns), _mostW.AsSpan(rest * columns, columns));
                }
            }

            effort.SpendOrGiveUp(1 + (raised / RaisesPerNode) + (strings.Buckets[pile.Lowest[part]].Length / LooksPerNode));
        }
    }

    /// <summary>The cells.</summary>
    public VoltageCells Cells { get; }

    /// <summary>Table of the strings.</summary>
    public float[] StringW { get; }

    /// <summary>What the amps of its strings allow.</summary>
    public PartAmps Amps { get; }

    /// <summary>The bounds of a part, one a column, W.</summary>
    public ReadOnlySpan<float> Of(int part) => _mostW.AsSpan(part * Cells.Columns, Cells.Columns);

    /// <summary>The powers of a string, one a column, W.</summary>
    public ReadOnlySpan<float> OfString(int s) => StringW.AsSpan(s * Cells.Columns, Cells.Columns);

    private static void Raise(Span<float> row, ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        for (int i = 0; i < row.Length; i += Vector<float>.Count)
        {
            Vector.Max(new Vector<float>(row[i..]), new Vector<float>(a[i..]) + new Vector<float>(b[i..])).CopyTo(row[i..]);
        }
    }
}

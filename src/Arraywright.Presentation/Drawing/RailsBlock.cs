namespace Arraywright.Presentation.Drawing;

/// <summary>Blocks between two rails: side by side as many as fit, the next row below, its rails joined to those above by a line at either side.</summary>
/// <remarks>The line on the left belongs to plus, that on the right to minus, and no rail reaches past the other's: nothing crosses.</remarks>
internal sealed class RailsBlock : DiagramBlock
{
    /// <summary>Room on either side for the line that joins the rails of several rows.</summary>
    public const double LanePx = 12;

    private const double RowGapPx = 14;

    private readonly List<List<DiagramBlock>> _rows;
    private readonly IReadOnlyList<string> _words;
    private readonly string _title;
    private readonly Pen _plus;
    private readonly Pen _minus;
    private readonly double _firstLeftPx;

    /// <summary>Blocks in parallel.</summary>
    /// <param name="branches">The blocks.</param>
    /// <param name="widthPx">Room for them.</param>
    /// <param name="title">What joins them, in full.</param>
    /// <param name="words">Above the upper rail, in lines of their own.</param>
    /// <param name="plus">The upper rail.</param>
    /// <param name="minus">The lower rail.</param>
    public RailsBlock(IReadOnlyList<DiagramBlock> branches, double widthPx, string title, IReadOnlyList<string> words, Pen plus, Pen minus)
    {
        (_title, _plus, _minus) = (title, plus, minus);
        _rows = Rows(branches, widthPx);
        _rows = _rows.Count > 1 ? Rows(branches, widthPx - (2 * LanePx)) : _rows;
        _firstLeftPx = _rows.Max(row => row[0].LeftPx);
        _words = [.. words.SelectMany(text => Sketch.Wrap(text, RightPx - 10, 3))];
    }

    private bool HasLanes => _rows.Count > 1;

    /// <inheritdoc/>
    public override double LeftPx => _firstLeftPx + (HasLanes ? LanePx : 0);

    /// <inheritdoc/>
    public override double RightPx => _rows.Max(RightOf) + (HasLanes ? LanePx : 0);

    /// <inheritdoc/>
    public override double HeightPx => WordsPx + _rows.Sum(RowPx) + ((_rows.Count - 1) * RowGapPx);

    private double WordsPx => (_words.Count * Sketch.LinePx) + 8;

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx)
    {
        sketch.Upright(_plus, xPx, topPx, topPx + WordsPx);
        sketch.Group(_title, inner => inner.Lines(xPx + 8, topPx + 2, RightPx - 10, _words));
        double railPx = topPx + WordsPx;
        double lastPx = topPx + HeightPx;
        if (HasLanes)
        {
            sketch.Upright(_plus, xPx - LeftPx, railPx, lastPx - RowPx(_rows[^1]));
            sketch.Upright(_minus, xPx + RightPx, railPx + RowPx(_rows[0]), lastPx);
        }

        for (int row = 0; row < _rows.Count; row++)
        {
            Draw(sketch, row, xPx, railPx);
            railPx += RowPx(_rows[row]) + RowGapPx;
        }
    }

    private void Draw(Sketch sketch, int row, double xPx, double railPx)
    {
        double bottomPx = railPx + RowPx(_rows[row]);
        double[] at = [.. Lines(_rows[row], xPx)];
        sketch.Level(_plus, HasLanes ? xPx - LeftPx : at[0], at[^1], railPx);
        sketch.Level(_minus, at[0], HasLanes ? xPx + RightPx : at[^1], bottomPx);
        for (int i = 0; i < at.Length; i++)
        {
            DiagramBlock branch = _rows[row][i];
            branch.Draw(sketch, at[i], railPx);
            sketch.Upright(_minus, at[i], railPx + branch.HeightPx, bottomPx);
        }

        // A rail that merely turns a corner has no dot; the first of plus also has the line from above, the last of minus that going on.
        for (int i = 0; i < at.Length; i++)
        {
            if (i < at.Length - 1 || (row == 0 && i == 0))
            {
                Symbols.Dot(sketch, at[i], railPx);
            }

            if (i > 0 ? i < at.Length - 1 || HasLanes : row == _rows.Count - 1)
            {
                Symbols.Dot(sketch, at[i], bottomPx);
            }
        }

        if (HasLanes && row > 0 && row < _rows.Count - 1)
        {
            Symbols.Dot(sketch, xPx - LeftPx, railPx);
            Symbols.Dot(sketch, xPx + RightPx, bottomPx);
        }
    }

    /// <summary>The upright lines of a row's branches: the first one's is that of the whole.</summary>
    private static IEnumerable<double> Lines(List<DiagramBlock> row, double xPx)
    {
        double previousPx = 0;
        foreach (DiagramBlock branch in row)
        {
            xPx += branch == row[0] ? 0 : previousPx + branch.LeftPx;
            previousPx = branch.RightPx;
            yield return xPx;
        }
    }

    private static double RowPx(List<DiagramBlock> row) => row.Max(branch => branch.HeightPx);

    private static double RightOf(List<DiagramBlock> row) => row.Sum(branch => branch.LeftPx + branch.RightPx) - row[0].LeftPx;

    /// <summary>As few rows as the width allows, filled evenly.</summary>
    private static List<List<DiagramBlock>> Rows(IReadOnlyList<DiagramBlock> branches, double widthPx)
    {
        List<List<DiagramBlock>> rows = Rows(branches, widthPx, branches.Count);
        return Rows(branches, widthPx, (branches.Count + rows.Count - 1) / rows.Count);
    }

    private static List<List<DiagramBlock>> Rows(IReadOnlyList<DiagramBlock> branches, double widthPx, int most)
    {
        List<List<DiagramBlock>> rows = [];
        double usedPx = double.PositiveInfinity;
        foreach (DiagramBlock branch in branches)
        {
            double px = branch.LeftPx + branch.RightPx;
            if (usedPx + px > widthPx || rows[^1].Count == most)
            {
                rows.Add([]);
                usedPx = 0;
            }

            rows[^1].Add(branch);
            usedPx += px;
        }

        return rows;
    }
}

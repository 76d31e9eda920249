namespace Arraywright.Presentation.Drawing;

/// <summary>A long series in columns side by side: from the bottom of each a line goes up beside it to the top of the next, and from the last back below all of them.</summary>
internal sealed class SnakeBlock : DiagramBlock
{
    private const double LanePx = 10;
    private const double AbovePx = 8;
    private const double BelowPx = 6;

    private readonly IReadOnlyList<DiagramBlock> _columns;
    private readonly Pen _plus;
    private readonly Pen _minus;

    /// <summary>A series in columns.</summary>
    /// <param name="columns">The columns, at least two.</param>
    /// <param name="plus">Its lead at the top.</param>
    /// <param name="minus">Its lead at the bottom.</param>
    public SnakeBlock(IReadOnlyList<DiagramBlock> columns, Pen plus, Pen minus) => (_columns, _plus, _minus) = (columns, plus, minus);

    /// <inheritdoc/>
    public override double LeftPx => _columns[0].LeftPx;

    /// <inheritdoc/>
    public override double RightPx => _columns.Sum(column => column.LeftPx + column.RightPx) + ((_columns.Count - 1) * LanePx) - LeftPx;

    /// <inheritdoc/>
    public override double HeightPx => AbovePx + _columns.Select((column, index) => DropPx(index) + column.HeightPx).Max() + (2 * BelowPx);

    /// <summary>The first column has no joint at its head: it hangs lower, so that equal parts stand side by side.</summary>
    private static double DropPx(int index) => index == 0 ? Symbols.PlugPx : 0;

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx)
    {
        double turnPx = topPx + HeightPx - BelowPx;
        double atPx = xPx;
        for (int i = 0; i < _columns.Count; i++)
        {
            DiagramBlock column = _columns[i];
            bool isLast = i == _columns.Count - 1;
            double headPx = topPx + AbovePx + DropPx(i);
            double endPx = headPx + column.HeightPx;
            column.Draw(sketch, atPx, headPx);
            if (isLast)
            {
                sketch.Line(_minus, new Spot(atPx, endPx), new Spot(atPx, topPx + HeightPx), new Spot(xPx, topPx + HeightPx));
            }
            else
            {
                double lanePx = atPx + column.RightPx + (LanePx / 2);
                double nextPx = atPx + column.RightPx + LanePx + _columns[i + 1].LeftPx;
                sketch.Line(Pen.Link, new Spot(atPx, endPx), new Spot(atPx, turnPx), new Spot(lanePx, turnPx), new Spot(lanePx, topPx), new Spot(nextPx, topPx), new Spot(nextPx, topPx + AbovePx));
                atPx = nextPx;
            }
        }

        sketch.Upright(_plus, xPx, topPx, topPx + AbovePx + DropPx(0));
    }

    /// <summary>The blocks of a series in as many even columns as a width allows, none shorter than a few; one column where there is no room for more.</summary>
    /// <param name="parts">The blocks of each part; the joint before a part is its first block.</param>
    /// <param name="widthPx">Room.</param>
    /// <param name="plus">Its lead at the top.</param>
    /// <param name="minus">Its lead at the bottom.</param>
    public static DiagramBlock Of(IReadOnlyList<DiagramBlock> parts, double widthPx, Pen plus, Pen minus)
    {
        const int shortest = 5;
        ColumnBlock all = new(parts);
        int columns = Math.Min((int)((widthPx + LanePx) / (all.LeftPx + all.RightPx + LanePx)), parts.Count / shortest);
        return columns < 2 ? all : new SnakeBlock([.. parts.Chunk((parts.Count + columns - 1) / columns).Select(chunk => new ColumnBlock(chunk))], plus, minus);
    }
}

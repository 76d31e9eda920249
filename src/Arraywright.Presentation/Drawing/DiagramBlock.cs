namespace Arraywright.Presentation.Drawing;

/// <summary>A piece of a diagram: plus enters at its top, minus leaves at its bottom, both on one upright line.</summary>
internal abstract class DiagramBlock
{
    /// <summary>What it takes left of that line.</summary>
    public abstract double LeftPx { get; }

    /// <summary>What it takes right of that line.</summary>
    public abstract double RightPx { get; }

    /// <summary>Its height.</summary>
    public abstract double HeightPx { get; }

    /// <summary>Draws it.</summary>
    /// <param name="sketch">Where.</param>
    /// <param name="xPx">Its upright line.</param>
    /// <param name="topPx">Its top.</param>
    public abstract void Draw(Sketch sketch, double xPx, double topPx);
}

/// <summary>A symbol on the upright line, with its words on the right.</summary>
internal sealed class SymbolBlock : DiagramBlock
{
    /// <summary>Room for a number or a sign.</summary>
    public const double SidePx = 30;

    /// <summary>From the upright line to the words.</summary>
    public const double WordsPx = 24;

    private readonly double _symbolPx;
    private readonly double _wordsWidthPx;
    private readonly IReadOnlyList<string> _words;
    private readonly bool _isFirstBold;
    private readonly string? _title;
    private readonly Action<Sketch, double, double> _draw;

    /// <summary>A symbol.</summary>
    /// <param name="symbolPx">Height of the symbol; the words may be higher, then the line goes on.</param>
    /// <param name="words">Beside it, a line each.</param>
    /// <param name="wordsWidthPx">Room for them.</param>
    /// <param name="title">What it is, in full; null where the words say it.</param>
    /// <param name="below">The line below it.</param>
    /// <param name="draw">Draws the symbol at the upright line and a top.</param>
    /// <param name="isFirstBold">Whether the first of the words is its name.</param>
    public SymbolBlock(double symbolPx, IReadOnlyList<string> words, double wordsWidthPx, string? title, Pen below, Action<Sketch, double, double> draw, bool isFirstBold = false)
    {
        (_symbolPx, _words, _wordsWidthPx, _title, _isFirstBold) = (symbolPx, words, wordsWidthPx, title, isFirstBold);
        _draw = (sketch, xPx, topPx) =>
        {
            draw(sketch, xPx, topPx);
            sketch.Upright(below, xPx, topPx + _symbolPx, topPx + HeightPx);
        };
    }

    /// <inheritdoc/>
    public override double LeftPx => SidePx;

    /// <inheritdoc/>
    public override double RightPx => WordsPx + Math.Min(_wordsWidthPx, Sketch.Width(_words, _isFirstBold)) + 4;

    /// <inheritdoc/>
    public override double HeightPx => Math.Max(_symbolPx, _words.Count * Sketch.LinePx);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx)
    {
        if (_title is null)
        {
            DrawAll(sketch, xPx, topPx);
        }
        else
        {
            sketch.Group(_title, inner => DrawAll(inner, xPx, topPx));
        }
    }

    private void DrawAll(Sketch sketch, double xPx, double topPx)
    {
        _draw(sketch, xPx, topPx);
        double above = Math.Max(0, (_symbolPx - (_words.Count * Sketch.LinePx)) / 2);
        sketch.Lines(xPx + WordsPx, topPx + above, _wordsWidthPx, _words, _isFirstBold);
    }
}

/// <summary>Blocks under each other.</summary>
internal sealed class ColumnBlock(IReadOnlyList<DiagramBlock> blocks) : DiagramBlock
{
    /// <inheritdoc/>
    public override double LeftPx { get; } = blocks.Max(block => block.LeftPx);

    /// <inheritdoc/>
    public override double RightPx { get; } = blocks.Max(block => block.RightPx);

    /// <inheritdoc/>
    public override double HeightPx { get; } = blocks.Sum(block => block.HeightPx);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx)
    {
        foreach (DiagramBlock block in blocks)
        {
            block.Draw(sketch, xPx, topPx);
            topPx += block.HeightPx;
        }
    }
}

using Arraywright.Parts;

namespace Arraywright.Presentation.Drawing;

/// <summary>A fuse in its holder, or a string's own cable: one lead that goes on.</summary>
internal sealed class PieceItem : ArrangementItem
{
    /// <summary>Half the length of a fuse holder.</summary>
    private const double HolderPx = 15;

    private readonly Element _element;
    private readonly Pen _pen;
    private readonly IReadOnlyList<string> _words;

    /// <summary>A piece.</summary>
    /// <param name="element">What it is.</param>
    /// <param name="pen">Its leads.</param>
    /// <param name="isBare">Whether its figures are left to the key below, where many are below each other.</param>
    public PieceItem(Element element, Pen pen, bool isBare) =>
        (_element, _pen, _words) = (element, pen, isBare ? [] : element.Short);

    /// <inheritdoc/>
    public override double WidthPx => Math.Max((2 * HolderPx) + 10, Sketch.Width(_words, isFirstBold: false) + 8);

    /// <inheritdoc/>
    public override double HeightPx => LeadsPx + 10 + (_words.Count * Sketch.LinePx);

    /// <inheritdoc/>
    public override Pen Left => _pen;

    /// <inheritdoc/>
    public override Pen Right => _pen;

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx) => sketch.Group(_element.InFull, inner =>
    {
        double leadsPx = topPx + LeadsPx;
        double middlePx = xPx + (WidthPx / 2);
        if (_element.Kind == PieceKind.StringFuse)
        {
            Holder(inner, middlePx, leadsPx);
            inner.Level(_pen, xPx, middlePx - HolderPx, leadsPx);
            inner.Level(_pen, middlePx + HolderPx, xPx + WidthPx, leadsPx);
        }
        else
        {
            inner.Level(_pen, xPx, xPx + WidthPx, leadsPx);
        }

        inner.Lines(xPx + 4, leadsPx + 8, WidthPx, _words, isFirstBold: false);
    });

    /// <summary>A fuse holder.</summary>
    public static void Holder(Sketch sketch, double middlePx, double yPx, double halfPx = HolderPx)
    {
        sketch.Box(middlePx - halfPx, yPx - (0.4 * halfPx), 2 * halfPx, 0.8 * halfPx, Pen.Outline, Tone.Paper);
        sketch.Level(Pen.Outline, middlePx - halfPx, middlePx + halfPx, yPx);
    }
}

using Arraywright.Presentation.Charts;

namespace Arraywright.Presentation.Drawing;

/// <summary>A picture being drawn.</summary>
internal sealed class Sketch
{
    /// <summary>Size of ordinary text.</summary>
    public const double TextPx = 12;

    /// <summary>From one line of text to the next.</summary>
    public const double LinePx = 15;

    private readonly List<Shape> _shapes = [];

    /// <summary>What was drawn so far, the lowest first.</summary>
    public IReadOnlyList<Shape> Shapes => _shapes;

    /// <summary>A line through corners.</summary>
    public void Line(Pen pen, params ReadOnlySpan<Spot> points) => _shapes.Add(new Shape.Path([.. points], IsClosed: false, pen, null));

    /// <summary>An upright line; nothing where it has no length.</summary>
    public void Upright(Pen pen, double xPx, double fromPx, double toPx)
    {
        if (toPx != fromPx)
        {
            Line(pen, new Spot(xPx, fromPx), new Spot(xPx, toPx));
        }
    }

    /// <summary>A level line; nothing where it has no length.</summary>
    public void Level(Pen pen, double fromPx, double toPx, double yPx)
    {
        if (toPx != fromPx)
        {
            Line(pen, new Spot(fromPx, yPx), new Spot(toPx, yPx));
        }
    }

    /// <summary>An area with corners.</summary>
    public void Area(Pen pen, Tone fill, params ReadOnlySpan<Spot> points) => _shapes.Add(new Shape.Path([.. points], IsClosed: true, pen, fill));

    /// <summary>A rectangle.</summary>
    public void Box(double xPx, double yPx, double widthPx, double heightPx, Pen? pen, Tone? fill) =>
        _shapes.Add(new Shape.Box(new Spot(xPx, yPx), widthPx, heightPx, pen, fill));

    /// <summary>A circle.</summary>
    public void Disc(double xPx, double yPx, double radiusPx, Pen? pen, Tone? fill) => _shapes.Add(new Shape.Disc(new Spot(xPx, yPx), radiusPx, pen, fill));

    /// <summary>A line of text; nothing where it is empty.</summary>
    /// <param name="xPx">Where its anchor stands.</param>
    /// <param name="yPx">Its baseline.</param>
    /// <param name="text">What it says.</param>
    /// <param name="isBold">Whether it is heavy.</param>
    /// <param name="anchor">Which end stands there.</param>
    /// <param name="sizePx">Size of its font.</param>
    public void Text(double xPx, double yPx, string text, bool isBold = false, Anchor anchor = Anchor.Start, double sizePx = TextPx)
    {
        if (text.Length > 0)
        {
            _shapes.Add(new Shape.Words(new Spot(xPx, yPx), text, sizePx, isBold, anchor));
        }
    }

    /// <summary>Lines of text under each other, the first one's top at a place, each cut to a width.</summary>
    public void Lines(double xPx, double topPx, double widthPx, IEnumerable<string> lines, bool isFirstBold = false)
    {
        double baselinePx = topPx + TextPx - 1;
        foreach (string line in lines)
        {
            Text(xPx, baselinePx, Cut(line, widthPx, isFirstBold), isFirstBold);
            baselinePx += LinePx;
            isFirstBold = false;
        }
    }

    /// <summary>Shapes that are one thing.</summary>
    public void Group(string title, Action<Sketch> draw)
    {
        Sketch inner = new();
        draw(inner);
        _shapes.Add(new Shape.Group(title, [.. inner._shapes]));
    }

    /// <summary>The beginning of a text that fits a width, ending in "…" where it is cut.</summary>
    public static string Cut(string text, double widthPx, bool isBold, double sizePx = TextPx) =>
        TextMeasure.Wrap(text, widthPx, sizePx, isBold, 1) is [var line] ? line : "";

    /// <summary>The lines a text needs within a width.</summary>
    public static List<string> Wrap(string text, double widthPx, int mostLines) => TextMeasure.Wrap(text, widthPx, TextPx, isBold: false, mostLines);

    /// <summary>Width of the widest of some lines.</summary>
    public static double Width(IEnumerable<string> lines, bool isFirstBold) =>
        lines.Select((line, index) => TextMeasure.Width(line, TextPx, isFirstBold && index == 0)).DefaultIfEmpty(0).Max();
}

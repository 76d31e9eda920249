using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>What both drawings have above and below their arrays, and going down the sheet.</summary>
/// <param name="sketch">Where it is drawn.</param>
/// <param name="widthPx">Width of the sheet.</param>
internal sealed class SheetLayout(Sketch sketch, double widthPx)
{
    /// <summary>White on either side.</summary>
    public const double MarginPx = 8;

    private const double HeadingPx = 15;
    private const double SamplePx = 34;

    /// <summary>How far down the sheet is filled.</summary>
    public double TopPx { get; set; } = MarginPx;

    private double TextWidthPx => widthPx - (2 * MarginPx);

    /// <summary>The plan's name, and what stands against connecting it.</summary>
    public void Head(DrawingSheet sheet)
    {
        foreach (string line in TextMeasure.Wrap(sheet.Plan.Name, TextWidthPx, HeadingPx, isBold: true, 2))
        {
            sketch.Text(MarginPx, TopPx + HeadingPx - 2, line, isBold: true, sizePx: HeadingPx);
            TopPx += 1.3 * HeadingPx;
        }

        if (sheet.Warning is { } warning)
        {
            Write(warning, isBold: true);
        }
    }

    /// <summary>An input's name and its wiring in words.</summary>
    public void Head(Hookup hookup)
    {
        TopPx += 8;
        Write(DrawingWords.Input(hookup), isBold: true);
        Write(WiringWords.Describe(hookup.Assignment.Wiring!), isBold: false);
        TopPx += 4;
    }

    /// <summary>A sample of a line and what it means.</summary>
    public void Key(Action<Sketch, double, double> drawSample, string words)
    {
        drawSample(sketch, MarginPx, TopPx + (Sketch.LinePx / 2) - 1);
        foreach (string line in Sketch.Wrap(words, TextWidthPx - SamplePx, 3))
        {
            sketch.Text(MarginPx + SamplePx, TopPx + Sketch.TextPx - 1, line);
            TopPx += Sketch.LinePx;
        }

        TopPx += 3;
    }

    /// <summary>What the lines and numbers mean.</summary>
    public void Keys(DrawingSheet sheet)
    {
        Key((inner, xPx, yPx) => inner.Level(Pen.Plus, xPx, xPx + SamplePx - 10, yPx), "whole line: lead of plus");
        Key((inner, xPx, yPx) => inner.Level(Pen.Minus, xPx, xPx + SamplePx - 10, yPx), "broken line: lead of minus");
        if (sheet.Hookups.Any(hookup => hookup.HasRow))
        {
            Key((inner, xPx, yPx) => inner.Level(Pen.Link, xPx, xPx + SamplePx - 10, yPx), "between panels: minus to plus");
        }

        Key((inner, xPx, yPx) => Symbols.Number(inner, xPx + 12, yPx, sheet.Hookups[0].Joints[0]), "a plug, its number the order of connecting");
    }

    /// <summary>A sample of what lies in both leads.</summary>
    public static void BothLeads(Sketch sketch, double xPx, double yPx)
    {
        sketch.Level(Pen.Plus, xPx, xPx + SamplePx - 10, yPx - 3);
        sketch.Level(Pen.Minus, xPx, xPx + SamplePx - 10, yPx + 3);
    }

    /// <summary>Lines of text over the sheet's width.</summary>
    public void Write(string text, bool isBold)
    {
        foreach (string line in TextMeasure.Wrap(text, TextWidthPx, Sketch.TextPx, isBold, 6))
        {
            sketch.Text(MarginPx, TopPx + Sketch.TextPx - 1, line, isBold);
            TopPx += Sketch.LinePx;
        }
    }
}

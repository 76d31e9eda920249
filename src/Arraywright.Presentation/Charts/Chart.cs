using System.Collections.Immutable;
using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>What a chart says in words.</summary>
internal sealed record ChartWords
{
    /// <summary>Its name in one line.</summary>
    public required string Title { get; init; }

    /// <summary>Its chief figures in sentences.</summary>
    public required string Description { get; init; }

    /// <summary>The plan's name, above the chart.</summary>
    public required string Heading { get; init; }

    /// <summary>What stands against connecting it; null where nothing does.</summary>
    public required string? Warning { get; init; }

    /// <summary>Lines under the heading: the wiring, the conditions.</summary>
    public required ImmutableArray<string> Details { get; init; }

    /// <summary>What the signs mean, below the chart.</summary>
    public required ImmutableArray<ChartKey> Keys { get; init; }
}

/// <summary>A finished chart: what it says in words, and how it draws itself. The same for a file, a report and a page.</summary>
public sealed class Chart
{
    private readonly ChartWords _words;
    private readonly Func<PlotModel> _plot;

    /// <summary>A chart.</summary>
    /// <param name="words">What it says.</param>
    /// <param name="heightPx">Height it is laid out for.</param>
    /// <param name="plot">Makes its plot anew each time, since one that was drawn keeps what it was drawn on.</param>
    internal Chart(ChartWords words, int heightPx, Func<PlotModel> plot)
    {
        _words = words;
        _plot = plot;
        HeightPx = heightPx;
    }

    /// <summary>Its name in one line: what a reader who cannot see it is told first.</summary>
    public string Title => _words.Title;

    /// <summary>Its chief figures in sentences, for the same reader.</summary>
    public string Description => _words.Description;

    /// <summary>Width it is laid out for, pixels: to be read on a telephone, and over the width of a printed page.</summary>
    public int WidthPx { get; } = 480;

    /// <summary>Height it is laid out for, pixels.</summary>
    public int HeightPx { get; }

    /// <summary>As one SVG element on its own white card: text stays text, and nothing outside is referred to.</summary>
    public string ToSvg()
    {
        SvgCanvas canvas = new();
        Draw(canvas);
        return canvas.Finish(this);
    }

    /// <summary>Draws it over <see cref="WidthPx"/> by <see cref="HeightPx"/> of a canvas.</summary>
    public void Draw(IRenderContext canvas) => new ChartSheet(canvas, WidthPx).Draw(_words, _plot(), HeightPx);
}

using System.Collections.Immutable;
using OxyPlot;

namespace Arraywright.Presentation.Drawing;

/// <summary>A finished drawing as a list of shapes: the same for a file, a report and a page.</summary>
public sealed record Picture
{
    /// <summary>Name that sets its ids apart from those of others in one page: letters, digits, hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in one line: what a reader who cannot see it is told first.</summary>
    public required string Title { get; init; }

    /// <summary>What it shows, in sentences, for the same reader.</summary>
    public required string Description { get; init; }

    /// <summary>Its width.</summary>
    public required double WidthPx { get; init; }

    /// <summary>Its height.</summary>
    public required double HeightPx { get; init; }

    /// <summary>What it is made of, the lowest first; all of it within its width and height.</summary>
    public required ImmutableArray<Shape> Shapes { get; init; }

    /// <summary>As one SVG element on its own white card: text stays text, and nothing outside is referred to.</summary>
    public string ToSvg() => PictureSvg.Write(this);

    /// <summary>The same in parts for pages that are less high, cut where only leads and branch connectors go on; itself where it is low enough.</summary>
    /// <param name="highestPx">Height of a page.</param>
    public ImmutableArray<Picture> Cut(double highestPx) => PictureCut.Into(this, highestPx);

    /// <summary>Draws it on a canvas of the charting library, as a <see cref="Charts.Chart"/> does.</summary>
    public void Draw(IRenderContext canvas) => PictureCanvas.Draw(this, canvas);
}

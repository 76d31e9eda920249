using System.Collections.Immutable;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;
using OxyPlot;

namespace Arraywright.Presentation.Report;

/// <summary>A picture of a report: as SVG for a page, or drawn on any canvas of the charting library.</summary>
/// <param name="Caption">Its name beneath it.</param>
/// <param name="Title">Its name by itself, in one line.</param>
/// <param name="Description">What it shows, for a reader who cannot see it.</param>
/// <param name="WidthPx">Width it is laid out for, pixels.</param>
/// <param name="HeightPx">Height it is laid out for, pixels.</param>
/// <param name="ToSvg">Makes it one SVG element.</param>
/// <param name="Draw">Draws it over its width and height.</param>
public sealed record ReportPicture(string Caption, string Title, string Description, double WidthPx, double HeightPx, Func<string> ToSvg, Action<IRenderContext> Draw)
{
    /// <summary>The same, laid out for the width of a telephone; null where this one serves there too.</summary>
    public ReportPicture? Narrow { get; init; }

    /// <summary>The same in parts for pages of a height in pixels, each with its own caption; null where it cannot be cut.</summary>
    public Func<double, ImmutableArray<ReportPicture>>? Cut { get; init; }

    /// <summary>A chart.</summary>
    public static ReportPicture Of(string caption, Chart chart) => new(caption, chart.Title, chart.Description, chart.WidthPx, chart.HeightPx, chart.ToSvg, chart.Draw);

    /// <summary>A drawing, laid out for a page and for a telephone.</summary>
    public static ReportPicture Of(string caption, Picture wide, Picture narrow) => Of(caption, wide) with { Narrow = Of(caption, narrow with { Id = narrow.Id + "-narrow" }) };

    /// <summary>A drawing that serves on every width.</summary>
    public static ReportPicture Of(string caption, Picture drawing) => new(caption, drawing.Title, drawing.Description, drawing.WidthPx, drawing.HeightPx, drawing.ToSvg, drawing.Draw)
    {
        Cut = highestPx =>
        {
            ImmutableArray<Picture> parts = drawing.Cut(highestPx);
            return [.. parts.Select((part, index) => Of(parts.Length == 1 ? caption : PartOf(caption, index, parts.Length), part))];
        },
    };

    private static string PartOf(string caption, int index, int count) =>
        $"{caption}, part {index + 1} of {count}.{(index < count - 1 ? " Each lead goes on at the same place in the next part." : "")}";
}

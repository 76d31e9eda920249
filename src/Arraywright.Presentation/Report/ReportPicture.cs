using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;
using OxyPlot;

namespace Arraywright.Presentation.Report;

/// <summary>A picture of a report: as SVG for a page, or drawn on any canvas of the charting library.</summary>
/// <param name="Title">Its name in one line.</param>
/// <param name="Description">What it shows, for a reader who cannot see it.</param>
/// <param name="WidthPx">Width it is laid out for, pixels.</param>
/// <param name="HeightPx">Height it is laid out for, pixels.</param>
/// <param name="ToSvg">Makes it one SVG element.</param>
/// <param name="Draw">Draws it over its width and height.</param>
public sealed record ReportPicture(string Title, string Description, double WidthPx, double HeightPx, Func<string> ToSvg, Action<IRenderContext> Draw)
{
    /// <summary>A chart.</summary>
    public static ReportPicture Of(Chart chart) => new(chart.Title, chart.Description, chart.WidthPx, chart.HeightPx, chart.ToSvg, chart.Draw);

    /// <summary>A drawing.</summary>
    public static ReportPicture Of(Picture drawing) => new(drawing.Title, drawing.Description, drawing.WidthPx, drawing.HeightPx, drawing.ToSvg, drawing.Draw);
}

using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Arraywright.Presentation.Charts;

/// <summary>What all plots have in common: sizes, axes, lines, labels.</summary>
internal static class PlotStyle
{
    /// <summary>Size of ordinary text.</summary>
    public const double TextPx = 13;

    /// <summary>Size of the heading.</summary>
    public const double HeadingPx = 16;

    private const double LinePx = 1.5;

    /// <summary>An empty plot.</summary>
    public static PlotModel Plot() => new()
    {
        DefaultFontSize = TextPx,
        Padding = new OxyThickness(8, 2, 14, 2),
        PlotAreaBorderThickness = new OxyThickness(0),
        TextColor = ChartColors.Ink,
        TitlePadding = 0,
    };

    /// <summary>An axis from nought.</summary>
    /// <param name="position">Where it stands.</param>
    /// <param name="title">What it measures, with its unit.</param>
    /// <param name="most">Its end; over 0.</param>
    /// <param name="figures">About how many figures stand along it.</param>
    public static LinearAxis Axis(AxisPosition position, string title, double most, int figures) => new()
    {
        Position = position,
        Title = title,
        Minimum = 0,
        Maximum = most,
        AbsoluteMinimum = 0,
        MajorGridlineStyle = LineStyle.Solid,
        MajorGridlineColor = ChartColors.Grid,
        MinorTickSize = 0,
        AxislineStyle = LineStyle.Solid,
        AxisTitleDistance = 6,
        MajorStep = Step(most / figures),
    };

    /// <summary>The next 1, 2 or 5 with noughts.</summary>
    private static double Step(double least)
    {
        double decade = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return decade * (least <= decade ? 1 : least <= 2 * decade ? 2 : least <= 5 * decade ? 5 : 10);
    }

    /// <summary>A thin line from point to point.</summary>
    public static PolylineAnnotation Line(string yAxisKey, LineStyle style, params DataPoint[] points)
    {
        PolylineAnnotation line = new() { YAxisKey = yAxisKey, LineStyle = style, Color = ChartColors.Ink, StrokeThickness = LinePx, ClipByXAxis = false, ClipByYAxis = false };
        line.Points.AddRange(points);
        return line;
    }

    /// <summary>A label on a white ground.</summary>
    /// <param name="yAxisKey">Its vertical axis.</param>
    /// <param name="at">Where it belongs.</param>
    /// <param name="text">What it says.</param>
    /// <param name="across">How it lies to that point.</param>
    /// <param name="up">The same, up and down: below the point for the top of the text.</param>
    /// <param name="shift">Pixels from there, right and down.</param>
    public static TextAnnotation Label(string? yAxisKey, DataPoint at, string text, HorizontalAlignment across, VerticalAlignment up, ScreenVector shift) => new()
    {
        YAxisKey = yAxisKey,
        TextPosition = at,
        Text = text,
        TextHorizontalAlignment = across,
        TextVerticalAlignment = up,
        Offset = shift,
        Stroke = OxyColors.Undefined,
        Background = ChartColors.Card,
        Padding = new OxyThickness(2, 0, 2, 0),
        Layer = AnnotationLayer.AboveSeries,
    };
}

using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>A sign of a chart and what it means, written beneath it.</summary>
/// <param name="Words">What it means, with its figure.</param>
/// <param name="DrawSample">Draws the sign into a small rectangle.</param>
internal sealed record ChartKey(string Words, Action<IRenderContext, OxyRect> DrawSample)
{
    /// <summary>A filled and hatched area.</summary>
    public static ChartKey Area(string words, OxyColor fill, Hatching hatching) =>
        new(words, (canvas, area) => BandSeries.Draw(canvas, area, fill, hatching));

    /// <summary>A line with its dashes.</summary>
    public static ChartKey Line(string words, OxyColor color, double thicknessPx, LineStyle style) =>
        new(words, (canvas, area) => canvas.DrawLine(
            [new ScreenPoint(area.Left, area.Center.Y), new ScreenPoint(area.Right, area.Center.Y)],
            color,
            thicknessPx,
            EdgeRenderingMode.PreferGeometricAccuracy,
            style.GetDashArray(),
            LineJoin.Miter));

    /// <summary>An upright line with forbidden ground right of it.</summary>
    public static ChartKey Edge(string words) => new(words, (canvas, area) =>
    {
        OxyRect right = new(area.Center.X, area.Top, area.Width / 2, area.Height);
        canvas.DrawRectangle(right, ChartColors.Forbidden, OxyColors.Undefined, 0, EdgeRenderingMode.PreferSharpness);
        canvas.DrawLine([new ScreenPoint(right.Left, right.Top), new ScreenPoint(right.Left, right.Bottom)], ChartColors.Ink, 1.5, EdgeRenderingMode.PreferSharpness, null, LineJoin.Miter);
    });

    /// <summary>Words without a sign.</summary>
    public static ChartKey Nothing(string words) => new(words, static (_, _) => { });

    /// <summary>A mark.</summary>
    public static ChartKey Mark(string words, MarkerType mark, double sizePx, OxyColor fill) =>
        new(words, (canvas, area) => canvas.DrawMarker(area.Center, mark, null, sizePx, fill, ChartColors.Ink, 1.5, EdgeRenderingMode.PreferGeometricAccuracy));
}

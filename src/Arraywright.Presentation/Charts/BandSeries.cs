using OxyPlot;
using OxyPlot.Series;

namespace Arraywright.Presentation.Charts;

/// <summary>How an area is hatched, so that it is told apart without colour.</summary>
internal enum Hatching
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Lines that rise to the right.</summary>
    Rising,

    /// <summary>Lines that fall to the right.</summary>
    Falling,
}

/// <summary>One upright rectangle of an area.</summary>
/// <param name="FromX">Left edge, on the horizontal axis.</param>
/// <param name="ToX">Right edge.</param>
/// <param name="FromY">Lower edge, on the vertical axis.</param>
/// <param name="ToY">Upper edge.</param>
internal readonly record struct Band(double FromX, double ToX, double FromY, double ToY);

/// <summary>An area of upright rectangles: the steps of a day, the bars of a year.</summary>
internal sealed class BandSeries(IReadOnlyList<Band> bands, OxyColor fill, Hatching hatching) : XYAxisSeries
{
    private const double HatchPx = 6;

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        foreach (Band band in bands)
        {
            if (band.ToY > band.FromY)
            {
                ScreenPoint from = this.Transform(band.FromX, band.FromY);
                ScreenPoint to = this.Transform(band.ToX, band.ToY);
                Draw(rc, new OxyRect(from, to), fill, hatching);
            }
        }
    }

    /// <summary>Draws one filled and hatched rectangle.</summary>
    public static void Draw(IRenderContext rc, OxyRect area, OxyColor fill, Hatching hatching)
    {
        rc.DrawRectangle(area, fill, OxyColors.Undefined, 0, EdgeRenderingMode.PreferSharpness);
        if (hatching != Hatching.None)
        {
            List<ScreenPoint> lines = [];
            Hatch(lines, area, hatching == Hatching.Rising ? 1 : -1);
            rc.DrawLineSegments(lines, ChartColors.Ink, 1, EdgeRenderingMode.PreferGeometricAccuracy, null, LineJoin.Miter);
        }
    }

    /// <summary>The pieces of the lines x ± y = a multiple of the spacing that lie in a rectangle; they meet those of its neighbours.</summary>
    private static void Hatch(List<ScreenPoint> lines, OxyRect area, int sign)
    {
        double least = sign > 0 ? area.Left + area.Top : area.Left - area.Bottom;
        double most = sign > 0 ? area.Right + area.Bottom : area.Right - area.Top;
        for (double sum = Math.Ceiling(least / HatchPx) * HatchPx; sum <= most; sum += HatchPx)
        {
            double left = Math.Max(area.Left, sign > 0 ? sum - area.Bottom : sum + area.Top);
            double right = Math.Min(area.Right, sign > 0 ? sum - area.Top : sum + area.Bottom);
            if (right > left)
            {
                lines.Add(new ScreenPoint(left, sign * (sum - left)));
                lines.Add(new ScreenPoint(right, sign * (sum - right)));
            }
        }
    }
}

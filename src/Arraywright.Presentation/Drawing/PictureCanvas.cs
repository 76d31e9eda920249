using Arraywright.Presentation.Charts;
using OxyPlot;

namespace Arraywright.Presentation.Drawing;

/// <summary>Draws a picture on a canvas of the charting library: what puts a chart on pixels or in a report does it for a drawing.</summary>
internal static class PictureCanvas
{
    public static void Draw(Picture picture, IRenderContext canvas)
    {
        canvas.DrawRectangle(new OxyRect(0, 0, picture.WidthPx, picture.HeightPx), ChartColors.Card, OxyColors.Undefined, 0, EdgeRenderingMode.PreferSharpness);
        Draw(picture.Shapes, canvas);
    }

    private static void Draw(IEnumerable<Shape> shapes, IRenderContext canvas)
    {
        foreach (Shape shape in shapes)
        {
            switch (shape)
            {
                case Shape.Group group:
                    Draw(group.Shapes, canvas);
                    break;
                case Shape.Words words:
                    Draw(words, canvas);
                    break;
                case Shape.Path { IsClosed: false } path:
                    canvas.DrawLine([.. path.Points.Select(Point)], Color(path.Stroke.Tone), path.Stroke.ThicknessPx, Exact, Dashes(path.Stroke), LineJoin.Miter);
                    break;
                case Shape.Path path:
                    canvas.DrawPolygon([.. path.Points.Select(Point)], Color(path.Fill), Color(path.Stroke.Tone), path.Stroke.ThicknessPx, Exact, Dashes(path.Stroke), LineJoin.Miter);
                    break;
                case Shape.Box box:
                    canvas.DrawRectangle(new OxyRect(box.From.XPx, box.From.YPx, box.WidthPx, box.HeightPx), Color(box.Fill), Color(box.Stroke?.Tone), box.Stroke?.ThicknessPx ?? 0, Exact);
                    break;
                case Shape.Disc disc:
                    OxyRect around = new(disc.Middle.XPx - disc.RadiusPx, disc.Middle.YPx - disc.RadiusPx, 2 * disc.RadiusPx, 2 * disc.RadiusPx);
                    canvas.DrawEllipse(around, Color(disc.Fill), Color(disc.Stroke?.Tone), disc.Stroke?.ThicknessPx ?? 0, Exact);
                    break;
                default:
                    throw new InvalidOperationException("A shape of an unknown kind.");
            }
        }
    }

    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>Canvases stand text on its bottom, which lies a fifth of its size under its baseline.</summary>
    private static void Draw(Shape.Words words, IRenderContext canvas)
    {
        HorizontalAlignment across = words.Anchor switch
        {
            Anchor.Start => HorizontalAlignment.Left,
            Anchor.Middle => HorizontalAlignment.Center,
            _ => HorizontalAlignment.Right,
        };
        ScreenPoint bottom = new(words.At.XPx, words.At.YPx + (0.2 * words.SizePx));
        canvas.DrawText(bottom, words.Text, ChartColors.Ink, null, words.SizePx, words.IsBold ? FontWeights.Bold : FontWeights.Normal, 0, across, VerticalAlignment.Bottom, null);
    }

    private static ScreenPoint Point(Spot spot) => new(spot.XPx, spot.YPx);

    /// <summary>The library measures dashes in thicknesses.</summary>
    private static double[]? Dashes(Pen pen) => pen.Dash == Dash.Solid ? null : [.. pen.DashesPx.Select(px => px / pen.ThicknessPx)];

    /// <summary>The colour of a tone; none for none.</summary>
    public static OxyColor Color(Tone? tone) => tone switch
    {
        Tone.Ink or Tone.Minus => ChartColors.Ink,
        Tone.Paper => ChartColors.Card,
        Tone.Plus => ChartColors.Vermillion,
        Tone.Shade or Tone.Body => ChartColors.Forbidden,
        _ => OxyColors.Undefined,
    };
}

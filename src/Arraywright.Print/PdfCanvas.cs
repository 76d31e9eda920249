using Arraywright.Print.Setting;
using OxyPlot;
using PdfSharp.Drawing;

namespace Arraywright.Print;

/// <summary>Draws on a page: charts and drawings as vectors, their text as text. They keep within their frame: nothing is clipped.</summary>
internal sealed class PdfCanvas(XGraphics graphics, Letters letters) : RenderContextBase
{
    private const double Bold = 500;
    private const double Ascent = 0.8;

    private int _clips;

    /// <inheritdoc/>
    public override int ClipCount => _clips;

    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && Pen(stroke, thickness, dashArray) is { } pen)
        {
            graphics.DrawLines(pen, [.. points.Select(Point)]);
        }
    }

    /// <inheritdoc/>
    public override void DrawLineSegments(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (Pen(stroke, thickness, dashArray) is { } pen)
        {
            for (int i = 0; i + 1 < points.Count; i += 2)
            {
                graphics.DrawLine(pen, Point(points[i]), Point(points[i + 1]));
            }
        }
    }

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (Paint(fill, stroke, thickness, dashArray) is var (pen, brush))
        {
            graphics.DrawPolygon(pen, brush, [.. points.Select(Point)], XFillMode.Winding);
        }
    }

    /// <inheritdoc/>
    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        if (Paint(fill, stroke, thickness, null) is var (pen, brush))
        {
            graphics.DrawRectangle(pen, brush, Rect(rectangle));
        }
    }

    /// <inheritdoc/>
    public override void DrawEllipse(OxyRect extents, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        if (Paint(fill, stroke, thickness, null) is var (pen, brush))
        {
            graphics.DrawEllipse(pen, brush, Rect(extents));
        }
    }

    /// <inheritdoc/>
    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string? fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        text = letters.KnownInDrawing(text);
        if (text.Length == 0 || fill.IsInvisible())
        {
            return;
        }

        XFont font = letters.Font(fontSize, fontWeight > Bold);
        double across = letters.WidthPt(font, text) * horizontalAlignment switch
        {
            HorizontalAlignment.Left => 0,
            HorizontalAlignment.Center => 0.5,
            _ => 1,
        };
        double baseline = fontSize * verticalAlignment switch
        {
            VerticalAlignment.Top => Ascent,
            VerticalAlignment.Middle => Ascent / 2.3,
            _ => Ascent - 1,
        };
        XGraphicsState state = graphics.Save();
        graphics.TranslateTransform(p.X, p.Y);
        graphics.RotateTransform(rotate);
        graphics.DrawString(text, font, new XSolidBrush(Color(fill)), -across, baseline);
        graphics.Restore(state);
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string? fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? OxySize.Empty : new OxySize(letters.WidthPt(letters.Font(fontSize, fontWeight > Bold), letters.KnownInDrawing(text)), fontSize * 1.15);

    /// <inheritdoc/>
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    /// <inheritdoc/>
    public override void PopClip() => _clips--;

    /// <summary>Outline and filling; null where there is neither.</summary>
    private static (XPen? Pen, XBrush? Brush)? Paint(OxyColor fill, OxyColor stroke, double thickness, double[]? dashes)
    {
        XPen? pen = Pen(stroke, thickness, dashes);
        XBrush? brush = fill.IsInvisible() ? null : new XSolidBrush(Color(fill));
        return pen is null && brush is null ? null : (pen, brush);
    }

    private static XPen? Pen(OxyColor stroke, double thickness, double[]? dashes)
    {
        if (thickness <= 0 || stroke.IsInvisible())
        {
            return null;
        }

        XPen pen = new(Color(stroke), thickness);
        if (dashes is { Length: > 0 })
        {
            pen.DashPattern = dashes;
        }

        return pen;
    }

    private static XPoint Point(ScreenPoint point) => new(point.X, point.Y);

    private static XRect Rect(OxyRect rectangle) => new(rectangle.Left, rectangle.Top, rectangle.Width, rectangle.Height);

    private static XColor Color(OxyColor color) => XColor.FromArgb(color.A, color.R, color.G, color.B);
}

using Arraywright.Fonts;
using OxyPlot;
using SkiaSharp;

namespace Arraywright.Pictures;

/// <summary>Draws on pixels. Charts keep within their axes: nothing is clipped.</summary>
internal sealed class SkiaCanvas : RenderContextBase, IDisposable
{
    private const double Bold = 500;
    private const float Ascent = 0.8f;

    private readonly SKCanvas _canvas;
    private readonly SKTypeface _regular = Typeface(InterFont.Regular);
    private readonly SKTypeface _bold = Typeface(InterFont.Bold);
    private readonly SKPaint _paint = new() { IsAntialias = true };
    private int _clips;

    public SkiaCanvas(SKCanvas canvas) => _canvas = canvas;

    /// <summary>False once a text had a sign that the font lacks.</summary>
    public bool IsEverySignKnown { get; private set; } = true;

    /// <inheritdoc/>
    public override int ClipCount => _clips;

    /// <inheritdoc/>
    public void Dispose()
    {
        _paint.Dispose();
        _regular.Dispose();
        _bold.Dispose();
    }

    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1)
        {
            using SKPath path = Path(points, close: false);
            Stroke(stroke, thickness, dashArray, () => _canvas.DrawPath(path, _paint));
        }
    }

    /// <inheritdoc/>
    public override void DrawLineSegments(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin) =>
        Stroke(stroke, thickness, dashArray, () => _canvas.DrawPoints(SKPointMode.Lines, [.. points.Select(Point)], _paint));

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        using SKPath path = Path(points, close: true);
        Fill(fill, () => _canvas.DrawPath(path, _paint));
        Stroke(stroke, thickness, dashArray, () => _canvas.DrawPath(path, _paint));
    }

    /// <inheritdoc/>
    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        _paint.IsAntialias = edgeRenderingMode != EdgeRenderingMode.PreferSharpness;
        Fill(fill, () => _canvas.DrawRect(Rect(rectangle), _paint));
        _paint.IsAntialias = true;
        Stroke(stroke, thickness, null, () => _canvas.DrawRect(Rect(rectangle), _paint));
    }

    /// <inheritdoc/>
    public override void DrawEllipse(OxyRect extents, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        Fill(fill, () => _canvas.DrawOval(Rect(extents), _paint));
        Stroke(stroke, thickness, null, () => _canvas.DrawOval(Rect(extents), _paint));
    }

    /// <inheritdoc/>
    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string? fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        using SKFont font = Font(fontSize, fontWeight);
        text = Known(font, text);
        SKTextAlign align = horizontalAlignment switch
        {
            HorizontalAlignment.Left => SKTextAlign.Left,
            HorizontalAlignment.Center => SKTextAlign.Center,
            _ => SKTextAlign.Right,
        };
        float baseline = font.Size * verticalAlignment switch
        {
            VerticalAlignment.Top => Ascent,
            VerticalAlignment.Middle => Ascent / 2.3f,
            _ => Ascent - 1,
        };
        _canvas.Save();
        _canvas.Translate(Point(p));
        _canvas.RotateDegrees((float)rotate);
        Fill(fill, () => _canvas.DrawText(text, 0, baseline, align, font, _paint));
        _canvas.Restore();
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string? fontFamily, double fontSize, double fontWeight)
    {
        if (string.IsNullOrEmpty(text))
        {
            return OxySize.Empty;
        }

        using SKFont font = Font(fontSize, fontWeight);
        return new OxySize(font.MeasureText(text), fontSize * 1.15);
    }

    /// <inheritdoc/>
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    /// <inheritdoc/>
    public override void PopClip() => _clips--;

    /// <summary>A question mark for each sign that the font lacks.</summary>
    private string Known(SKFont font, string text)
    {
        if (font.ContainsGlyphs(text))
        {
            return text;
        }

        IsEverySignKnown = false;
        return string.Concat(text.EnumerateRunes().Select(rune => font.ContainsGlyphs(rune.ToString()) ? rune.ToString() : "?"));
    }

    private SKFont Font(double fontSize, double fontWeight) => new(fontWeight > Bold ? _bold : _regular, (float)fontSize) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };

    private static SKTypeface Typeface(string name)
    {
        using Stream font = InterFont.Open(name);
        using SKData data = SKData.Create(font);
        return SKTypeface.FromData(data);
    }

    private void Fill(OxyColor fill, Action draw)
    {
        if (!fill.IsInvisible())
        {
            _paint.Style = SKPaintStyle.Fill;
            _paint.Color = Color(fill);
            draw();
        }
    }

    private void Stroke(OxyColor stroke, double thickness, double[]? dashes, Action draw)
    {
        if (thickness > 0 && !stroke.IsInvisible())
        {
            using SKPathEffect? effect = dashes is { Length: > 0 } ? SKPathEffect.CreateDash([.. dashes.Select(dash => (float)(dash * thickness))], 0) : null;
            _paint.Style = SKPaintStyle.Stroke;
            _paint.Color = Color(stroke);
            _paint.StrokeWidth = (float)thickness;
            _paint.PathEffect = effect;
            draw();
            _paint.PathEffect = null;
        }
    }

    private static SKPath Path(IList<ScreenPoint> points, bool close)
    {
        using SKPathBuilder path = new();
        path.AddPoly([.. points.Select(Point)], close);
        return path.Detach();
    }

    private static SKPoint Point(ScreenPoint point) => new((float)point.X, (float)point.Y);

    private static SKRect Rect(OxyRect rectangle) => new((float)rectangle.Left, (float)rectangle.Top, (float)rectangle.Right, (float)rectangle.Bottom);

    private static SKColor Color(OxyColor color) => new(color.R, color.G, color.B, color.A);
}

using System.Text;
using System.Xml;
using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>
/// Writes what is drawn as SVG: presentation attributes in place of styles and no ids, so that several stand in one page under a strict
/// content policy; baselines by figure, since not every viewer knows them by name. Charts keep within their axes: nothing is clipped.
/// </summary>
internal sealed class SvgCanvas : RenderContextBase
{
    private const string Namespace = "http://www.w3.org/2000/svg";
    private const double Ascent = 0.8;

    private readonly StringBuilder _elements = new();
    private readonly XmlWriter _svg;
    private int _clips;

    public SvgCanvas()
    {
        _svg = XmlWriter.Create(_elements, new XmlWriterSettings { OmitXmlDeclaration = true, ConformanceLevel = ConformanceLevel.Fragment, NewLineChars = "\n", Indent = true, IndentChars = "" });
    }

    /// <summary>The whole, with its words for whoever cannot see it.</summary>
    public string Finish(Chart chart)
    {
        _svg.Flush();
        StringBuilder whole = new();
        using (XmlWriter svg = XmlWriter.Create(whole, new XmlWriterSettings { OmitXmlDeclaration = true, NewLineChars = "\n" }))
        {
            svg.WriteStartElement("svg", Namespace);
            svg.WriteAttributeString("viewBox", $"0 0 {SvgNumber.Of(chart.WidthPx)} {SvgNumber.Of(chart.HeightPx)}");
            svg.WriteAttributeString("width", SvgNumber.Of(chart.WidthPx));
            svg.WriteAttributeString("height", SvgNumber.Of(chart.HeightPx));
            svg.WriteAttributeString("role", "img");
            svg.WriteAttributeString("font-family", "Helvetica, Arial, sans-serif");
            svg.WriteElementString("title", Namespace, PlainText.Clean(chart.Title));
            svg.WriteElementString("desc", Namespace, PlainText.Clean(chart.Description));
            svg.WriteRaw("\n" + _elements);
            svg.WriteEndElement();
        }

        return whole.Append('\n').ToString();
    }

    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && Visible(stroke, thickness))
        {
            _svg.WriteStartElement("polyline");
            _svg.WriteAttributeString("points", SvgNumber.Points(points, point => point.X, point => point.Y));
            _svg.WriteAttributeString("fill", "none");
            Stroke(stroke, thickness, dashArray);
            _svg.WriteEndElement();
        }
    }

    /// <inheritdoc/>
    public override void DrawLineSegments(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && Visible(stroke, thickness))
        {
            StringBuilder path = new();
            for (int i = 0; i + 1 < points.Count; i += 2)
            {
                path.Append('M').Append(Point(points[i])).Append('L').Append(Point(points[i + 1]));
            }

            _svg.WriteStartElement("path");
            _svg.WriteAttributeString("d", path.ToString());
            Stroke(stroke, thickness, dashArray);
            _svg.WriteEndElement();
        }
    }

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        _svg.WriteStartElement("polygon");
        _svg.WriteAttributeString("points", SvgNumber.Points(points, point => point.X, point => point.Y));
        Fill(fill);
        Stroke(stroke, thickness, dashArray);
        _svg.WriteEndElement();
    }

    /// <inheritdoc/>
    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        if (fill.IsInvisible() && !Visible(stroke, thickness))
        {
            return;
        }

        _svg.WriteStartElement("rect");
        _svg.WriteAttributeString("x", SvgNumber.Of(rectangle.Left));
        _svg.WriteAttributeString("y", SvgNumber.Of(rectangle.Top));
        _svg.WriteAttributeString("width", SvgNumber.Of(rectangle.Width));
        _svg.WriteAttributeString("height", SvgNumber.Of(rectangle.Height));
        Fill(fill);
        Stroke(stroke, thickness, null);
        if (edgeRenderingMode == EdgeRenderingMode.PreferSharpness)
        {
            _svg.WriteAttributeString("shape-rendering", "crispEdges");
        }

        _svg.WriteEndElement();
    }

    /// <inheritdoc/>
    public override void DrawEllipse(OxyRect extents, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        _svg.WriteStartElement("ellipse");
        _svg.WriteAttributeString("cx", SvgNumber.Of(extents.Center.X));
        _svg.WriteAttributeString("cy", SvgNumber.Of(extents.Center.Y));
        _svg.WriteAttributeString("rx", SvgNumber.Of(extents.Width / 2));
        _svg.WriteAttributeString("ry", SvgNumber.Of(extents.Height / 2));
        Fill(fill);
        Stroke(stroke, thickness, null);
        _svg.WriteEndElement();
    }

    /// <inheritdoc/>
    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string? fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        double baseline = fontSize * verticalAlignment switch
        {
            VerticalAlignment.Top => Ascent,
            VerticalAlignment.Middle => Ascent / 2.3,
            _ => Ascent - 1,
        };
        _svg.WriteStartElement("text");
        bool isTurned = rotate != 0;
        _svg.WriteAttributeString("x", SvgNumber.Of(isTurned ? 0 : p.X));
        _svg.WriteAttributeString("y", SvgNumber.Of(baseline + (isTurned ? 0 : p.Y)));
        if (isTurned)
        {
            _svg.WriteAttributeString("transform", $"translate({Point(p)}) rotate({SvgNumber.Of(rotate)})");
        }

        _svg.WriteAttributeString("font-size", SvgNumber.Of(fontSize));
        if (fontWeight > 500)
        {
            _svg.WriteAttributeString("font-weight", "bold");
        }

        if (horizontalAlignment != HorizontalAlignment.Left)
        {
            _svg.WriteAttributeString("text-anchor", horizontalAlignment == HorizontalAlignment.Right ? "end" : "middle");
        }

        Fill(fill);
        _svg.WriteString(PlainText.Clean(text));
        _svg.WriteEndElement();
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string? fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? OxySize.Empty : new OxySize(TextMeasure.Width(text, fontSize, fontWeight > 500), fontSize * 1.15);

    /// <inheritdoc/>
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    /// <inheritdoc/>
    public override void PopClip() => _clips--;

    /// <inheritdoc/>
    public override int ClipCount => _clips;

    private static bool Visible(OxyColor stroke, double thickness) => thickness > 0 && !stroke.IsInvisible();

    private void Fill(OxyColor fill) => _svg.WriteAttributeString("fill", fill.IsInvisible() ? "none" : Color(fill));

    private void Stroke(OxyColor stroke, double thickness, double[]? dashes)
    {
        if (!Visible(stroke, thickness))
        {
            return;
        }

        _svg.WriteAttributeString("stroke", Color(stroke));
        _svg.WriteAttributeString("stroke-width", SvgNumber.Of(thickness));
        if (dashes is { Length: > 0 })
        {
            _svg.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.Select(dash => SvgNumber.Of(dash * thickness))));
        }
    }

    private static string Color(OxyColor color) => $"#{color.R:x2}{color.G:x2}{color.B:x2}";

    private static string Point(ScreenPoint point) => $"{SvgNumber.Of(point.X)},{SvgNumber.Of(point.Y)}";
}

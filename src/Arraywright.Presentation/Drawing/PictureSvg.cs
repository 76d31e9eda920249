using System.Text;
using System.Xml;
using Arraywright.Presentation.Charts;
using OxyPlot;

namespace Arraywright.Presentation.Drawing;

/// <summary>
/// Writes a picture as SVG 1.1: presentation attributes in place of styles, so that it stands in a page under a strict content policy;
/// its title and description first, with ids of its own.
/// </summary>
internal static class PictureSvg
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    public static string Write(Picture picture)
    {
        StringBuilder text = new();
        using (XmlWriter svg = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, NewLineChars = "\n", Indent = true, IndentChars = "" }))
        {
            svg.WriteStartElement("svg", Namespace);
            svg.WriteAttributeString("viewBox", $"0 0 {SvgNumber.Of(picture.WidthPx)} {SvgNumber.Of(picture.HeightPx)}");
            svg.WriteAttributeString("width", SvgNumber.Of(picture.WidthPx));
            svg.WriteAttributeString("height", SvgNumber.Of(picture.HeightPx));
            svg.WriteAttributeString("role", "img");
            svg.WriteAttributeString("aria-labelledby", $"{picture.Id}-title {picture.Id}-text");
            svg.WriteAttributeString("font-family", "Helvetica, Arial, sans-serif");
            Say(svg, "title", $"{picture.Id}-title", picture.Title);
            Say(svg, "desc", $"{picture.Id}-text", picture.Description);
            Write(svg, new Shape.Box(default, picture.WidthPx, picture.HeightPx, null, Tone.Paper));
            foreach (Shape shape in picture.Shapes)
            {
                Write(svg, shape);
            }

            svg.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Say(XmlWriter svg, string element, string id, string text)
    {
        svg.WriteStartElement(element, Namespace);
        svg.WriteAttributeString("id", id);
        svg.WriteString(PlainText.Clean(text));
        svg.WriteEndElement();
    }

    private static void Write(XmlWriter svg, Shape shape)
    {
        switch (shape)
        {
            case Shape.Group group:
                svg.WriteStartElement("g", Namespace);
                svg.WriteElementString("title", Namespace, PlainText.Clean(group.Title));
                foreach (Shape part in group.Shapes)
                {
                    Write(svg, part);
                }

                break;
            case Shape.Path path:
                svg.WriteStartElement(path.IsClosed ? "polygon" : "polyline", Namespace);
                svg.WriteAttributeString("points", SvgNumber.Points(path.Points, point => point.XPx, point => point.YPx));
                Paint(svg, path.Fill, path.Stroke);
                break;
            case Shape.Box box:
                svg.WriteStartElement("rect", Namespace);
                svg.WriteAttributeString("x", SvgNumber.Of(box.From.XPx));
                svg.WriteAttributeString("y", SvgNumber.Of(box.From.YPx));
                svg.WriteAttributeString("width", SvgNumber.Of(box.WidthPx));
                svg.WriteAttributeString("height", SvgNumber.Of(box.HeightPx));
                Paint(svg, box.Fill, box.Stroke);
                break;
            case Shape.Disc disc:
                svg.WriteStartElement("circle", Namespace);
                svg.WriteAttributeString("cx", SvgNumber.Of(disc.Middle.XPx));
                svg.WriteAttributeString("cy", SvgNumber.Of(disc.Middle.YPx));
                svg.WriteAttributeString("r", SvgNumber.Of(disc.RadiusPx));
                Paint(svg, disc.Fill, disc.Stroke);
                break;
            case Shape.Words words:
                Write(svg, words);
                break;
            default:
                throw new InvalidOperationException("A shape of an unknown kind.");
        }

        svg.WriteEndElement();
    }

    private static void Write(XmlWriter svg, Shape.Words words)
    {
        svg.WriteStartElement("text", Namespace);
        svg.WriteAttributeString("x", SvgNumber.Of(words.At.XPx));
        svg.WriteAttributeString("y", SvgNumber.Of(words.At.YPx));
        svg.WriteAttributeString("font-size", SvgNumber.Of(words.SizePx));
        if (words.IsBold)
        {
            svg.WriteAttributeString("font-weight", "bold");
        }

        if (words.Anchor != Anchor.Start)
        {
            svg.WriteAttributeString("text-anchor", words.Anchor == Anchor.End ? "end" : "middle");
        }

        svg.WriteString(PlainText.Clean(words.Text));
    }

    private static void Paint(XmlWriter svg, Tone? fill, Pen? stroke)
    {
        svg.WriteAttributeString("fill", fill is null ? "none" : Color(fill.Value));
        if (stroke is { } pen)
        {
            svg.WriteAttributeString("stroke", Color(pen.Tone));
            svg.WriteAttributeString("stroke-width", SvgNumber.Of(pen.ThicknessPx));
            if (pen.Dash != Dash.Solid)
            {
                svg.WriteAttributeString("stroke-dasharray", string.Join(' ', pen.DashesPx.Select(SvgNumber.Of)));
            }
        }
    }

    private static string Color(Tone tone)
    {
        OxyColor color = PictureCanvas.Color(tone);
        return $"#{color.R:x2}{color.G:x2}{color.B:x2}";
    }
}

using System.Text.RegularExpressions;
using System.Xml;
using Arraywright.Presentation.Charts;

namespace Arraywright.Presentation.Report;

/// <summary>Writes elements and text into a page: figures tied to their units, and each name that runs from right to left set apart, so that what stands around it keeps its order.</summary>
/// <param name="xml">Where they go.</param>
/// <param name="report">Whose names they may hold.</param>
internal sealed partial class HtmlPage(XmlWriter xml, ReportDocument report)
{
    /// <summary>Unicode's own signs for the same, for drawings, where no element does it.</summary>
    private const string ApartInDrawings = "\u2068$0\u2069";

    private readonly Regex? _fromRight = NamePattern.Of(report.Names.Select(name => name.Text).Where(name => FromRight().IsMatch(name)));

    /// <summary>Begins an element.</summary>
    public void Begin(string element) => xml.WriteStartElement(element);

    /// <summary>Ends what was begun last; an element without content keeps its end tag where HTML needs one.</summary>
    public void End(bool isFull = false)
    {
        if (isFull)
        {
            xml.WriteFullEndElement();
        }
        else
        {
            xml.WriteEndElement();
        }
    }

    /// <summary>An attribute of the element begun last.</summary>
    public void Attribute(string name, string value) => xml.WriteAttributeString(name, Clean(value));

    /// <summary>An element that holds a text.</summary>
    public void Element(string element, string text)
    {
        Begin(element);
        Text(text);
        End(isFull: true);
    }

    /// <summary>A text.</summary>
    public void Text(string text)
    {
        string clean = Clean(text);
        int from = 0;
        foreach (Match name in _fromRight?.Matches(clean) ?? Enumerable.Empty<Match>())
        {
            xml.WriteString(clean[from..name.Index]);
            xml.WriteElementString("bdi", name.Value);
            from = name.Index + name.Length;
        }

        xml.WriteString(clean[from..]);
    }

    /// <summary>The title of the window, which holds no elements.</summary>
    public void Title(string text) => xml.WriteElementString("title", PlainText.Clean(text));

    /// <summary>A drawing as it is.</summary>
    public void Drawing(string svg) => xml.WriteRaw(_fromRight?.Replace(svg, ApartInDrawings) ?? svg);

    /// <summary>The page's own style.</summary>
    public void Style(string sheet) => xml.WriteRaw(sheet);

    private static string Clean(string text) => PlainText.Clean(TiedFigures.Of(text));

    /// <summary>Letters of the writings that run from right to left: Hebrew, Arabic and those between and after them.</summary>
    [GeneratedRegex(@"[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FromRight();
}

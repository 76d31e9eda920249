using System.Globalization;
using System.Xml.Linq;

namespace Arraywright.Presentation.Tests;

/// <summary>A chart read back from its SVG: what a viewer would see, and the scales of its axes by the figures along them.</summary>
internal sealed class SvgReading
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly XElement _root;

    public SvgReading(string svg) => _root = XDocument.Parse(svg).Root!;

    public XElement Root => _root;

    public string Title => _root.Element(Svg + "title")!.Value;

    public string Description => _root.Element(Svg + "desc")!.Value;

    public string[] Texts => [.. Elements("text").Select(text => text.Value)];

    /// <summary>Elements of a name, with the pixels a number attribute gives.</summary>
    public IEnumerable<XElement> Elements(string name) => _root.Descendants(Svg + name);

    /// <summary>A number of an element.</summary>
    public static double Number(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    /// <summary>Corners of a polyline.</summary>
    public static (double X, double Y)[] Points(XElement polyline) =>
    [
        .. polyline.Attribute("points")!.Value.Split(' ')
            .Select(point => point.Split(','))
            .Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture))),
    ];

    /// <summary>From a pixel across to the value of the axis below.</summary>
    public Func<double, double> Across()
    {
        (double Px, double Value)[] ticks = Ticks("middle", "x");
        return Scale(ticks);
    }

    /// <summary>From a pixel down to the value of each axis on the left, the lowest axis first.</summary>
    public Func<double, double>[] Up()
    {
        List<List<(double Px, double Value)>> axes = [];
        foreach ((double px, double value) in Ticks("end", "y").OrderByDescending(tick => tick.Px))
        {
            if (value == 0)
            {
                axes.Add([]);
            }

            axes[^1].Add((px - BaselinePx, value));
        }

        return [.. axes.Select(axis => Scale([.. axis]))];
    }

    /// <summary>How far below its tick the baseline of a figure of 13 pixels stands: that puts its middle there.</summary>
    private const double BaselinePx = 13 * 0.8 / 2.3;

    private (double Px, double Value)[] Ticks(string anchor, string attribute) =>
    [
        .. Elements("text")
            .Where(text => text.Attribute("text-anchor")?.Value == anchor && text.Attribute("transform") is null)
            .Where(text => double.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
            .Select(text => (Number(text, attribute), double.Parse(text.Value, CultureInfo.InvariantCulture))),
    ];

    private static Func<double, double> Scale((double Px, double Value)[] ticks)
    {
        (double Px, double Value) first = ticks.MinBy(tick => tick.Value);
        (double Px, double Value) last = ticks.MaxBy(tick => tick.Value);
        Assert.True(last.Value > first.Value);
        return px => first.Value + ((px - first.Px) * (last.Value - first.Value) / (last.Px - first.Px));
    }
}

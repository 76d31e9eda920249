using System.Xml.Linq;
using Arraywright.Presentation.Charts;
using CsCheck;
using OxyPlot;

namespace Arraywright.Presentation.Tests;

/// <summary>What holds for every chart, whatever the names in it.</summary>
public sealed class ChartProperties
{
    private static readonly HashSet<string> Drawn = ["svg", "title", "desc", "rect", "polyline", "polygon", "path", "ellipse", "text"];
    private static readonly HashSet<string> Said =
    [
        "viewBox", "width", "height", "role", "font-family", "x", "y", "cx", "cy", "rx", "ry", "points", "d", "transform", "fill", "stroke",
        "stroke-width", "stroke-dasharray", "shape-rendering", "font-size", "font-weight", "text-anchor", "xmlns",
    ];

    private static readonly string[] Hostile = ["<script>alert(1)</script>", "]]>&lt;", new('W', 200), "שלום עולם", "🐑🐄 sheep", "^{up}_{down}", "\u0007bell", "\ud83d half"];

    private static readonly Gen<string> Names = Gen.OneOf(
        Gen.String[0, 200],
        Gen.String[Gen.Char["<>&\"'^_{}]\u202e\u05e9\u0645\u0000\u001b\ud83d\udc11 Ww"], 1, 200],
        Gen.OneOf(Hostile));

    [Fact]
    public void Any_name_stays_text_and_inside_the_card() => Names.Sample(name =>
    {
        foreach (Chart chart in Charts(name))
        {
            SvgReading svg = new(chart.ToSvg());
            Assert.All(svg.Root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Drawn));
            Assert.All(svg.Root.DescendantsAndSelf().SelectMany(element => element.Attributes()), attribute => Assert.Contains(attribute.Name.LocalName, Said));
            Assert.All(svg.Elements("text").Where(text => text.Attribute("text-anchor") is null && text.Attribute("transform") is null), text => Assert.True(Right(text) <= chart.WidthPx, text.Value));
        }
    }, iter: 60);

    [Fact]
    public void Every_chart_has_a_name_and_its_figures_in_words_before_anything_drawn()
    {
        foreach (Chart chart in Charts("Lambing <shed> & field"))
        {
            SvgReading svg = new(chart.ToSvg());
            Assert.Equal("img", svg.Root.Attribute("role")!.Value);
            Assert.Equal(["title", "desc"], svg.Root.Elements().Take(2).Select(element => element.Name.LocalName));
            Assert.StartsWith("Lambing <shed> & field: ", svg.Title, StringComparison.Ordinal);
            Assert.Contains("store-a: 2*shed-120 | 2*shed-120", svg.Description, StringComparison.Ordinal);
            Assert.Matches("[0-9] (W|kWh)", svg.Description);
            Assert.Equal($"0 0 {chart.WidthPx} {chart.HeightPx}", svg.Root.Attribute("viewBox")!.Value);
            Assert.Contains("Lambing <shed> & field", svg.Texts);
        }
    }

    [Fact]
    public void Drawn_twice_a_chart_is_the_same_and_refers_to_nothing_outside()
    {
        foreach (Chart chart in Charts("Shed"))
        {
            string svg = chart.ToSvg();
            Assert.Equal(svg, chart.ToSvg());
            Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("http", svg.Replace("xmlns=\"http://www.w3.org/2000/svg\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.InRange(svg.Length, 3_000, 40_000);
        }
    }

    private static Chart[] Charts(string name)
    {
        Plan plan = SampleCurve.TwoHills.Plan with { Name = name };
        return
        [
            CurvePlot.Of(SampleCurve.TwoHills with { Plan = plan }),
            DayPlot.Of(SampleEnergy.Day with { Plan = plan }),
            YearPlot.Of(SampleEnergy.Year with { Plan = plan }),
        ];
    }

    /// <summary>Right end of a text in the widths of a common sans-serif font; what that font does not know counts as square.</summary>
    private static double Right(XElement text)
    {
        double sizePx = SvgReading.Number(text, "font-size");
        PortableDocumentFontFamily family = StandardFonts.Helvetica;
        (text.Attribute("font-weight") is null ? family.RegularFont : family.BoldFont)
            .Measure(string.Concat(text.Value.Where(sign => sign < 256)), sizePx, out double width, out _);
        return SvgReading.Number(text, "x") + width + (sizePx * text.Value.EnumerateRunes().Count(rune => rune.Value > 255 && rune.Value != 0x202e));
    }
}

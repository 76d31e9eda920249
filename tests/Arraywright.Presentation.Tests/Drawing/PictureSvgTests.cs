using System.Xml.Linq;
using Arraywright.Electrical;
using Arraywright.Presentation.Drawing;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>The drawings as SVG files.</summary>
public sealed class PictureSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Elements and their attributes in SVG 1.1 (W3C, second edition), of those a drawing needs; role and aria-labelledby are SVG 2 (W3C, section 5.13).</summary>
    private static readonly Dictionary<string, string[]> Standard = new(StringComparer.Ordinal)
    {
        ["svg"] = ["viewBox", "width", "height", "role", "aria-labelledby", "font-family", "xmlns"],
        ["title"] = ["id"],
        ["desc"] = ["id"],
        ["g"] = [],
        ["rect"] = ["x", "y", "width", "height", "fill", "stroke", "stroke-width", "stroke-dasharray"],
        ["circle"] = ["cx", "cy", "r", "fill", "stroke", "stroke-width", "stroke-dasharray"],
        ["polyline"] = ["points", "fill", "stroke", "stroke-width", "stroke-dasharray"],
        ["polygon"] = ["points", "fill", "stroke", "stroke-width", "stroke-dasharray"],
        ["text"] = ["x", "y", "font-size", "font-weight", "text-anchor"],
    };

    private static readonly string[] Hostile =
    [
        "<script>alert(1)</script>", "]]>&lt;\"'", new('W', 200), string.Join(' ', Enumerable.Repeat("long-name", 20)), "שלום עולם", "🐑🐄 sheep 👩‍🌾", "\u202eright to left", "\u0007bell", "\ud83d half", "", " ", "-", "a-",
    ];

    private static readonly Gen<string> Names = Gen.OneOf(Gen.String[0, 200], Gen.String[Gen.Char["<>&\"'-\u202e\u05e9\u0645\u0000\u001b\ud83d\udc11 Ww"], 1, 200], Gen.OneOf([.. Hostile.Select(Gen.Const)]));

    [Fact]
    public void Only_elements_and_attributes_of_the_standard_are_written_in_their_order()
    {
        foreach (XElement root in Drawn("shed-120").Select(picture => XDocument.Parse(picture.ToSvg()).Root!))
        {
            Assert.All(root.DescendantsAndSelf(), element => Assert.Equal(Svg, element.Name.Namespace));
            Assert.All(root.DescendantsAndSelf(), element => Assert.Empty(element.Attributes().Select(attribute => attribute.Name.LocalName).Except(Standard[element.Name.LocalName])));
            Assert.All(root.Descendants().Where(element => element.Name.LocalName is not ("g" or "svg")), element => Assert.Empty(element.Elements()));
            Assert.All(root.DescendantsAndSelf().Where(element => element.Name.LocalName is "g" or "svg"), element => Assert.Equal("title", element.Elements().First().Name.LocalName));
            Assert.All(root.Descendants().Attributes("points"), points => Assert.Matches(@"^-?[\d.]+,-?[\d.]+( -?[\d.]+,-?[\d.]+)+$", points.Value));
            Assert.All(root.Descendants().Where(element => element.Attribute("fill") is not null), element => Assert.Matches("^(none|#[0-9a-f]{6})$", element.Attribute("fill")!.Value));
        }
    }

    [Fact]
    public void A_reader_who_cannot_see_it_is_told_everything()
    {
        foreach (Picture picture in Drawn("shed-120"))
        {
            XElement root = XDocument.Parse(picture.ToSvg()).Root!;
            Assert.Equal("img", root.Attribute("role")!.Value);
            string[] ids = [.. root.Elements().Take(2).Select(element => element.Attribute("id")!.Value)];
            Assert.Equal(string.Join(' ', ids), root.Attribute("aria-labelledby")!.Value);
            Assert.All(ids, id => Assert.Matches("^[A-Za-z][A-Za-z0-9-]*$", id));
            string text = root.Element(Svg + "desc")!.Value;
            Assert.Contains("store-a: 2*shed-120 | 2*shed-120.", text, StringComparison.Ordinal);
            Assert.Contains("1, minus of panel 1 into plus of panel 2; ", text, StringComparison.Ordinal);
            Assert.Contains("into unit's socket.", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Both_drawings_of_two_designs_stand_in_one_page_without_sharing_an_id()
    {
        string[] ids =
        [
            .. Drawn("shed-120").Concat(SheetOf(SampleSheets.Parse("a"), SampleSheets.Parse("b"))).Select(picture => XDocument.Parse(picture.ToSvg()).Root!)
                .SelectMany(root => root.DescendantsAndSelf().Attributes("id")).Select(id => id.Value),
        ];
        Assert.Equal(8, ids.Length);
        Assert.Distinct(ids);
    }

    [Fact]
    public void Nothing_outside_is_referred_to_and_twice_drawn_it_is_the_same()
    {
        foreach (Picture picture in Drawn("shed-120"))
        {
            string svg = picture.ToSvg();
            Assert.Equal(svg, picture.ToSvg());
            Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("http", svg.Replace("xmlns=\"http://www.w3.org/2000/svg\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.InRange(svg.Length, 8_000, 45_000);
        }
    }

    [Fact]
    public void Any_name_stays_text_is_cut_in_the_drawing_and_whole_in_its_title() => Names.Sample(name =>
    {
        foreach (Picture picture in Drawn(name))
        {
            XElement root = XDocument.Parse(picture.ToSvg()).Root!;
            Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Standard.Keys));
            Assert.Equal(4, root.Descendants(Svg + "title").Count(title => title.Value.StartsWith("panel ", StringComparison.Ordinal) && title.Value.EndsWith(", " + Held(name), StringComparison.Ordinal)));
            DrawnGeometry drawn = new(picture);
            Assert.All(drawn.Texts, text => Assert.True(text.Right <= picture.WidthPx, text.What));
            Assert.All(drawn.Texts, text => Assert.DoesNotContain(drawn.Texts, other => other != text && text.Overlaps(other)));
        }
    }, iter: 100);

    [Theory]
    [InlineData("a + a | a + a", "diagram-two-by-two", true)]
    [InlineData("a + (b | b)", "diagram-block", false)]
    public void A_diagram_is_as_it_was(string wiring, string name, bool hasPieces) =>
        Golden.Matches($"{name}.svg", SampleSheets.Of(hasPieces, SampleSheets.Parse(wiring)).Diagram().ToSvg());

    [Fact]
    public void An_arrangement_is_as_it_was() =>
        Golden.Matches("arrangement-two-by-two.svg", SampleSheets.Of(true, SampleSheets.Parse("a + a | a + a")).Arrangement().ToSvg());

    /// <summary>As XML can hold it: what it cannot comes out as the sign for "unreadable".</summary>
    private static string Held(string name) => string.Concat(name.EnumerateRunes().Select(rune => rune.Value is < ' ' or 0x7f or 0xfffe or 0xffff ? "\ufffd" : rune.ToString()));

    private static Picture[] Drawn(string name)
    {
        Wiring two = Wiring.InSeries([new Wiring.Single(name), new Wiring.Single(name)]);
        return SheetOf(Wiring.InParallel([two, two]));
    }

    private static Picture[] SheetOf(params Wiring[] wirings)
    {
        DrawingSheet sheet = SampleSheets.Of(true, wirings);
        return [sheet.Diagram(), sheet.Arrangement()];
    }
}

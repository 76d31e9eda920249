using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Arraywright.Presentation.Report;

namespace Arraywright.Report.Tests;

public sealed partial class HtmlReportTests
{
    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void It_is_well_formed_says_all_refers_to_nothing_outside_and_stays_small(string name)
    {
        ReportDocument report = Scene.Report(name);
        string html = HtmlReport.Of(report);
        XElement page = Read(html);
        Assert.InRange(Encoding.UTF8.GetByteCount(html), 10_000, 600_000);
        string said = Squeezed(page.Value);
        Assert.All(Scene.Texts(report), text => Assert.Contains(Squeezed(text), said, StringComparison.Ordinal));
        Assert.DoesNotContain(page.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "image" or "use");
        Assert.All(page.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src" or "xlink"), attribute => Assert.StartsWith("#", attribute.Value, StringComparison.Ordinal));
        Assert.DoesNotMatch(Outside(), html);
        Assert.DoesNotContain(page.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName == "style");
    }

    [Theory]
    [MemberData(nameof(Scene.Names), MemberType = typeof(Scene))]
    public void Its_links_lead_to_its_sections_and_no_id_is_there_twice(string name)
    {
        ReportDocument report = Scene.Report(name);
        XElement page = Read(HtmlReport.Of(report));
        string[] ids = [.. page.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(report.Sections.Select(section => "#" + section.Id), page.Descendants("a").Select(link => link.Attribute("href")!.Value));
        Assert.All(page.Descendants("a"), link => Assert.Contains(link.Attribute("href")!.Value[1..], ids));
        Assert.Equal(report.Sections.Select(section => section.Title), page.Descendants("h2").Select(heading => heading.Value));
        Assert.Equal(report.Title, page.Element("head")!.Element("title")!.Value);
        Assert.Equal("en", page.Attribute("lang")!.Value);
    }

    [Fact]
    public void A_name_that_looks_like_markup_is_text()
    {
        XElement page = Read(HtmlReport.Of(Scene.Report("sixteen panels, hard names")));
        Assert.Equal(Scene.HardName, page.Descendants("h1").Single().Value);
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "b" or "i" or "script");
    }

    [Fact]
    public void A_name_from_right_to_left_is_set_apart_from_what_stands_around_it()
    {
        const string Hebrew = "לוח-120";
        XElement page = Read(HtmlReport.Of(Scene.Of(Scene.OtherLetters)));
        XText[] held = [.. page.Element("body")!.DescendantNodes().OfType<XText>().Where(text => text.Value.Contains(Hebrew, StringComparison.Ordinal))];
        Assert.Contains(held, text => text.Parent!.Name.LocalName == "bdi");
        Assert.Contains(held, text => text.Parent!.Name.LocalName == "text");
        Assert.All(held, text => Assert.True(text.Value == Hebrew && text.Parent!.Name.LocalName == "bdi" || !text.Value.Replace($"\u2068{Hebrew}\u2069", "", StringComparison.Ordinal).Contains(Hebrew, StringComparison.Ordinal), text.Value));
        Assert.DoesNotContain(page.Descendants("bdi"), apart => apart.Value.StartsWith('О'));
    }

    [Theory]
    [InlineData(" 105.0 V, at most 60 V", " 105.0\u00a0V, at most 60\u00a0V")]
    [InlineData("on 4 mm² of 2 panels", "on 4\u00a0mm² of 2 panels")]
    public void A_figure_keeps_its_unit_beside_it(string text, string expected) => Assert.Equal(expected, TiedFigures.Of(text));

    [Fact]
    public void The_same_plan_gives_the_same_bytes() =>
        Assert.Equal(HtmlReport.Of(Scene.Report("two inputs")), HtmlReport.Of(Scene.Report("two inputs")));

    [Fact]
    public void A_date_is_on_it_only_when_it_is_stated()
    {
        ReportDocument report = Scene.Report("four panels");
        Assert.DoesNotContain(Read(HtmlReport.Of(report)).Descendants("meta"), meta => meta.Attribute("name")?.Value == "date");
        XElement dated = Read(HtmlReport.Of(report with { Date = new DateOnly(2026, 6, 21) }));
        Assert.Equal("2026-06-21", dated.Descendants("meta").Single(meta => meta.Attribute("name")?.Value == "date").Attribute("content")!.Value);
        Assert.Contains("2026-06-21", dated.Element("body")!.Element("header")!.Value, StringComparison.Ordinal);
    }

    private static XElement Read(string html)
    {
        using XmlReader reader = XmlReader.Create(new StringReader(html), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader).Root!;
    }

    /// <summary>Without spaces: ties between figures and units, and where elements end, are no words.</summary>
    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    /// <summary>Anything that a browser might fetch; the name of the SVG namespace is none.</summary>
    [GeneratedRegex(@"url\(|@import|https?://(?!www\.w3\.org/2000/svg"")", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Outside();
}

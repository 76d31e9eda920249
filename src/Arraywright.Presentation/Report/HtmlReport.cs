using System.Globalization;
using System.Text;
using System.Xml;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report;

/// <summary>A report as one page of HTML that is well-formed XML too: nothing outside is referred to, nothing in it runs.</summary>
public static class HtmlReport
{
    /// <summary>Nothing may be loaded, nothing may run; only the page's own style counts.</summary>
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'";

    /// <summary>Writes it.</summary>
    public static string Of(ReportDocument report)
    {
        StringBuilder text = new("<!DOCTYPE html>\n");
        XmlWriterSettings settings = new() { OmitXmlDeclaration = true, NewLineChars = "\n", CheckCharacters = true };
        using (XmlWriter xml = XmlWriter.Create(text, settings))
        {
            HtmlPage page = new(xml, report);
            page.Begin("html");
            page.Attribute("lang", ReportDocument.Language);
            WriteHead(page, report);
            page.Begin("body");
            WriteTitle(page, report);
            WriteContents(page, report);
            page.Begin("main");
            foreach (ReportSection section in report.Sections)
            {
                WriteSection(page, section);
            }

            page.End();
            page.Element("footer", report.Program);
            page.End();
            page.End();
        }

        return text.Append('\n').ToString();
    }

    private static void WriteHead(HtmlPage page, ReportDocument report)
    {
        page.Begin("head");
        Meta(page, "charset", "utf-8", null);
        Meta(page, "http-equiv", "Content-Security-Policy", Policy);
        Meta(page, "name", "viewport", "width=device-width, initial-scale=1");
        page.Title(report.Title);
        Meta(page, "name", "description", report.Subject);
        Meta(page, "name", "generator", report.Program);
        if (report.Date is { } date)
        {
            Meta(page, "name", "date", Day(date));
        }

        page.Begin("style");
        page.Style(HtmlStyle.Sheet);
        page.End();
        page.End();
    }

    private static void Meta(HtmlPage page, string key, string name, string? content)
    {
        page.Begin("meta");
        page.Attribute(key, name);
        if (content is not null)
        {
            page.Attribute("content", content);
        }

        page.End();
    }

    private static void WriteTitle(HtmlPage page, ReportDocument report)
    {
        page.Begin("header");
        page.Begin("h1");
        page.Attribute("dir", "auto");
        page.Text(report.Title);
        page.End();
        page.Element("p", report.Subject + (report.Date is { } date ? $". {Day(date)}" : ""));
        page.End();
    }

    private static void WriteContents(HtmlPage page, ReportDocument report)
    {
        page.Begin("nav");
        page.Attribute("aria-label", "Contents");
        page.Begin("ol");
        foreach (ReportSection section in report.Sections)
        {
            page.Begin("li");
            page.Begin("a");
            page.Attribute("href", "#" + section.Id);
            page.Text(section.Title);
            page.End();
            page.End();
        }

        page.End();
        page.End();
    }

    private static void WriteSection(HtmlPage page, ReportSection section)
    {
        page.Begin("section");
        page.Attribute("id", section.Id);
        page.Attribute("aria-labelledby", section.Id + "-title");
        page.Begin("h2");
        page.Attribute("id", section.Id + "-title");
        page.Text(section.Title);
        page.End();
        foreach (ReportBlock block in section.Blocks)
        {
            WriteBlock(page, block);
        }

        page.End();
    }

    private static void WriteBlock(HtmlPage page, ReportBlock block)
    {
        switch (block)
        {
            case ReportBlock.Verdict verdict:
                WriteVerdict(page, verdict);
                break;
            case ReportBlock.Heading heading:
                page.Element("h3", heading.Text);
                break;
            case ReportBlock.Paragraph paragraph:
                page.Element("p", paragraph.Text);
                break;
            case ReportBlock.Bullets bullets:
                WriteBullets(page, bullets);
                break;
            case ReportBlock.Steps steps:
                WriteSteps(page, steps);
                break;
            case ReportBlock.Table table:
                HtmlTable.Write(page, table);
                break;
            case ReportBlock.Picture picture:
                WritePicture(page, picture.Shown);
                break;
        }
    }

    /// <summary>The word stands out by its size and its frame, and says by itself what its colour repeats.</summary>
    private static void WriteVerdict(HtmlPage page, ReportBlock.Verdict verdict)
    {
        string word = VerdictSentence.Word(verdict.Level);
        string rest = verdict.Sentence.StartsWith(word + ": ", StringComparison.Ordinal) ? verdict.Sentence[(word.Length + 2)..] : verdict.Sentence;
        page.Begin("p");
        page.Attribute("class", $"verdict {HtmlStyle.Class(verdict.Level)}");
        page.Element("strong", word + ":");
        page.Text(" " + rest);
        page.End();
    }

    private static void WritePicture(HtmlPage page, ReportPicture picture)
    {
        page.Begin("figure");
        WriteSvg(page, picture, picture.Narrow is null ? null : "wide");
        if (picture.Narrow is { } narrow)
        {
            WriteSvg(page, narrow, "narrow");
        }

        page.Element("figcaption", picture.Caption);
        page.End();
    }

    private static void WriteSvg(HtmlPage page, ReportPicture picture, string? screen)
    {
        page.Begin("div");
        if (screen is not null)
        {
            page.Attribute("class", screen);
        }

        page.Drawing(picture.ToSvg());
        page.End();
    }

    private static void WriteBullets(HtmlPage page, ReportBlock.Bullets bullets)
    {
        page.Begin("ul");
        foreach (ReportItem item in bullets.Items)
        {
            page.Begin("li");
            if (item.Lead.Length > 0)
            {
                page.Element("strong", item.Lead);
                page.Text(" ");
            }

            page.Text(item.Text);
            page.End();
        }

        page.End();
    }

    private static void WriteSteps(HtmlPage page, ReportBlock.Steps steps)
    {
        page.Begin("ol");
        page.Attribute("class", "steps");
        foreach (ReportStep step in steps.Items)
        {
            page.Begin("li");
            page.Element("strong", step.Title);
            foreach (string line in step.Do)
            {
                page.Element("p", line);
            }

            if (step.Expected is { } expected)
            {
                HtmlTable.Write(page, expected);
            }

            if (step.IfNot is { } ifNot)
            {
                page.Begin("p");
                page.Attribute("class", "if-not");
                page.Element("strong", "If not:");
                page.Text(" " + ifNot);
                page.End();
            }

            page.End();
        }

        page.End();
    }

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

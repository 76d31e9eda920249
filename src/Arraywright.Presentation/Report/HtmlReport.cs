using System.Globalization;
using System.Text;
using System.Xml;
using Arraywright.Presentation.Charts;
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
        using (XmlWriter page = XmlWriter.Create(text, settings))
        {
            page.WriteStartElement("html");
            page.WriteAttributeString("lang", ReportDocument.Language);
            WriteHead(page, report);
            page.WriteStartElement("body");
            WriteTitle(page, report);
            WriteContents(page, report);
            page.WriteStartElement("main");
            foreach (ReportSection section in report.Sections)
            {
                WriteSection(page, section);
            }

            page.WriteEndElement();
            page.WriteElementString("footer", report.Program);
            page.WriteEndElement();
            page.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void WriteHead(XmlWriter page, ReportDocument report)
    {
        page.WriteStartElement("head");
        Meta(page, "charset", "utf-8", null);
        Meta(page, "http-equiv", "Content-Security-Policy", Policy);
        Meta(page, "name", "viewport", "width=device-width, initial-scale=1");
        page.WriteElementString("title", PlainText.Clean(report.Title));
        Meta(page, "name", "description", report.Subject);
        Meta(page, "name", "generator", report.Program);
        if (report.Date is { } date)
        {
            Meta(page, "name", "date", Day(date));
        }

        page.WriteStartElement("style");
        page.WriteRaw(HtmlStyle.Sheet);
        page.WriteEndElement();
        page.WriteEndElement();
    }

    private static void Meta(XmlWriter page, string key, string name, string? content)
    {
        page.WriteStartElement("meta");
        page.WriteAttributeString(key, name);
        if (content is not null)
        {
            page.WriteAttributeString("content", PlainText.Clean(content));
        }

        page.WriteEndElement();
    }

    private static void WriteTitle(XmlWriter page, ReportDocument report)
    {
        page.WriteStartElement("header");
        page.WriteStartElement("h1");
        page.WriteAttributeString("dir", "auto");
        page.WriteString(PlainText.Clean(report.Title));
        page.WriteEndElement();
        page.WriteElementString("p", report.Subject + (report.Date is { } date ? $". {Day(date)}" : ""));
        page.WriteEndElement();
    }

    private static void WriteContents(XmlWriter page, ReportDocument report)
    {
        page.WriteStartElement("nav");
        page.WriteAttributeString("aria-label", "Contents");
        page.WriteStartElement("ol");
        foreach (ReportSection section in report.Sections)
        {
            page.WriteStartElement("li");
            page.WriteStartElement("a");
            page.WriteAttributeString("href", "#" + section.Id);
            page.WriteString(section.Title);
            page.WriteEndElement();
            page.WriteEndElement();
        }

        page.WriteEndElement();
        page.WriteEndElement();
    }

    private static void WriteSection(XmlWriter page, ReportSection section)
    {
        page.WriteStartElement("section");
        page.WriteAttributeString("id", section.Id);
        page.WriteAttributeString("aria-labelledby", section.Id + "-title");
        page.WriteStartElement("h2");
        page.WriteAttributeString("id", section.Id + "-title");
        page.WriteString(section.Title);
        page.WriteEndElement();
        foreach (ReportBlock block in section.Blocks)
        {
            WriteBlock(page, block);
        }

        page.WriteEndElement();
    }

    private static void WriteBlock(XmlWriter page, ReportBlock block)
    {
        switch (block)
        {
            case ReportBlock.Verdict verdict:
                WriteVerdict(page, verdict);
                break;
            case ReportBlock.Heading heading:
                page.WriteElementString("h3", Text(heading.Text));
                break;
            case ReportBlock.Paragraph paragraph:
                page.WriteElementString("p", Text(paragraph.Text));
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
    private static void WriteVerdict(XmlWriter page, ReportBlock.Verdict verdict)
    {
        string word = VerdictSentence.Word(verdict.Level);
        string rest = verdict.Sentence.StartsWith(word + ": ", StringComparison.Ordinal) ? verdict.Sentence[(word.Length + 2)..] : verdict.Sentence;
        page.WriteStartElement("p");
        page.WriteAttributeString("class", $"verdict {HtmlStyle.Class(verdict.Level)}");
        page.WriteElementString("strong", word + ":");
        page.WriteString(" " + Text(rest));
        page.WriteEndElement();
    }

    private static void WritePicture(XmlWriter page, ReportPicture picture)
    {
        page.WriteStartElement("figure");
        WriteSvg(page, picture, picture.Narrow is null ? null : "wide");
        if (picture.Narrow is { } narrow)
        {
            WriteSvg(page, narrow, "narrow");
        }

        page.WriteElementString("figcaption", Text(picture.Caption));
        page.WriteEndElement();
    }

    private static void WriteSvg(XmlWriter page, ReportPicture picture, string? screen)
    {
        page.WriteStartElement("div");
        if (screen is not null)
        {
            page.WriteAttributeString("class", screen);
        }

        page.WriteRaw(picture.ToSvg());
        page.WriteEndElement();
    }

    private static void WriteBullets(XmlWriter page, ReportBlock.Bullets bullets)
    {
        page.WriteStartElement("ul");
        foreach (ReportItem item in bullets.Items)
        {
            page.WriteStartElement("li");
            if (item.Lead.Length > 0)
            {
                page.WriteElementString("strong", Text(item.Lead));
                page.WriteString(" ");
            }

            page.WriteString(Text(item.Text));
            page.WriteEndElement();
        }

        page.WriteEndElement();
    }

    private static void WriteSteps(XmlWriter page, ReportBlock.Steps steps)
    {
        page.WriteStartElement("ol");
        page.WriteAttributeString("class", "steps");
        foreach (ReportStep step in steps.Items)
        {
            page.WriteStartElement("li");
            page.WriteElementString("strong", Text(step.Title));
            foreach (string line in step.Do)
            {
                page.WriteElementString("p", Text(line));
            }

            if (step.Expected is { } expected)
            {
                HtmlTable.Write(page, expected);
            }

            if (step.IfNot is { } ifNot)
            {
                page.WriteStartElement("p");
                page.WriteAttributeString("class", "if-not");
                page.WriteElementString("strong", "If not:");
                page.WriteString(" " + Text(ifNot));
                page.WriteEndElement();
            }

            page.WriteEndElement();
        }

        page.WriteEndElement();
    }

    /// <summary>Text as a page holds it, figures tied to their units.</summary>
    internal static string Text(string text) => PlainText.Clean(TiedFigures.Of(text));

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

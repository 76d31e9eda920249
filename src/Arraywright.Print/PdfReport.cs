using Arraywright.Presentation.Report;
using Arraywright.Print.Setting;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Arraywright.Print;

/// <summary>A report as a PDF: A4, tagged for readers who hear it, with bookmarks, links and real text in an embedded font.</summary>
public static class PdfReport
{
    /// <summary>What the file says it was made at where no date is stated: never the clock's, so that a plan gives the same bytes.</summary>
    private static readonly DateOnly NoDate = new(2000, 1, 1);

    /// <summary>A link leads to a little above its heading.</summary>
    private const double AbovePt = 10;

    /// <summary>Sets it.</summary>
    public static PdfFile Of(ReportDocument report)
    {
        Letters letters = new(report.Names);
        List<List<Placed>> pages = Pager.Pages([.. new BlockSetter(letters).Strips(report)]);
        Dictionary<string, Target> targets = pages
            .SelectMany((page, index) => page.Where(placed => placed.Strip.Anchor is not null).Select(placed => (placed.Strip.Anchor, Target: new Target(index + 1, Layout.PageHeightPt - placed.TopPt + AbovePt))))
            .ToDictionary(pair => pair.Anchor!, pair => pair.Target, StringComparer.Ordinal);
        using PdfDocument document = Empty(report);
        UAManager accessible = UAManager.ForDocument(document);
        accessible.SetDocumentLanguage(ReportDocument.Language);
        Running running = new(letters, report, pages.Count);
        Dictionary<string, string> titles = report.Sections.ToDictionary(section => section.Id, section => section.Title, StringComparer.Ordinal);
        for (int index = 0; index < pages.Count; index++)
        {
            PdfPage page = document.AddPage();
            page.Size = PageSize.A4;
            using XGraphics graphics = XGraphics.FromPdfPage(page);
            Sheet sheet = new(graphics, accessible.StructureBuilder, targets);
            running.Draw(sheet, index + 1);
            foreach ((Strip strip, double topPt) in pages[index])
            {
                if (strip.Anchor is { } anchor)
                {
                    PdfOutline entry = document.Outlines.Add(titles[anchor], page, opened: true);
                    entry.PageDestinationType = PdfPageDestinationType.Xyz;
                    entry.Left = 0;
                    entry.Top = targets[anchor].FromBottomPt;
                }

                strip.Draw(sheet, topPt);
            }
        }

        using MemoryStream stream = new();
        document.Save(stream, closeStream: false);
        return new PdfFile(SteadyBytes.Of(stream.ToArray()), pages.Count, letters.IsEverySignKnown && letters.StandIns.All.Count == 0);
    }

    private static PdfDocument Empty(ReportDocument report)
    {
        PdfDocument document = new();
        document.Info.Title = report.Title;
        document.Info.Subject = report.Subject;
        document.Info.Creator = report.Program;
        document.Info.CreationDate = (report.Date ?? NoDate).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.PageMode = PdfPageMode.UseOutlines;
        return document;
    }
}

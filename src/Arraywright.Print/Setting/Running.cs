using Arraywright.Presentation.Report;
using PdfSharp.Drawing;

namespace Arraywright.Print.Setting;

/// <summary>What stands at the head and foot of every page.</summary>
internal sealed class Running(Letters letters, ReportDocument report, int pageCount)
{
    private readonly Words _words = new(letters);
    private readonly XFont _font = letters.Font(Layout.SmallPt, isBold: false);

    public void Draw(Sheet sheet, int page)
    {
        sheet.BeginOrnament();
        if (page > 1)
        {
            List<TextLine> title = _words.Lines(Layout.WidthPt, (report.Title, _font));
            if (title.Count > 1)
            {
                title = _words.Lines(Layout.WidthPt, (title[0].Runs[0].Text[..^2] + "…", _font));
            }

            sheet.Write(title[0], Layout.LeftPt, Layout.TopPt - 26, Layout.SmallPt, Layout.Faint);
        }

        TextLine number = _words.Lines(Layout.WidthPt, ($"page {page} of {pageCount}", _font))[0];
        sheet.Write(_words.Lines(Layout.WidthPt - 100, (report.Program, _font))[0], Layout.LeftPt, Layout.BottomPt + 14, Layout.SmallPt, Layout.Faint);
        sheet.Write(number, Layout.RightPt - number.WidthPt, Layout.BottomPt + 14, Layout.SmallPt, Layout.Faint);
        sheet.End();
    }
}

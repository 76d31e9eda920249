using Arraywright.Presentation.Report;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Arraywright.Print.Setting;

/// <summary>Sets tables: columns as wide as their longest word needs and then by their weight, rows whole, the head again on each page.</summary>
internal sealed class TableSetter(Letters letters)
{
    private const double PaddingPt = 4;

    /// <summary>A row longer than this is cut into several.</summary>
    private const int MostLines = 36;

    /// <summary>A table of up to this height stays on one page; a longer one is cut, but not behind its first row or before its last.</summary>
    private const double ShortPt = 170;

    /// <summary>No word makes a column wider than this share of the table.</summary>
    private const double WidestShare = 0.4;

    private readonly Words _words = new(letters);

    /// <summary>The strips of a table.</summary>
    public IEnumerable<Strip> Strips(ReportBlock.Table table, double indentPt)
    {
        double leftPt = Layout.LeftPt + indentPt;
        double[] widthsPt = WidthsPt(table, Layout.WidthPt - indentPt);
        Strip? head = table.Columns.Any(column => column.Title.Length > 0) ? Head(table, leftPt, widthsPt, PdfBlockLevelElementTag.TableHeaderCell) : null;
        Strip? again = head is null ? null : Head(table, leftPt, widthsPt, null);
        List<TextLine> caption = _words.Lines(Layout.WidthPt - indentPt, (table.Caption, letters.Font(Layout.SmallPt, isBold: true)));
        yield return Strip.Gap(5);
        yield return new Strip((caption.Count * Layout.Leading * Layout.SmallPt) + 3, (sheet, topPt) =>
        {
            sheet.Begin(PdfBlockLevelElementTag.Table);
            sheet.Begin(PdfGroupingElementTag.Caption);
            Write(sheet, caption, leftPt, topPt, Layout.Ink);
            sheet.End();
        })
        {
            KeepsWithNext = true,
        };
        if (head is not null)
        {
            yield return head with { KeepsWithNext = true };
        }

        yield return Strip.Act(sheet => sheet.Begin(PdfBlockLevelElementTag.TableBodyRowGroup), keepsWithNext: true);
        Strip[][] rows = [.. table.Rows.Select(row => Row(table, row, leftPt, widthsPt).ToArray())];
        bool isShort = rows.Sum(strips => strips.Sum(strip => strip.HeightPt)) <= ShortPt;
        for (int index = 0; index < rows.Length; index++)
        {
            bool isTogether = index < rows.Length - 1 && (isShort || index == 0 || index == rows.Length - 2);
            rows[index][^1] = rows[index][^1] with { KeepsWithNext = isTogether };
            foreach (Strip strip in rows[index])
            {
                yield return strip with { Head = again };
            }
        }

        yield return new Strip(1, (sheet, topPt) =>
        {
            sheet.End();
            sheet.End();
            sheet.Rule(leftPt, leftPt + widthsPt.Sum(), topPt, 0.5, Layout.Line);
        });
        yield return Strip.Gap(7);
    }

    private Strip Head(ReportBlock.Table table, double leftPt, double[] widthsPt, PdfBlockLevelElementTag? tag)
    {
        List<TextLine>[] cells = [.. table.Columns.Select((column, index) => _words.Lines(widthsPt[index] - (2 * PaddingPt), (column.Title, letters.Font(Layout.SmallPt, isBold: true))))];
        double heightPt = HeightPt(cells.Max(lines => lines.Count));
        return new Strip(heightPt, (sheet, topPt) =>
        {
            sheet.Fill(new XRect(leftPt, topPt, widthsPt.Sum(), heightPt), Layout.Pale);
            if (tag is null)
            {
                sheet.BeginOrnament();
            }
            else
            {
                sheet.Begin(PdfBlockLevelElementTag.TableHeadRowGroup);
            }

            Cells(sheet, table, cells, leftPt, topPt, widthsPt, tag is not null, _ => PdfBlockLevelElementTag.TableHeaderCell, _ => Layout.Ink);
            sheet.End();
        });
    }

    private IEnumerable<Strip> Row(ReportBlock.Table table, ReportRow row, double leftPt, double[] widthsPt)
    {
        List<TextLine>[] cells = [.. row.Cells.Select((cell, index) => _words.Lines(widthsPt[index] - (2 * PaddingPt), (cell, letters.Font(Layout.SmallPt, isBold: index == 0))))];
        int most = Math.Max(1, cells.Max(lines => lines.Count));
        for (int from = 0; from < most; from += MostLines)
        {
            List<TextLine>[] part = [.. cells.Select(lines => lines.Skip(from).Take(MostLines).ToList())];
            bool isFirst = from == 0;
            yield return new Strip(HeightPt(part.Max(lines => lines.Count)), (sheet, topPt) =>
            {
                if (isFirst)
                {
                    sheet.Rule(leftPt, leftPt + widthsPt.Sum(), topPt, 0.5, Layout.Line);
                }

                Cells(sheet, table, part, leftPt, topPt, widthsPt, isTagged: true, Tag, column => column == 0 && row.Level is { } level ? Layout.Of(level) : Layout.Ink);
            })
            {
                KeepsWithNext = row.Notes.Length > 0 && from + MostLines >= most,
            };
        }

        for (int note = 0; note < row.Notes.Length; note++)
        {
            List<TextLine> lines = _words.Lines(widthsPt.Sum() - widthsPt[0] - (2 * PaddingPt), (row.Notes[note], letters.Font(Layout.SmallPt, isBold: false)));
            yield return Note(lines, leftPt + widthsPt[0] + PaddingPt) with { KeepsWithNext = note < row.Notes.Length - 1 };
        }
    }

    /// <summary>A note has a row of its own: an empty head and one cell over all other columns.</summary>
    private static Strip Note(List<TextLine> lines, double leftPt) => new((lines.Count * Layout.Leading * Layout.SmallPt) + 3, (sheet, topPt) =>
    {
        sheet.Begin(PdfBlockLevelElementTag.TableRow);
        sheet.Begin(PdfBlockLevelElementTag.TableDataCell);
        Write(sheet, lines, leftPt, topPt, Layout.Faint);
        sheet.End();
        sheet.End();
    });

    private static PdfBlockLevelElementTag Tag(int column) => column == 0 ? PdfBlockLevelElementTag.TableHeaderCell : PdfBlockLevelElementTag.TableDataCell;

    private static void Cells(
        Sheet sheet,
        ReportBlock.Table table,
        List<TextLine>[] cells,
        double leftPt,
        double topPt,
        double[] widthsPt,
        bool isTagged,
        Func<int, PdfBlockLevelElementTag> tag,
        Func<int, XColor> color)
    {
        if (isTagged)
        {
            sheet.Begin(PdfBlockLevelElementTag.TableRow);
        }

        for (int column = 0; column < cells.Length; column++)
        {
            if (isTagged)
            {
                sheet.Begin(tag(column));
            }

            for (int i = 0; i < cells[column].Count; i++)
            {
                TextLine line = cells[column][i];
                double fromPt = table.Columns[column].IsNumber ? widthsPt[column] - PaddingPt - line.WidthPt : PaddingPt;
                sheet.Write(line, leftPt + fromPt, topPt + 3 + (i * Layout.Leading * Layout.SmallPt), Layout.SmallPt, color(column));
            }

            if (isTagged)
            {
                sheet.End();
            }

            leftPt += widthsPt[column];
        }

        if (isTagged)
        {
            sheet.End();
        }
    }

    private static void Write(Sheet sheet, List<TextLine> lines, double leftPt, double topPt, XColor color)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            sheet.Write(lines[i], leftPt, topPt + (i * Layout.Leading * Layout.SmallPt), Layout.SmallPt, color);
        }
    }

    private static double HeightPt(int lines) => (lines * Layout.Leading * Layout.SmallPt) + 5;

    /// <summary>Each column has at least what its longest word needs; the rest goes by weight.</summary>
    private double[] WidthsPt(ReportBlock.Table table, double widthPt)
    {
        double[] leastPt = [.. table.Columns.Select((column, index) => Math.Min(WidestShare * widthPt, (2 * PaddingPt) + LongestPt(table, index)))];
        bool[] isFixed = new bool[leastPt.Length];
        double[] widthsPt = new double[leastPt.Length];
        for (bool again = true; again;)
        {
            again = false;
            double freePt = widthPt - leastPt.Where((_, index) => isFixed[index]).Sum();
            double weight = table.Columns.Where((_, index) => !isFixed[index]).Sum(column => column.Weight);
            for (int i = 0; i < widthsPt.Length; i++)
            {
                widthsPt[i] = isFixed[i] ? leastPt[i] : freePt * table.Columns[i].Weight / weight;
                if (!isFixed[i] && widthsPt[i] < leastPt[i] && leastPt.Sum() <= widthPt)
                {
                    isFixed[i] = true;
                    again = true;
                }
            }
        }

        return widthsPt;
    }

    private double LongestPt(ReportBlock.Table table, int column)
    {
        XFont bold = letters.Font(Layout.SmallPt, isBold: true);
        XFont font = column == 0 ? bold : letters.Font(Layout.SmallPt, isBold: false);
        double WordsPt(string text, XFont of) => _words.LongestPt(text, of);
        return table.Rows.Select(row => WordsPt(row.Cells[column], font)).Append(WordsPt(table.Columns[column].Title, bold)).Max();
    }
}

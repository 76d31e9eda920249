using System.Collections.Immutable;
using Arraywright.Presentation.Report;
using Arraywright.Presentation.Terminal;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Arraywright.Print.Setting;

/// <summary>Turns the blocks of a report into strips.</summary>
internal sealed class BlockSetter(Letters letters)
{
    private const double IndentPt = 20;
    private const double VerdictPt = 11;
    private const double VerdictWordPt = 14;
    private const double PaddingPt = 9;

    /// <summary>From the pixels a picture is laid out for to points: its text comes out as large as the report's.</summary>
    private const double PointsPerPixel = 0.74;
    private const double HighestPicturePt = 670;

    /// <summary>Smaller no picture is set to fit what is left of a page, and no drawing at all, but cut into several: the smallest text, the numbers of joints, is 10 pixels and so 6 points.</summary>
    private const double LeastPointsPerPixel = 0.6;

    private readonly Words _words = new(letters);
    private readonly TableSetter _tables = new(letters);

    /// <summary>The whole report.</summary>
    public IEnumerable<Strip> Strips(ReportDocument report)
    {
        // Only when everything is set is it known whether a sign was missing; the remark on that stands on the first page.
        Strip[] title = [.. Title(report)];
        Strip[] sections = [.. report.Sections.SelectMany(Section)];
        return [.. title, .. Missing(), .. Contents(report), .. sections];
    }

    /// <summary>What stands for names and signs that the font lacks; nothing where it has all.</summary>
    private IEnumerable<Strip> Missing()
    {
        IReadOnlyCollection<string> standIns = letters.StandIns.All;
        string names = standIns.Count == 0 ? "" : $" {string.Join(", ", standIns)} {(standIns.Count == 1 ? "stands for a name" : "stand for names")} in other letters: A is the first of its kind in the plan file, B the second.";
        string signs = letters.IsEverySignKnown ? "" : " A \"?\" stands for one sign.";
        return names.Length + signs.Length == 0 ? [] : Block(new ReportBlock.Paragraph($"This print has Latin, Greek and Cyrillic letters only.{names}{signs} The same report as a page (.html) shows everything as it is written."), 0);
    }

    private IEnumerable<Strip> Title(ReportDocument report)
    {
        string about = report.Subject + (report.Date is { } date ? $". {date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}" : "");
        return
        [
            .. Text(PdfBlockLevelElementTag.Heading1, 0, Layout.TitlePt, Layout.Ink, keepsWithNext: true, (report.Title, letters.Font(Layout.TitlePt, isBold: true))),
            .. Text(PdfBlockLevelElementTag.Paragraph, 0, Layout.TextPt, Layout.Faint, keepsWithNext: true, (about, letters.Font(Layout.TextPt, isBold: false))),
            Strip.Gap(10),
        ];
    }

    private IEnumerable<Strip> Contents(ReportDocument report)
    {
        yield return Strip.Act(sheet => sheet.Begin(PdfGroupingElementTag.TableOfContents), keepsWithNext: true);
        foreach (ReportSection section in report.Sections)
        {
            yield return ContentsLine(section);
        }

        yield return Strip.Act(sheet => sheet.End(), keepsWithNext: false);
    }

    private Strip ContentsLine(ReportSection section)
    {
        XFont font = letters.Font(Layout.TextPt, isBold: false);
        double heightPt = (Layout.Leading * Layout.TextPt) + 1;
        return new Strip(heightPt, (sheet, topPt) =>
        {
            Target target = sheet.Targets[section.Id];
            TextLine number = _words.Lines(60, ($"{target.Page}", font))[0];
            sheet.Begin(PdfGroupingElementTag.TableOfContentsItem);
            sheet.BeginLink(new XRect(Layout.LeftPt, topPt, 300, heightPt), target, $"{section.Title}, page {target.Page}");
            sheet.Write(_words.Lines(270, (section.Title, font))[0], Layout.LeftPt, topPt, Layout.TextPt, Layout.Ink);
            sheet.Write(number, Layout.LeftPt + 300 - number.WidthPt, topPt, Layout.TextPt, Layout.Ink);
            sheet.End();
            sheet.End();
        });
    }

    private IEnumerable<Strip> Section(ReportSection section)
    {
        List<TextLine> lines = _words.Lines(Layout.WidthPt, (section.Title, letters.Font(Layout.SectionPt, isBold: true)));
        double heightPt = (lines.Count * Layout.Leading * Layout.SectionPt) + 7;
        return
        [
            Strip.Gap(20),
            Strip.Act(sheet => sheet.Begin(PdfGroupingElementTag.Section), keepsWithNext: true),
            new Strip(heightPt, (sheet, topPt) =>
            {
                Write(sheet, PdfBlockLevelElementTag.Heading2, lines, 0, topPt, Layout.SectionPt, Layout.Ink);
                sheet.Rule(Layout.LeftPt, Layout.RightPt, topPt + heightPt - 5, 1, Layout.Line);
            })
            {
                Anchor = section.Id,
                KeepsWithNext = true,
            },
            .. Introduction(section),
            .. section.Blocks.Skip(1).SelectMany(block => Block(block, 0)),
            Strip.Act(sheet => sheet.End(), keepsWithNext: false),
        ];
    }

    /// <summary>The first block; a paragraph that leads to a picture does not stay behind alone with its heading.</summary>
    private IEnumerable<Strip> Introduction(ReportSection section) => section.Blocks switch
    {
        [] => [],
        [ReportBlock.Paragraph paragraph, ReportBlock.Picture, ..] => Paragraph(paragraph, 0, keepsWithNext: true),
        [var first, ..] => Block(first, 0),
    };

    private IEnumerable<Strip> Paragraph(ReportBlock.Paragraph paragraph, double indentPt, bool keepsWithNext) =>
        [.. Text(PdfBlockLevelElementTag.Paragraph, indentPt, Layout.TextPt, Layout.Ink, keepsWithNext, (paragraph.Text, letters.Font(Layout.TextPt, isBold: false))), Strip.Gap(4)];

    private IEnumerable<Strip> Block(ReportBlock block, double indentPt) => block switch
    {
        ReportBlock.Verdict verdict => [Verdict(verdict), Strip.Gap(6)],
        ReportBlock.Heading heading => [Strip.Gap(8), .. Text(PdfBlockLevelElementTag.Heading3, indentPt, Layout.HeadingPt, Layout.Ink, keepsWithNext: true, (heading.Text, letters.Font(Layout.HeadingPt, isBold: true)))],
        ReportBlock.Paragraph paragraph => Paragraph(paragraph, indentPt, keepsWithNext: false),
        ReportBlock.Bullets bullets => List(bullets.Items.Select(item => ("•", Text(PdfBlockLevelElementTag.ListBody, IndentPt, Layout.TextPt, Layout.Ink, keepsWithNext: false, (item.Lead, letters.Font(Layout.TextPt, isBold: true)), (item.Text, letters.Font(Layout.TextPt, isBold: false)))))),
        ReportBlock.Steps steps => List(steps.Items.Select((step, index) => ($"{index + 1}.", Step(step)))),
        ReportBlock.Table table => _tables.Strips(table, indentPt),
        ReportBlock.Picture picture => Picture(picture.Shown),
        _ => throw new InvalidOperationException("A block of an unknown kind."),
    };

    private Strip Verdict(ReportBlock.Verdict verdict)
    {
        string word = VerdictSentence.Word(verdict.Level);
        string rest = verdict.Sentence.StartsWith(word + ": ", StringComparison.Ordinal) ? verdict.Sentence[(word.Length + 2)..] : verdict.Sentence;
        double leftPt = PaddingPt + 5;
        List<TextLine> lines = _words.Lines(
            Layout.WidthPt - leftPt - PaddingPt,
            (word + ":", letters.Font(VerdictWordPt, isBold: true)),
            (rest, letters.Font(VerdictPt, isBold: false)));
        double heightPt = (lines.Count * Layout.Leading * VerdictWordPt) + (2 * PaddingPt);
        return new Strip(heightPt, (sheet, topPt) =>
        {
            sheet.Fill(new XRect(Layout.LeftPt, topPt, Layout.WidthPt, heightPt), Layout.Pale);
            sheet.Fill(new XRect(Layout.LeftPt, topPt, 5, heightPt), Layout.Of(verdict.Level));
            sheet.Begin(PdfBlockLevelElementTag.Paragraph);
            for (int i = 0; i < lines.Count; i++)
            {
                foreach (Run run in lines[i].Runs)
                {
                    XColor color = run.Font.Bold ? Layout.Of(verdict.Level) : Layout.Ink;
                    sheet.Write(new TextLine([run], 0), Layout.LeftPt + leftPt, topPt + PaddingPt + (i * Layout.Leading * VerdictWordPt), VerdictWordPt, color);
                }
            }

            sheet.End();
        });
    }

    /// <summary>Entries with a label before each; an entry's parts stay on one page where they fit.</summary>
    private IEnumerable<Strip> List(IEnumerable<(string Label, IEnumerable<Strip> Body)> entries)
    {
        yield return Strip.Act(sheet => sheet.Begin(PdfBlockLevelElementTag.List), keepsWithNext: true);
        foreach ((string label, IEnumerable<Strip> strips) in entries)
        {
            TextLine sign = _words.Lines(IndentPt, (label, letters.Font(Layout.TextPt, isBold: true)))[0];
            yield return new Strip(0, (sheet, topPt) =>
            {
                sheet.Begin(PdfBlockLevelElementTag.ListItem);
                sheet.Begin(PdfBlockLevelElementTag.Label);
                sheet.Write(sign, Layout.LeftPt + 2, topPt, Layout.TextPt, Layout.Ink);
                sheet.End();
            })
            {
                KeepsWithNext = true,
            };

            Strip[] body = [.. strips];
            for (int i = 0; i < body.Length; i++)
            {
                yield return i < body.Length - 1 ? body[i] with { KeepsWithNext = true } : body[i];
            }

            yield return Strip.Act(sheet => sheet.End(), keepsWithNext: false);
            yield return Strip.Gap(4);
        }

        yield return Strip.Act(sheet => sheet.End(), keepsWithNext: false);
    }

    private IEnumerable<Strip> Step(ReportStep step)
    {
        bool isAll = step.Do.IsEmpty && step.Expected is null && step.IfNot is null;
        XFont plain = letters.Font(Layout.TextPt, isBold: false);
        return
        [
            Strip.Act(sheet => sheet.Begin(PdfBlockLevelElementTag.ListBody), keepsWithNext: true),
            .. Text(PdfBlockLevelElementTag.Paragraph, IndentPt, Layout.TextPt, Layout.Ink, keepsWithNext: false, (step.Title, letters.Font(Layout.TextPt, isBold: !isAll))),
            .. step.Do.SelectMany(line => Text(PdfBlockLevelElementTag.Paragraph, IndentPt, Layout.TextPt, Layout.Ink, keepsWithNext: false, (line, plain))),
            .. step.Expected is { } table ? _tables.Strips(table, IndentPt) : [],
            .. step.IfNot is { } ifNot
                ? Text(PdfBlockLevelElementTag.Paragraph, IndentPt, Layout.TextPt, Layout.Ink, keepsWithNext: false, ("If not:", letters.Font(Layout.TextPt, isBold: true)), (ifNot, plain))
                : [],
            Strip.Act(sheet => sheet.End(), keepsWithNext: false),
        ];
    }

    private IEnumerable<Strip> Picture(ReportPicture picture)
    {
        if (picture.Cut is not { } cut || Scale(picture) >= LeastPointsPerPixel)
        {
            return Picture(picture, Scale(picture));
        }

        ImmutableArray<ReportPicture> parts = cut(HighestPicturePt / LeastPointsPerPixel);
        double scale = parts.Min(Scale);
        return parts.SelectMany(part => Picture(part, scale));
    }

    private static double Scale(ReportPicture picture) => Math.Min(PointsPerPixel, Math.Min(Layout.WidthPt / picture.WidthPx, HighestPicturePt / picture.HeightPx));

    private IEnumerable<Strip> Picture(ReportPicture picture, double scale)
    {
        return
        [
            Strip.Gap(4),
            Drawn(picture, scale) with
            {
                KeepsWithNext = true,
                LeastHeightPt = Math.Min(scale, LeastPointsPerPixel) * picture.HeightPx,
                Lower = heightPt => Drawn(picture, heightPt / picture.HeightPx),
            },
            .. Text(PdfBlockLevelElementTag.Paragraph, 0, Layout.SmallPt, Layout.Faint, keepsWithNext: false, (picture.Caption, letters.Font(Layout.SmallPt, isBold: false))),
            Strip.Gap(8),
        ];
    }

    private Strip Drawn(ReportPicture picture, double scale)
    {
        XSize size = new(scale * picture.WidthPx, scale * picture.HeightPx);
        double leftPt = Layout.LeftPt + ((Layout.WidthPt - size.Width) / 2);
        return new Strip(size.Height, (sheet, topPt) =>
        {
            sheet.BeginFigure(letters.Known(picture.Description), new XRect(leftPt, Layout.PageHeightPt - topPt - size.Height, size.Width, size.Height));
            XGraphicsState state = sheet.Graphics.Save();
            sheet.Graphics.TranslateTransform(leftPt, topPt);
            sheet.Graphics.ScaleTransform(scale);
            picture.Draw(new PdfCanvas(sheet.Graphics, letters));
            sheet.Graphics.Restore(state);
            sheet.End();
        });
    }

    /// <summary>A text as one block, line by line; the second line stays with the first, the last with the last but one.</summary>
    private IEnumerable<Strip> Text(PdfBlockLevelElementTag tag, double indentPt, double sizePt, XColor color, bool keepsWithNext, params (string Text, XFont Font)[] texts)
    {
        List<TextLine> lines = _words.Lines(Layout.WidthPt - indentPt, texts);
        double leadingPt = Layout.Leading * sizePt;
        for (int i = 0; i < lines.Count; i++)
        {
            int index = i;
            bool isFirst = i == 0;
            bool isLast = i == lines.Count - 1;
            yield return new Strip(leadingPt, (sheet, topPt) =>
            {
                if (isFirst)
                {
                    sheet.Begin(tag);
                }

                sheet.Write(lines[index], Layout.LeftPt + indentPt, topPt, sizePt, color);
                if (isLast)
                {
                    sheet.End();
                }
            })
            {
                KeepsWithNext = isLast ? keepsWithNext : isFirst || i == lines.Count - 2,
            };
        }
    }

    private static void Write(Sheet sheet, PdfBlockLevelElementTag tag, List<TextLine> lines, double indentPt, double topPt, double sizePt, XColor color)
    {
        sheet.Begin(tag);
        for (int i = 0; i < lines.Count; i++)
        {
            sheet.Write(lines[i], Layout.LeftPt + indentPt, topPt + (i * Layout.Leading * sizePt), sizePt, color);
        }

        sheet.End();
    }
}

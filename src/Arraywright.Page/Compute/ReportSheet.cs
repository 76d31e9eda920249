using Arraywright.Presentation.Report;

namespace Arraywright.Page.Compute;

/// <summary>A report, or any block of one, as the page shows it.</summary>
internal static class ReportSheet
{
    /// <summary>The report on a subject, with the file it is as HTML.</summary>
    public static Sheet Of(ReportSubject subject)
    {
        ReportDocument report = ReportBuilder.Of(subject);
        return new Sheet(report.Title, [.. report.Sections.SelectMany(Of)]) { Files = [new SheetFile("report.html", "text/html", HtmlReport.Of(report))] };
    }

    private static IEnumerable<Block> Of(ReportSection section) => section.Blocks.Select(Of).Prepend(Block.Of(BlockKind.Section, section.Title));

    private static Block Of(ReportBlock block) => block switch
    {
        ReportBlock.Verdict verdict => Block.Of(BlockKind.Verdict, verdict.Sentence) with { Level = AnswerMaker.LevelOf(verdict.Level) },
        ReportBlock.Heading heading => Block.Of(BlockKind.Heading, heading.Text),
        ReportBlock.Paragraph paragraph => Block.Of(BlockKind.Paragraph, paragraph.Text),
        ReportBlock.Bullets bullets => new Block(BlockKind.Bullets) { Items = [.. bullets.Items.Select(item => new BulletLine(item.Lead, item.Text))] },
        ReportBlock.Steps steps => new Block(BlockKind.Steps) { Steps = [.. steps.Items.Select(step => new StepLine(step.Title, [.. step.Do], step.Expected is { } expected ? Of(expected) : null, step.IfNot))] },
        ReportBlock.Table table => Block.Of(BlockKind.Table, table.Caption) with
        {
            Columns = [.. table.Columns.Select(column => new TableColumn(column.Title, column.IsNumber))],
            Rows = [.. table.Rows.Select(row => new TableRow([.. row.Cells], [.. row.Notes]))],
        },
        ReportBlock.Picture picture => Block.Of(BlockKind.Picture, picture.Shown.Caption) with { Svg = (picture.Shown.Narrow ?? picture.Shown).ToSvg() },
        _ => throw new InvalidOperationException("A block of a report that this page does not know."),
    };
}

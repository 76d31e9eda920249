using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What each rule says, with its working; what is against the wiring comes first.</summary>
internal static class FindingsSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        PlanResult result = subject.Result;
        Design design = result.Designs[0];
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        foreach (Assignment assignment in design.Assignments.Where(assignment => assignment.Wiring is not null))
        {
            blocks.Add(Table($"What the rules say of {assignment.Input}", assignment.Findings));
        }

        if (result.Search is { } search)
        {
            blocks.Add(new ReportBlock.Heading("What else was looked at"));
            blocks.Add(new ReportBlock.Paragraph(ProofSentence.Of(search, result.Designs)));
        }

        return new ReportSection("findings", "Findings, with their working", blocks.ToImmutable());
    }

    /// <summary>Findings as a table, the worst first.</summary>
    public static ReportBlock.Table Table(string caption, IEnumerable<Finding> findings) => new(
        caption,
        [new("", false, 1), new("what is compared", false, 6), new("figure", true, 2), new("limit", false, 2), new("room", false, 3)],
        [.. FindingsTable.InOrder(findings).Select(shown => Row(shown.Finding, shown.Note))]);

    private static ReportRow Row(Finding finding, string? note) => new(
        [FindingsTable.Word(finding), finding.Title, FindingsTable.Value(finding), FindingsTable.Limit(finding), FindingsTable.Margin(finding)],
        note is not null ? [$"{finding.Working} [{finding.Source}]", note] : [$"{finding.Working} [{finding.Source}]"],
        finding.Level);
}

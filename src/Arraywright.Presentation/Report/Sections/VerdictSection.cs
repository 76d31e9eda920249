using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>The verdict, the wiring in short, and the figures to remember.</summary>
internal static class VerdictSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        PlanResult result = subject.Result;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportBlock.Verdict(subject.Verdict, subject.Sentence));
        if (subject.Verdict > result.Verdict)
        {
            blocks.Add(new ReportBlock.Paragraph("The wiring by itself keeps its rules; what is between the panels and the unit does not yet."));
        }

        if (InputWords.Waiting(subject) is { } waiting)
        {
            blocks.Add(new ReportBlock.Paragraph(waiting));
        }

        blocks.Add(new ReportBlock.Table("In short", [new("", false, 2), new("", false, 5)], [.. Rows(subject)]));
        blocks.Add(new ReportBlock.Paragraph("This report helps to plan. It does not replace the manuals, the local code, or a licensed electrician where one is required."));
        return new ReportSection("verdict", "Verdict", blocks.ToImmutable());
    }

    private static IEnumerable<ReportRow> Rows(ReportSubject subject)
    {
        Design design = subject.Design;
        foreach (Assignment assignment in design.Assignments)
        {
            yield return ReportRow.Of($"On {assignment.Input}", $"{DesignsTable.Text(assignment.Wiring)}{InputWords.Verdict(subject, assignment)}");
        }

        if (DesignsTable.LeftOver(design) is { Length: > 0 } leftOver)
        {
            yield return ReportRow.Of("Left over", leftOver);
        }

        foreach (Assignment assignment in design.Assignments.Where(assignment => assignment.Wiring is not null))
        {
            double limitV = subject.Result.Plan.Inputs.Single(planned => planned.Input.Name == assignment.Input).Input.MaxVoltageV;
            yield return ReportRow.Of($"Highest volts, {assignment.Input}", $"{Figures.Against(assignment.VocColdV, limitV, "V")} on the coldest morning, at most {Figures.Stated(limitV, "V")}");
        }

        if (subject.Verdict != Level.Stop)
        {
            yield return ReportRow.Of("In strong sun", $"{Figures.Of(design.PeakPowerW, "W")}, {MeterTable.At(design.Assignments[0].Conditions)}");
        }

        if (subject.Verdict != Level.Stop && subject.Year is { } year)
        {
            yield return ReportRow.Of("In a year", EnergyParts.BringsInShort(year.Energy, design.Assignments.Length > 1 ? "inputs" : "input"));
        }
    }
}

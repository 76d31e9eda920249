using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>The wiring of each input: in words, drawn, and what a meter shows.</summary>
internal static class WiringSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        Design design = subject.Design;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        foreach (Assignment assignment in design.Assignments)
        {
            if (design.Assignments.Length > 1)
            {
                blocks.Add(new ReportBlock.Heading($"{assignment.Input}: {DesignsTable.Text(assignment.Wiring)}"));
            }

            if (assignment.Wiring is not { } wiring)
            {
                continue;
            }

            string join = subject.Result.Verdict == Level.Stop ? "Not to be connected." : WiringWords.HowToJoin(wiring);
            blocks.Add(new ReportBlock.Paragraph($"{WiringWords.Describe(wiring)} {join}"));
            blocks.Add(MeterRows.Of(assignment, subject.Result.Verdict));
            if (subject.Curves.FirstOrDefault(curve => curve.Input.Name == assignment.Input) is { } curve)
            {
                blocks.Add(new ReportBlock.Picture(ReportPicture.Of(CurvePlot.Of(curve))));
            }
        }

        return new ReportSection("wiring", subject.Result.Verdict == Level.Stop ? "The wiring judged" : "The wiring", blocks.ToImmutable());
    }
}

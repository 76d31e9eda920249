using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>The wiring of each input: in words, drawn, and what a meter shows.</summary>
internal static class WiringSection
{
    /// <summary>Up to this height a drawing for a telephone fits half a printed page.</summary>
    private const double MostNarrowPx = 660;

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

            Level own = subject.VerdictOf(assignment);
            blocks.Add(new ReportBlock.Paragraph($"{WiringWords.Describe(wiring)} {InputWords.Join(subject, own, wiring)}"));
            blocks.Add(MeterRows.Of(assignment, own));
            if (subject.Curves.FirstOrDefault(curve => curve.Input.Name == assignment.Input) is { } curve)
            {
                blocks.Add(new ReportBlock.Picture(ReportPicture.Of($"Amps and watts over volts at {assignment.Input}", CurvePlot.Of(curve))));
            }
        }

        // What is high comes last, so that what is low fills the page before it.
        AddDrawings(blocks, subject);
        return new ReportSection("wiring", subject.Verdict == Level.Stop ? "The wiring judged" : "The wiring", blocks.ToImmutable());
    }

    /// <summary>Each input is drawn by itself, so that none comes out too small; panels and plugs are numbered through all of them.</summary>
    private static void AddDrawings(ImmutableArray<ReportBlock>.Builder blocks, ReportSubject subject)
    {
        DrawingSheet all = DrawingSheet.Of(subject.Parts, subject.Readings);
        foreach ((Hookup hookup, ArrayReading? reading) in all.Hookups.Zip(all.Readings))
        {
            string at = all.Hookups.Length > 1 ? $" at {hookup.Assignment.Input}" : "";
            DrawingSheet narrow = all with { Hookups = [hookup], Readings = [reading] };
            DrawingSheet wide = narrow with { WidthPx = DrawingSheet.PagePx };
            blocks.Add(new ReportBlock.Picture(Shown($"How the panels are plugged together{at}", narrow.Arrangement(), wide.Arrangement)));
            blocks.Add(new ReportBlock.Picture(Shown($"Wiring diagram{at}", narrow.Diagram(), wide.Diagram)));
        }
    }

    /// <summary>A small array is drawn for a telephone only: it serves on a page too.</summary>
    private static ReportPicture Shown(string caption, Picture narrow, Func<Picture> wide) =>
        narrow.HeightPx <= MostNarrowPx ? ReportPicture.Of(caption, narrow) : ReportPicture.Of(caption, wide(), narrow);
}

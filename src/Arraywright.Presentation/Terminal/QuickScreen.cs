using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>The beginner's answer in a dozen lines: may I, how, what will I see, what is against it.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class QuickScreen(TextWriter writer, TerminalStyle style)
{
    private const int TallestPicture = 4;

    /// <summary>Writes the answer.</summary>
    public void Write(PlanResult result)
    {
        new PlanScreen(writer, style).WriteVerdict(result);
        foreach (Assignment assignment in result.Designs[0].Assignments)
        {
            if (assignment.Wiring is { } wiring)
            {
                writer.WriteLine();
                WriteWiring(assignment, wiring);
                WriteMeter(assignment);
                WriteAgainst(assignment);
            }
        }

        if (DesignsTable.LeftOver(result.Designs[0]) is { Length: > 0 } leftOver)
        {
            TextFlow.Write(writer, "  ", $"Left over: {leftOver}.", style.Width);
        }
    }

    private void WriteWiring(Assignment assignment, Wiring wiring)
    {
        if (wiring.Strings.Length <= TallestPicture)
        {
            WiringPicture.Write(writer, wiring, assignment.Input, style);
        }

        string join = assignment.Verdict == Level.Stop ? "" : WiringWords.HowToJoin(wiring);
        TextFlow.Write(writer, "  ", $"{WiringWords.Describe(wiring)} {join}", style.Width);
    }

    private void WriteMeter(Assignment assignment)
    {
        TextFlow.Write(
            writer,
            "  ",
            $"Leads open, the meter shows {Figures.Of(assignment.VocStcV, "V")} in full sun, on the coldest morning {Figures.Number(assignment.VocColdV, 2)} V.",
            style.Width);
        if (assignment.Verdict == Level.Stop)
        {
            return;
        }

        TextFlow.Write(
            writer,
            "  ",
            $"Connected, {MeterTable.At(assignment.Conditions)}: {Figures.Of(assignment.Operating.VoltageV, "V")}, {Figures.Of(assignment.Operating.CurrentA, "A")}, {Figures.Of(assignment.Operating.PowerW, "W")}; {MeterTable.HeldBy(assignment.Operating.LimitedBy)}.",
            style.Width);
    }

    private void WriteAgainst(Assignment assignment)
    {
        foreach (Finding finding in assignment.Findings.Where(finding => finding.Level != Level.Go))
        {
            TextFlow.Write(
                writer,
                $"  {FindingsTable.Word(finding.Level)}: ",
                $"{finding.Title}: {finding.Note ?? finding.Working}",
                style.Width);
        }
    }
}

using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Gear;
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
        (_, Finding? told) = VerdictSentence.Worst(result.Designs[0], result.Verdict);
        foreach ((PlannedInput planned, Assignment assignment) in result.Plan.Inputs.Zip(result.Designs[0].Assignments))
        {
            if (assignment.Wiring is { } wiring)
            {
                writer.WriteLine();
                WriteWiring(planned.Input, assignment, wiring);
                WriteMeter(assignment, Coldest(result));
                WriteAgainst(assignment.Findings.Where(finding => finding.Level != Level.Go && finding != told));
            }
        }

        if (result.Verdict != Level.Stop && DesignsTable.LeftOver(result.Designs[0]) is { Length: > 0 } leftOver)
        {
            Line("  ", $"Left over: {leftOver}.");
        }

        if (result.Designs[0].Verdict == Level.Go && result.Designs.FirstOrDefault(design => design.Verdict == Level.Ask) is { } asking)
        {
            WriteAsking(asking);
        }

        if (Cautions.OfVoltage(result.Designs[0].HighestVocColdV) is { } kills)
        {
            Line("  ", kills);
        }

        Line("  ", "A panel in daylight is live: cover it before you touch its leads.");
    }

    private void WriteWiring(DcInput input, Assignment assignment, Wiring wiring)
    {
        if (wiring.Strings.Length <= TallestPicture)
        {
            WiringPicture.Write(writer, wiring, assignment.StringFusesA, assignment.Input, style);
        }

        string join = assignment.Verdict == Level.Stop ? "" : WiringWords.HowToJoin(wiring);
        string parts = assignment.Verdict == Level.Stop ? "" : $" {PartsWords.Fuses(assignment)} {PartsWords.MustBear(input, assignment)}";
        Line("  ", $"{WiringWords.Describe(wiring)} {join}{parts}");
    }

    private void WriteMeter(Assignment assignment, string coldest)
    {
        OperatingPoint taken = assignment.Operating;
        Line("  ", $"Leads open: {Figures.Of(assignment.VocStcV, "V")} in full sun, {Figures.Number(assignment.VocColdV, 2)} V on the coldest morning{coldest}.");
        if (assignment.Verdict != Level.Stop)
        {
            string reading = $"{Figures.Of(taken.VoltageV, "V")}, {Figures.Of(taken.CurrentA, "A")}, {Figures.Of(taken.PowerW, "W")}";
            Line("  ", $"Connected: {reading} {MeterTable.At(assignment.Conditions)}; {MeterTable.HeldBy(assignment)}.");
        }
    }

    /// <summary>How cold that is where the tool had to assume it: two panels in a row may hang on it.</summary>
    private static string Coldest(PlanResult result) =>
        result.Assumed.FirstOrDefault(assumption => assumption.What == DesignTemperatures.ColdestAir) is { } assumed ? $" (assumed: {assumed.Value})" : "";

    /// <summary>What more there would be, if the maker agreed.</summary>
    private void WriteAsking(Design design)
    {
        string wirings = string.Join(", ", design.Assignments.Where(assignment => assignment.Wiring is not null).Select(assignment => DesignsTable.Text(assignment.Wiring)));
        (_, Finding? open) = VerdictSentence.Worst(design, Level.Ask);
        string why = open is null ? "" : $"; {open.Title}: {VerdictSentence.Compared(open)}";
        Line("  ", $"More, but ask the maker first: {wirings}, {Figures.Of(design.PeakPowerW, "W")}{why}.");
    }

    private void WriteAgainst(IEnumerable<Finding> against)
    {
        foreach (Finding finding in against)
        {
            Line($"  {FindingsTable.Word(finding.Level)}: ", $"{finding.Title}: {VerdictSentence.Compared(finding)}");
        }
    }

    private void Line(string lead, string text) => TextFlow.Write(writer, lead, text, style.Width);
}

using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>The answer to a plan or a check as a page of text, in the order in which a person needs it.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class PlanScreen(TextWriter writer, TerminalStyle style)
{
    /// <summary>Writes the whole page.</summary>
    public void Write(PlanResult result)
    {
        Design best = result.Designs[0];
        WriteTitle(result.Plan.Name);
        WriteVerdict(result);
        WriteWorthAsking(result);
        WriteWiring(result);
        foreach (Assignment assignment in Connected(best))
        {
            Heading("What the meter will show", assignment.Input, best);
            MeterTable.Write(writer, assignment, style);
        }

        WriteFindings(result, best);
        if (!best.Losses.IsEmpty && best.Verdict != Level.Stop)
        {
            Heading($"Where the watts go, {MeterTable.At(best.Assignments[0].Conditions)}");
            LossLadder.Write(writer, best.Losses, style);
        }

        WriteDesigns(result);
        Heading("What was assumed");
        AssumedList.Write(writer, result.Assumed, style);
        Heading("Before you touch a lead");
        foreach (string caution in result.Cautions)
        {
            TextFlow.Write(writer, "  · ", caution, style.Width);
        }
    }

    /// <summary>Writes the verdict alone.</summary>
    public void WriteVerdict(PlanResult result) => WriteVerdict(writer, result.Verdict, VerdictSentence.Of(result), style);

    /// <summary>Writes a sentence that begins with the word of its verdict.</summary>
    public static void WriteVerdict(TextWriter writer, Level verdict, string sentence, TerminalStyle style)
    {
        string word = VerdictSentence.Word(verdict);
        List<string> lines = TextFlow.Lines(sentence, style.Width);
        lines[0] = style.ForLevel(verdict, word) + lines[0][word.Length..];
        lines.ForEach(writer.WriteLine);
    }

    /// <summary>Points at a design that takes more and waits only for an answer.</summary>
    private void WriteWorthAsking(PlanResult result)
    {
        if (result.Verdict == Level.Go && result.Designs.FirstOrDefault(design => design.Verdict == Level.Ask) is { } asking && asking.PeakPowerW > result.Designs[0].PeakPowerW)
        {
            string more = $"Number {asking.Rank} below would take {Figures.Of(asking.PeakPowerW, "W")}, if the maker agrees: `arraywright ask` writes the letter.";
            TextFlow.Write(writer, "", more, style.Width);
        }
    }

    private void WriteTitle(string name)
    {
        TextFlow.Write(writer, "", name, style.Width, style.Faint);
        writer.WriteLine();
    }

    private void WriteWiring(PlanResult result)
    {
        Design best = result.Designs[0];
        foreach ((PlannedInput planned, Assignment assignment) in result.Plan.Inputs.Zip(best.Assignments))
        {
            Heading(WiringHeading(assignment.Verdict, result.Verdict), assignment.Input, best);
            if (assignment.Wiring is not { } wiring)
            {
                writer.WriteLine("  Nothing.");
                continue;
            }

            WiringPicture.Write(writer, wiring, assignment.StringFusesA, assignment.Input, style);
            writer.WriteLine();
            TextFlow.Write(writer, "  ", $"In short: {DesignsTable.Text(wiring)}", style.Width);
            string join = assignment.Verdict == Level.Stop ? "" : WiringWords.HowToJoin(wiring);
            TextFlow.Write(writer, "  ", $"{WiringWords.Describe(wiring)} {join}", style.Width);
            if (assignment.Verdict != Level.Stop)
            {
                Say(PartsWords.Fuses(assignment));
                Say(PartsWords.MustBear(planned.Input, assignment));
            }
        }

        if (best.Verdict != Level.Stop && DesignsTable.LeftOver(best) is { Length: > 0 } leftOver)
        {
            writer.WriteLine();
            TextFlow.Write(writer, "  ", $"Left over: {leftOver}.", style.Width);
        }
    }

    private void Say(string sentence)
    {
        if (sentence.Length > 0)
        {
            TextFlow.Write(writer, "  ", sentence, style.Width);
        }
    }

    /// <summary>An input that keeps every rule waits for those that do not: nothing is connected before all is clear.</summary>
    private static string WiringHeading(Level own, Level whole) => (own, whole) switch
    {
        (Level.Stop, _) => "The wiring judged, not to be connected",
        (_, Level.Stop) => "How to connect, once the stop is cleared",
        (_, Level.Ask) => "How to connect, once the question is answered",
        _ => "How to connect",
    };

    private void WriteFindings(PlanResult result, Design best)
    {
        foreach (Assignment assignment in Connected(best))
        {
            Heading("What the rules say", assignment.Input, best);
            FindingsTable.Write(writer, assignment.Findings, style);
        }

        if (result.Plan.Doubts.IsEmpty)
        {
            return;
        }

        Heading("Labels to read again");
        foreach (LabelDoubt doubt in result.Plan.Doubts)
        {
            TextFlow.Write(writer, "  · ", $"{doubt.Panel}, {doubt.Field}: {doubt.Message}", style.Width);
        }
    }

    private void WriteDesigns(PlanResult result)
    {
        if (result.Search is not { } search)
        {
            return;
        }

        if (result.Designs.Length > 1)
        {
            Heading("What else would work, best first");
            DesignsTable.Write(writer, result.Designs, result.Dates, style);
            writer.WriteLine();
        }
        else
        {
            Heading("What else was looked at");
        }

        TextFlow.Write(writer, "  ", ProofSentence.Of(search, result.Designs), style.Width);
    }

    private static IEnumerable<Assignment> Connected(Design design) => design.Assignments.Where(assignment => assignment.Wiring is not null);

    private void Heading(string text, string input, Design design) =>
        Heading(design.Assignments.Length > 1 ? $"{text}: {input}" : text);

    private void Heading(string text)
    {
        writer.WriteLine();
        writer.WriteLine(style.Strong(text));
    }
}

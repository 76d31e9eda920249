using Arraywright.Electrical;
using Arraywright.Files;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>Puts an answer into the words and figures of the command.</summary>
internal static class AnswerMaker
{
    private const int DrawnColumns = 72;

    /// <summary>The answer to a plan or a check.</summary>
    public static AnswerSheet Of(PlanResult result, AnswerStage stage)
    {
        string sentence = VerdictSentence.Of(result), word = VerdictSentence.Word(result.Verdict);
        return new AnswerSheet
        {
            Stage = stage,
            Level = LevelOf(result.Verdict),
            Word = word,
            Sentence = sentence[(word.Length + 2)..],
            Proof = result.Search is { } search ? ProofSentence.Of(search, result.Designs) : null,
            Designs = [.. result.Designs.Select(design => Of(design, result))],
            Assumed = [.. result.Assumed.Select(assumed => new AssumedLine(assumed.What, assumed.Value, assumed.Why))],
            Cautions = [.. result.Cautions],
            Json = stage == AnswerStage.Whole ? ResultJson.Write(result, seconds: null) : "",
        };
    }

    /// <summary>The word a style sheet and a test know a level by.</summary>
    public static string LevelOf(Level level) => level switch
    {
        Level.Go => "go",
        Level.Ask => "ask",
        _ => "stop",
    };

    private static DesignSheet Of(Design design, PlanResult result) => new()
    {
        Rank = design.Rank,
        Level = LevelOf(design.Verdict),
        Amount = design.EnergyKWh is { } kWh ? Figures.Of(kWh, "kWh") : Figures.Of(design.PeakPowerW, "W"),
        AmountOf = design.EnergyKWh is null ? "power" : result.Dates?.ToString() ?? "a year",
        Power = Figures.Of(design.PeakPowerW, "W"),
        ChosenFor = string.Join(", ", design.ChosenFor),
        LeftOver = design.Verdict == Level.Stop ? "" : DesignsTable.LeftOver(design),
        Inputs = [.. result.Plan.Inputs.Zip(design.Assignments, (planned, assignment) => Of(planned.Input, assignment, design.Verdict))],
        Losses = design.Verdict == Level.Stop ? [] : Ladder(design),
    };

    private static InputSheet Of(DcInput input, Assignment assignment, Level whole) => new()
    {
        Input = assignment.Input,
        Level = LevelOf(assignment.Verdict),
        Wiring = assignment.Wiring is { } printed ? WiringText.Print(printed) : null,
        Words = assignment.Wiring is { } told ? $"{WiringWords.Describe(told)} {HowToJoin(told, assignment.Verdict, whole)}".TrimEnd() : "",
        Parts = assignment.Verdict == Level.Stop ? "" : $"{PartsWords.Fuses(assignment)} {PartsWords.MustBear(input, assignment)}".Trim(),
        Drawn = assignment.Wiring is { } drawn ? Drawn(drawn, assignment) : "",
        Meter = assignment.Wiring is null ? [] : [.. MeterTable.Rows(assignment).Select(row => new MeterLine(row.What.Trim(), row.Figure, row.Remark))],
        Findings = [.. assignment.Findings.OrderByDescending(finding => finding.Level).Select(Of)],
    };

    /// <summary>Nothing of a design is connected while any of it must not be.</summary>
    private static string HowToJoin(Wiring wiring, Level own, Level whole) =>
        own == Level.Stop ? "" : whole == Level.Stop ? $"Once the STOP beside it is cleared: {WiringWords.HowToJoin(wiring)}" : WiringWords.HowToJoin(wiring);

    private static FindingLine Of(Finding finding) => new(
        finding.Rule,
        LevelOf(finding.Level),
        finding is { Level: Level.Go, MarginPercent: < 0 } ? "note" : FindingsTable.Word(finding.Level),
        finding.Title,
        FindingsTable.Value(finding),
        FindingsTable.Limit(finding),
        FindingsTable.Margin(finding),
        finding.Working,
        finding.Source,
        finding.Note);

    private static string Drawn(Wiring wiring, Assignment assignment)
    {
        StringWriter text = new() { NewLine = "\n" };
        WiringPicture.Write(text, wiring, assignment.StringFusesA, assignment.Input, TerminalStyle.Plain with { Width = DrawnColumns });
        return text.ToString();
    }

    private static List<LossLine> Ladder(Design design)
    {
        List<LossLine> lines = [];
        double left = 0;
        double tallest = Math.Max(1, design.Losses.IsEmpty ? 1 : design.Losses.Max(step => step.Watts));
        for (int i = 0; i < design.Losses.Length; i++)
        {
            LossStep step = design.Losses[i];
            bool isLevel = i == 0 || i == design.Losses.Length - 1;
            left = isLevel ? step.Watts : left - step.Watts;
            string amount = Figures.Of(Math.Abs(step.Watts), "W");
            lines.Add(new LossLine(step.Stage, isLevel ? amount : $"{(step.Watts < 0 ? '+' : Figures.Minus)} {amount}", left / tallest, isLevel));
        }

        return lines;
    }
}

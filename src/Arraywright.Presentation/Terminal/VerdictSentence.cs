using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>The verdict in one sentence, its first word the verdict itself.</summary>
public static class VerdictSentence
{
    /// <summary>The word a person is to remember.</summary>
    public static string Word(Level level) => level switch
    {
        Level.Go => "GO",
        Level.Ask => "ASK FIRST",
        _ => "STOP",
    };

    /// <summary>The sentence for a result.</summary>
    public static string Of(PlanResult result) => $"{Word(result.Verdict)}: {Rest(result)}";

    private static string Rest(PlanResult result)
    {
        Design best = result.Designs[0];
        if (best.Assignments.All(assignment => assignment.Wiring is null))
        {
            return "none of these panels can be connected to any of these inputs.";
        }

        if (result.Verdict == Level.Go)
        {
            string fuses = PartsWords.WithFuses(best);
            return $"connect it as drawn{fuses}; nothing{(fuses.Length > 0 ? " else" : "")} is against it, and {Takes(best)}.";
        }

        (Assignment? assignment, Finding? worst) = Worst(best, result.Verdict);
        if (worst is null)
        {
            return ReadAgain(result.Plan.Doubts[0]);
        }

        string what = result.Search is { Feasible: 0 }
            ? $"connect no wiring of these panels to {(result.Plan.Inputs.Length > 1 ? "any of these inputs" : Named(assignment!.Input))}"
            : NotTo(result.Plan, best, assignment!, worst);
        return Against(worst, what, Others(best, result.Verdict));
    }

    /// <summary>What a page about one wiring has to say first; null where nothing is against it.</summary>
    public static string? Warning(CurveResult result)
    {
        if (result.Verdict == Level.Go)
        {
            return null;
        }

        Finding[] findings = [.. result.Assignment.Findings.Where(finding => finding.Level == result.Verdict)];
        string rest = findings.Length == 0
            ? ReadAgain(result.Plan.Doubts[0])
            : Against(findings[0], $"do not connect it to {(UnitRules.Says(findings[0]) ? result.Input.Unit : Named(result.Assignment.Input))}", findings.Length - 1);
        return $"{Word(result.Verdict)}: {rest}";
    }

    /// <summary>The same for a page about a whole design.</summary>
    public static string? Warning(Plan plan, Design design)
    {
        Level verdict = plan.Doubted(design.Verdict);
        (Assignment? assignment, Finding? worst) = Worst(design, verdict);
        string rest = worst is null
            ? plan.Doubts.IsEmpty ? "none of these panels can be connected to any of these inputs." : ReadAgain(plan.Doubts[0])
            : Against(worst, NotTo(plan, design, assignment!, worst), Others(design, verdict));
        return verdict == Level.Go ? null : $"{Word(verdict)}: {rest}";
    }

    private static string ReadAgain(LabelDoubt doubt) =>
        $"do not connect yet; the label of {doubt.Panel} looks odd at \"{doubt.Field}\" and must be read again.";

    private static string Against(Finding worst, string what, int others)
    {
        (string until, string noun) = worst.Level == Level.Stop ? ("", "reason") : (" until somebody who knows has answered", "question");
        string more = others > 0 ? $" (and {Figures.Count(others, "more " + noun)})" : "";
        return $"{what}{until}. {worst.Title}: {Compared(worst)}{more}.";
    }

    private static int Others(Design design, Level level) =>
        design.Assignments.Sum(assignment => assignment.Findings.Count(finding => finding.Level == level)) - 1;

    /// <summary>What is not to be done: what belongs to a whole unit stands with one of its inputs, but holds for all that are used.</summary>
    private static string NotTo(Plan plan, Design design, Assignment assignment, Finding finding)
    {
        string? unit = plan.Inputs.First(planned => planned.Input.Name == assignment.Input).Input.Unit;
        string[] inputs = [.. plan.Inputs.Zip(design.Assignments).Where(pair => pair.First.Input.Unit == unit && pair.Second.Wiring is not null).Select(pair => pair.Second.Input)];
        return UnitRules.Says(finding) && inputs.Length > 1
            ? $"do not connect it to {unit} ({string.Join(", ", inputs[..^1])} and {inputs[^1]})"
            : $"do not connect it to {Named(assignment.Input)}";
    }

    /// <summary>An input that nobody named is "the input".</summary>
    private static string Named(string input) => input == "input" ? "the input" : input;

    private static string Takes(Design best)
    {
        Assignment[] used = [.. best.Assignments.Where(assignment => assignment.Wiring is not null)];
        Conditions sun = used[0].Conditions;
        string watts = Figures.Of(best.PeakPowerW, "W");
        string who = used.Length == 1 ? $"{Named(used[0].Input)} takes" : $"the {used.Length} inputs together take";
        string shared = used.FirstOrDefault(assignment => assignment.HeldByUnit is not null)?.HeldByUnit is { } held ? $", held by the limit of {held.Unit}" : "";
        return $"{who} {watts} {(sun.IrradianceWPerM2 is >= 950 and <= 1050 ? "in full sun" : $"at {Figures.Of(sun.IrradianceWPerM2, "W/m²")}")}{shared}";
    }

    /// <summary>The first finding of the verdict's level and where it stands; null where only a label is in doubt, or nothing is against it.</summary>
    public static (Assignment? Assignment, Finding? Finding) Worst(Design design, Level level)
    {
        foreach (Assignment assignment in design.Assignments)
        {
            Finding? worst = assignment.Findings.FirstOrDefault(finding => finding.Level == level);
            if (worst is not null)
            {
                return (assignment, worst);
            }
        }

        return (null, null);
    }

    /// <summary>The figure and its limit: "13.44 A, at most 10 A".</summary>
    public static string Compared(Finding finding) =>
        $"{FindingsTable.Value(finding)}, {(finding.Limit is null ? "no limit stated" : FindingsTable.Limit(finding))}";
}

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
            return $"connect it as drawn; nothing is against it, and {Takes(best)}.";
        }

        (Assignment? assignment, Finding? worst) = Worst(best, result.Verdict);
        if (worst is null)
        {
            LabelDoubt doubt = result.Plan.Doubts[0];
            return $"do not connect yet; the label of {doubt.Panel} looks odd at \"{doubt.Field}\" and must be read again.";
        }

        string what = $"{LowerFirst(worst.Title)}: {Compared(worst)}";
        return result.Verdict == Level.Stop
            ? $"do not connect this to {assignment!.Input}; {what}{More(best, Level.Stop, "reason")}."
            : $"do not connect it to {assignment!.Input} until somebody who knows has answered this; {what}{More(best, Level.Ask, "question")}.";
    }

    private static string More(Design design, Level level, string noun)
    {
        int others = design.Assignments.Sum(assignment => assignment.Findings.Count(finding => finding.Level == level)) - 1;
        return others > 0 ? $" (and {Figures.Count(others, "more " + noun)} below)" : "";
    }

    private static string Takes(Design best)
    {
        Assignment[] used = [.. best.Assignments.Where(assignment => assignment.Wiring is not null)];
        Conditions sun = used[0].Conditions;
        string watts = Figures.Of(used.Sum(assignment => assignment.Operating.PowerW), "W");
        string who = used.Length == 1 ? $"{used[0].Input} takes" : $"the {used.Length} inputs together take";
        return $"{who} {watts} {(sun.IrradianceWPerM2 is >= 950 and <= 1050 ? "in full sun" : $"at {Figures.Of(sun.IrradianceWPerM2, "W/m²")}")}";
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

    /// <summary>Lower case inside a sentence, but not for a word of capitals.</summary>
    private static string LowerFirst(string text) =>
        text.Length > 1 && char.IsUpper(text[0]) && char.IsLower(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
}

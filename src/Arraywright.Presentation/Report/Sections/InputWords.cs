using Arraywright.Electrical;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What the verdict on the whole means for each of its inputs: one that keeps every rule waits for those that do not.</summary>
internal static class InputWords
{
    /// <summary>How the leads of an input are joined, and what must be cleared before.</summary>
    public static string Join(ReportSubject subject, Level own, Wiring wiring) => (own, subject.Verdict) switch
    {
        (Level.Stop, _) => "Not to be connected.",
        (Level.Go, Level.Stop) => $"By itself it keeps every rule, but {Before(subject)} Then: {Lowered(WiringWords.HowToJoin(wiring))}",
        (_, Level.Stop) => $"C{Before(subject)[1..]} It has a question of its own to be answered, too. Then: {Lowered(WiringWords.HowToJoin(wiring))}",
        (_, Level.Ask) => $"Once the question is answered: {Lowered(WiringWords.HowToJoin(wiring))}",
        _ => WiringWords.HowToJoin(wiring),
    };

    /// <summary>An input's own verdict beside its wiring, where there are several; empty for one alone, whose verdict is the whole's.</summary>
    public static string Verdict(ReportSubject subject, Assignment assignment) => subject.Connected.Count() < 2 || assignment.Wiring is null ? "" : subject.VerdictOf(assignment) switch
    {
        Level.Go => $": {VerdictSentence.Word(Level.Go)} by itself",
        Level own => $": {VerdictSentence.Word(own)}",
    };

    /// <summary>What the good inputs of a stopped whole have to wait for; null where no input is better than the whole.</summary>
    public static string? Waiting(ReportSubject subject)
    {
        string[] better = [.. subject.Connected.Where(assignment => subject.VerdictOf(assignment) < subject.Verdict).Select(assignment => assignment.Input)];
        return subject.Verdict != Level.Stop || better.Length == 0
            ? null
            : $"This is not said of {string.Join(" and ", better)}. Even so, {Before(subject)}";
    }

    /// <summary>One array half joined, with a question open beside it, is where mistakes are made: nothing is connected before all is clear.</summary>
    public static string Before(ReportSubject subject) => subject.Against.ToArray() is { Length: > 0 } stopped
        ? $"connect nothing before the STOP at {string.Join(" and ", stopped)} is cleared."
        : "connect nothing before the STOP is cleared.";

    private static string Lowered(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];
}

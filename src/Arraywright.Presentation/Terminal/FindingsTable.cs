using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>What each rule says of one input: the figure, its limit, the room left, and below it the working. What is against it comes first.</summary>
public static class FindingsTable
{
    /// <summary>Writes the findings, the worst level first and in rule order within a level.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Finding> findings, TerminalStyle style)
    {
        TextTable table = new(false, false, true, false, false);
        foreach ((Finding finding, string? note) in InOrder(findings))
        {
            table.Add(
                [Word(finding), finding.Title, Value(finding), Limit(finding), Margin(finding)],
                text => style.ForLevel(finding.Level, text));
            table.AddNote(finding.Level == Level.Go ? finding.Working : $"{finding.Working} [{finding.Source}]", 1);
            if (note is not null)
            {
                table.AddNote($"→ {note}", 1);
            }
        }

        table.Write(writer, 2, style.Width, wrapped: 1);
    }

    /// <summary>The findings as they are shown, each with its note; one that was said already is not said again.</summary>
    internal static IEnumerable<(Finding Finding, string? Note)> InOrder(IEnumerable<Finding> findings)
    {
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach (Finding finding in findings.OrderByDescending(finding => finding.Level))
        {
            yield return (finding, finding.Note is { } note && !said.Add(note) ? "As said above." : finding.Note);
        }
    }

    /// <summary>The level in one short word; "note" for what passes a figure without harm, which "go" beside it would contradict.</summary>
    internal static string Word(Finding finding) =>
        finding is { Level: Level.Go, MarginPercent: < 0 } ? "note" : Word(finding.Level);

    /// <summary>The level in one short word.</summary>
    public static string Word(Level level) => level switch
    {
        Level.Go => "go",
        Level.Ask => "ask",
        _ => "STOP",
    };

    /// <summary>The figure, with as many digits as it takes to tell it from its limit.</summary>
    public static string Value(Finding finding) => finding.Limit is { } limit
        ? Figures.Against(finding.Value, limit, finding.Unit)
        : Figures.Of(finding.Value, finding.Unit);

    /// <summary>The limit in words: "at most 50 V", or "at least 12 V" for a floor; empty when none is stated.</summary>
    public static string Limit(Finding finding) => finding.Limit is { } limit
        ? $"at {(IsFloor(finding, limit) ? "least" : "most")} {Figures.Stated(limit, finding.Unit)}"
        : "";

    /// <summary>The margin in words, so that nobody has to know which sign means danger. What passes a limit without harm is "above" it, not "over".</summary>
    public static string Margin(Finding finding)
    {
        if (finding.MarginPercent is not { } room)
        {
            return "no limit stated";
        }

        if (room >= 0)
        {
            return $"{Figures.Percent(room)} to spare";
        }

        (string above, string below) = finding.Level == Level.Go ? ("above", "below") : ("over", "under");
        return $"{Figures.Percent(-room)} {(finding.Value > finding.Limit ? above : below)}";
    }

    /// <summary>A floor is told from a ceiling by its margin: room above the limit, or lack below it.</summary>
    private static bool IsFloor(Finding finding, double limit) => finding.MarginPercent switch
    {
        > 0 => finding.Value > limit,
        < 0 => finding.Value < limit,
        _ => false,
    };
}

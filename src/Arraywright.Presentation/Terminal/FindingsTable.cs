using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>What each rule says of one input: the figure, its limit, the room left, and below it the working.</summary>
public static class FindingsTable
{
    /// <summary>Writes the findings in rule order.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Finding> findings, TerminalStyle style)
    {
        TextTable table = new(false, false, true, false, false);
        foreach (Finding finding in findings)
        {
            string limit = finding.Limit is { } figure ? $"of {Figures.Stated(figure, finding.Unit)}" : "";
            string value = finding.Limit is { } against ? Figures.Against(finding.Value, against, finding.Unit) : Figures.Of(finding.Value, finding.Unit);
            table.Add(
                [Word(finding.Level), finding.Title, value, limit, Margin(finding)],
                text => style.ForLevel(finding.Level, text));
            table.AddNote($"{finding.Working} [{finding.Source}]", 1);
            if (finding.Note is { } note)
            {
                table.AddNote($"→ {note}", 1);
            }
        }

        table.Write(writer, 2, style.Width, wrapped: 1);
    }

    /// <summary>The level in one short word.</summary>
    public static string Word(Level level) => level switch
    {
        Level.Go => "go",
        Level.Ask => "ask",
        _ => "STOP",
    };

    /// <summary>The margin in words, so that nobody has to know which sign means danger.</summary>
    public static string Margin(Finding finding) => finding switch
    {
        { MarginPercent: not { } } => "no limit stated",
        { MarginPercent: >= 0 and { } room } => $"{Figures.Percent(room)} to spare",
        { MarginPercent: { } lack } => $"{Figures.Percent(-lack)} {(finding.Value > finding.Limit ? "over" : "under")}",
    };
}

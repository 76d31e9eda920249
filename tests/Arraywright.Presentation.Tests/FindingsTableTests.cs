using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class FindingsTableTests
{
    [Fact]
    public void A_note_is_said_once()
    {
        Finding finding = SampleResults.Go.Designs[0].Assignments[0].Findings[0] with { Note = "Fewer panels side by side." };
        StringWriter writer = new();
        FindingsTable.Write(writer, [finding with { Title = "one" }, finding with { Title = "other" }, finding with { Title = "third", Note = null }], TerminalStyle.Plain);
        Assert.Equal(2, writer.ToString().Split("Fewer panels side by side.").Length);
        Assert.Equal(2, writer.ToString().Split("As said above.").Length);
    }

    // Value, limit, margin as the rule states it, level; then what is read. Percentages recomputed by hand: 2.5/50, 13.44/10 − 1, (31.2 − 12)/12, (12 − 9)/12.
    public static TheoryData<double, double, double, Level, string, string> Cases => new()
    {
        { 47.5, 50, 5, Level.Go, "at most 50 V", "5.0 % to spare" },
        { 13.44, 10, -34.4, Level.Ask, "at most 10 V", "34 % over" },
        { 13.44, 10, -34.4, Level.Go, "at most 10 V", "34 % above" },
        { 31.2, 12, 160, Level.Go, "at least 12 V", "160 % to spare" },
        { 9, 12, -25, Level.Stop, "at least 12 V", "25 % under" },
        { 9, 12, -25, Level.Go, "at least 12 V", "25 % below" },
        { 50, 50, 0, Level.Go, "at most 50 V", "0.0 % to spare" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Limit_and_margin_are_told_in_words(double value, double limit, double margin, Level level, string limitText, string marginText)
    {
        Finding finding = new("rule", "Title", level, value, limit, "V", "working", "source") { MarginPercent = margin };
        Assert.Equal(limitText, FindingsTable.Limit(finding));
        Assert.Equal(marginText, FindingsTable.Margin(finding));
    }

    [Fact]
    public void What_is_against_it_comes_first_and_the_rest_in_rule_order()
    {
        StringWriter writer = new() { NewLine = "\n" };
        FindingsTable.Write(writer, [Finding("a", Level.Go), Finding("b", Level.Ask), Finding("c", Level.Stop), Finding("d", Level.Ask)], TerminalStyle.Plain);
        string[] titles = [.. writer.ToString().Split('\n').Where(line => line.Contains("title-", StringComparison.Ordinal)).Select(line => line.Split("title-")[1][..1])];
        Assert.Equal(["c", "b", "d", "a"], titles);
    }

    [Fact]
    public void What_passes_a_figure_without_harm_is_a_note_and_not_a_go()
    {
        StringWriter writer = new() { NewLine = "\n" };
        FindingsTable.Write(writer, [Finding("a", Level.Go) with { MarginPercent = -20 }, Finding("b", Level.Go) with { MarginPercent = 20 }], TerminalStyle.Plain);
        Assert.Equal(["note", "go"], writer.ToString().Split('\n').Where(line => line.Contains("title-", StringComparison.Ordinal)).Select(line => line.Trim().Split(' ')[0]));
    }

    private static Finding Finding(string name, Level level) => new(name, $"title-{name}", level, 1, 2, "V", "working", "source");
}

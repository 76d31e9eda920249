using Arraywright.Files.Keys;

namespace Arraywright.Files.Tests;

/// <summary>The reference in docs/plan-file.md against the table that the reader reads by.</summary>
public sealed class PlanFileReferenceTests
{
    private static readonly string Reference = File.ReadAllText(Path.Combine(Repository.Root, "docs", "plan-file.md"));

    public static TheoryData<string, string> Sections => new(RootKeys.All.SelectMany(section => section.Keys.Select(key => (section.Title, key.Name))));

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_key_has_its_row(string section, string name)
    {
        PlanKey key = RootKeys.All.First(candidate => candidate.Title == section).Find(name)!;
        string row = Assert.Single(RowsOf(section), line => line.StartsWith($"| `{name}` |", StringComparison.Ordinal));
        Assert.Contains(key.Required ? "**required**" : key.Otherwise!, row, StringComparison.Ordinal);
        if (key.Example.Length > 0)
        {
            Assert.Contains(key.Example.Replace("|", "\\|", StringComparison.Ordinal), row, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_complete_plan_in_it_reads_without_fault()
    {
        string[] plans = [.. Reference.Split("```yaml\n").Skip(1).Select(part => part.Split("```")[0]).Where(part => part.Contains("inputs:", StringComparison.Ordinal))];
        Assert.NotEmpty(plans);
        Assert.All(plans, plan => Plans.Read(plan));
    }

    [Fact]
    public void Every_choice_is_named()
    {
        foreach (ChoiceKey choice in RootKeys.All.SelectMany(section => section.Keys).OfType<ChoiceKey>())
        {
            Assert.All(choice.Options, option => Assert.Contains($"`{option}`", Reference, StringComparison.Ordinal));
        }
    }

    /// <summary>The rows of the table under the heading that names the section.</summary>
    private static IEnumerable<string> RowsOf(string section)
    {
        string[] lines = Reference.Split('\n');
        int start = Array.FindIndex(lines, line => line.StartsWith('#') && line.Contains($"({section})", StringComparison.Ordinal));
        Assert.True(start >= 0, $"No heading for {section}.");
        return lines.Skip(start + 1).TakeWhile(line => !line.StartsWith('#'));
    }
}

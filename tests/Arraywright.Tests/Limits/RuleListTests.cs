using Arraywright.Limits;
using Arraywright.Limits.Rules;
using Arraywright.Parts;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

public sealed class RuleListTests
{
    [Fact]
    public void Every_rule_class_is_in_the_list_once()
    {
        Type[] classes = [.. typeof(IRule).Assembly.GetTypes().Where(type => typeof(IRule).IsAssignableFrom(type) && !type.IsInterface)];
        Assert.NotEmpty(classes);
        Assert.All(classes, type => Assert.True(type.IsSealed, type.Name));
        Assert.Equal(classes.Select(type => type.Name).Order(), DesignRules.All.Select(rule => rule.GetType().Name).Order());
    }

    [Fact]
    public void Every_finding_carries_the_name_of_its_rule_and_is_never_worse_than_the_rule_says()
    {
        RuleContext context = Side(Row(2, "shed-120"), One("shed-120")).On(Input(20) with { StartVoltageV = 90, TrackingMinV = 10 });
        foreach (IRule rule in DesignRules.All)
        {
            Assert.All(rule.Judge(context), finding =>
            {
                Assert.StartsWith(rule.Card.Name, finding.Rule, StringComparison.Ordinal);
                Assert.InRange(finding.Level, Level.Go, rule.Card.Worst);
                Assert.NotEqual("", finding.Working);
                Assert.NotEqual("", finding.Source);
            });
        }
    }

    [Fact]
    public void The_table_in_the_docs_is_the_list_of_rules()
    {
        string[] written = [.. File.ReadLines(Path.Combine(Root(), "docs", "rules.md")).Where(line => line.StartsWith("| `", StringComparison.Ordinal))];
        RuleCard[] cards = [.. DesignRules.All.Select(rule => rule.Card), UnitRules.Card, .. PartRules.All.Select(rule => rule.Card)];
        Assert.Equal(cards.Select(card => $"| `{card.Name}` | {card.Checks} | {card.Source} | {card.Worst.ToString().ToLowerInvariant()} |"), written);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(61)]
    [InlineData(420)]
    public void The_cautions_are_sentences(double highestV) =>
        Assert.All(Cautions.For(highestV), caution => Assert.Matches(@"^[A-Z].*\.$", caution));

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Arraywright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run from within the repository.");
    }
}

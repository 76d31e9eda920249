namespace Arraywright.Limits.Rules;

/// <summary>How a rule introduces itself: the line of docs/rules.md.</summary>
/// <param name="Name">snake_case; the findings of the rule carry it, or begin with it.</param>
/// <param name="Checks">What is held against what.</param>
/// <param name="Source">The standard or the practice behind it.</param>
/// <param name="Worst">The worst it can say.</param>
internal sealed record RuleCard(string Name, string Checks, string Source, Level Worst);

/// <summary>One rule: no state, one question.</summary>
internal interface IRule
{
    /// <summary>Its line in the list of rules.</summary>
    public RuleCard Card { get; }

    /// <summary>What it says of a wiring; nothing where it does not apply.</summary>
    public IEnumerable<Finding> Judge(RuleContext context);
}

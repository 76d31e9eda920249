namespace Arraywright.Limits.Conductors;

/// <summary>Which rules the parts of a plan go by.</summary>
public static class PartsRules
{
    /// <summary>What the assumption is called in a list of assumptions.</summary>
    public const string AssumedName = "rules for the parts";

    /// <summary>The plan's own; else those of the region it stands in.</summary>
    public static Sourced<RuleSet> For(Plan plan) => plan switch
    {
        { Rules: { } rules } => Sourced.Given(rules),
        { Place: { } place } when IsUnderUsRules(place) => Sourced.Assumed(RuleSet.Us, "The place lies in North America."),
        { Place: not null } => Sourced.Assumed(RuleSet.Iec, "The place does not lie in North America."),
        _ => Sourced.Assumed(RuleSet.Iec, "The place is not known."),
    };

    /// <summary>The rules in short words.</summary>
    public static string Name(RuleSet rules) => rules == RuleSet.Us ? "us (NEC article 690)" : "iec (IEC 60364-7-712, IEC 62548)";

    /// <summary>The assumption; null where the plan names the rules.</summary>
    internal static Assumption? Assumed(Plan plan) => For(plan) is { Origin: Origin.Assumed } rules
        ? new Assumption(AssumedName, Name(rules.Value), $"{rules.Why} Write \"rules: us\" or \"rules: iec\"; sizes differ by a step at most. Your own code decides.")
        : null;

    /// <summary>North America and Hawaii, roughly: from Panama to the Arctic. A neighbour may go by either; the plan can say.</summary>
    private static bool IsUnderUsRules(Place place) =>
        place is { LatitudeDeg: > 7 and < 75, LongitudeDeg: > -170 and < -50 };
}

using Arraywright.Limits.Rules;

namespace Arraywright.Limits.Asking;

/// <summary>What only the label, the datasheet, or the maker of a panel can say.</summary>
internal static class PanelQuestions
{
    /// <summary>The questions that the findings call for; empty when none concerns the panels.</summary>
    public static IReadOnlyList<string> For(RuleContext context, IReadOnlyList<Finding> asked) =>
    [
        .. SilentAbout(context, asked, "back_feed").Select(name => $"What is the largest series fuse (maximum overcurrent protection rating), in amps, of the panel \"{name}\" ({Describe(context, name)})?"),
        .. SilentAbout(context, asked, "system_voltage").Select(name => $"What is the highest system voltage, in volts, of the panel \"{name}\" ({Describe(context, name)})?"),
        .. SilentAbout(context, asked, "cold_voltage").Select(name => $"What is the tolerance of the open-circuit voltage, in percent, of the panel \"{name}\" ({Describe(context, name)}), and its temperature coefficient in %/K?"),
    ];

    /// <summary>Kinds in the wiring whose label leaves out what a finding turns on.</summary>
    public static IEnumerable<string> SilentAbout(RuleContext context, IReadOnlyList<Finding> asked, string rule) =>
        asked.Any(finding => finding.Rule.StartsWith(rule, StringComparison.Ordinal))
            ? context.Wiring.Panels.Distinct().Where(name => rule switch
            {
                "back_feed" => context.Panel(name).MaxSeriesFuseA is null,
                "system_voltage" => context.Panel(name).MaxSystemVoltageV is null,
                _ => context.Panel(name).ToleranceFraction.Origin != Origin.Given,
            })
            : [];

    private static string Describe(RuleContext context, string name) =>
        $"{Figures.Label(context.Panel(name).PowerW.Value, "W")}, open circuit {Figures.Label(context.Panel(name).OpenCircuitV, "V")}, short circuit {Figures.Label(context.Panel(name).ShortCircuitA, "A")}";
}

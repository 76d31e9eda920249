namespace Arraywright.Page.Views;

/// <summary>What each rule is for, as one would say it to a beginner. English; the language files have the rest.</summary>
internal static class RuleWords
{
    private static readonly (string Rule, string Words)[] All =
    [
        ("cold_voltage", "Panels make more volts when they are cold. On the coldest bright morning, with nothing drawn yet, the input sees the most volts it will ever see, and it must bear them."),
        ("system_voltage", "The panels themselves are built for a highest voltage too: the whole string's, measured from its ends."),
        ("short_circuit_current", "Strings side by side add their amps. This is the most the array could push, held against what the input bears."),
        ("strong_sun_current", "Now and then the sun is stronger than on the label: cloud edges and snow add up to a quarter. Cables and fuses must bear that; the input's rating usually allows for it."),
        ("stated_parts", "Whatever the input takes, the amps pass through connectors and a socket first. The weakest of them must bear the strongest sun, or it overheats."),
        ("draw_limit", "An input draws no more amps than it is built for. What the panels could give above that is lost in full sun, and no harm if the maker says so."),
        ("power_limit", "An input takes no more watts than it is built for. More panels still help in dull weather; in full sun the rest is lost."),
        ("unit_power", "All inputs of one unit together take no more watts than the unit is built for."),
        ("start_voltage", "In dim light and heat the volts drop. Below its start voltage the input stays asleep."),
        ("tracking_window", "The input looks for the most power within a window of volts. Hot, dim or cold, the array should stay inside it."),
        ("back_feed", "If one panel of strings side by side fails, the others push their amps backwards into it. Its label says which fuse would stop that in time."),
        ("unequal_strings", "Strings side by side share one voltage. If they would like different ones, each gives up a little."),
        ("unequal_series", "Panels in a row share one current. The weakest holds the others back."),
    ];

    /// <summary>The English words for a finding's rule; empty for one that is not known.</summary>
    public static string Of(string rule) => All.FirstOrDefault(known => rule.StartsWith(known.Rule, StringComparison.Ordinal)).Words ?? "";

    /// <summary>Every English word here, for whoever checks a language file.</summary>
    public static IEnumerable<string> Words => All.Select(known => known.Words);
}

using System.Collections.Immutable;

namespace Arraywright.Host.Api;

/// <summary>A member at the top of an answer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="JsonType">Its type; with a question mark where it may be null.</param>
/// <param name="About">What it is.</param>
internal sealed record AnswerMember(string Name, string JsonType, string About);

/// <summary>The members of each answer; docs/command.md tells what is in them.</summary>
internal static class AnswerMembers
{
    /// <summary>Those of every answer.</summary>
    public static readonly ImmutableArray<AnswerMember> OfAll =
    [
        new("format", "integer", "1; raised when a name changes or goes"),
        new("plan", "string", "title of the plan"),
        new("verdict", "string", "go, ask or stop"),
        new("assumed", "array", "what was left out and filled in: what, value, why"),
        new("cautions", "array", "what to mind before touching a lead"),
        new("doubts", "array", "label figures that are possible but odd"),
    ];

    public static readonly ImmutableArray<AnswerMember> Check =
    [
        new("cold", "object", "all that is known of the coldest air"),
        new("designs", "array", "the stated wiring, judged"),
    ];

    public static readonly ImmutableArray<AnswerMember> Plan =
    [
        new("cold", "object", "all that is known of the coldest air"),
        new("designs", "array", "the wirings, best first, judged"),
        new("search", "object", "what was searched and how far it is proved; stopped_early where the time ran out"),
    ];

    public static readonly ImmutableArray<AnswerMember> Curve =
    [
        new("input", "string", "name of the input"),
        new("wiring", "string", "the wiring on it"),
        new("panels", "integer", "how many panels that is"),
        new("voltage_v", "array", "volts of the curve"),
        new("current_a", "array", "amps at them"),
        new("power_w", "array", "watts at them"),
        new("maximum_power", "object", "the highest hill of power"),
        new("operating", "object", "what the input takes"),
        new("local_maxima", "array", "every hill of power"),
    ];

    public static readonly ImmutableArray<AnswerMember> Year = [.. Energy(), new("months", "array", "month by month")];

    public static readonly ImmutableArray<AnswerMember> Day =
    [
        new("date", "string", "the day"),
        new("sunrise_hour", "number?", "hour of sunrise by standard time; null where the sun does not rise"),
        new("sunset_hour", "number?", "hour of sunset"),
        .. Energy(),
        new("steps", "array", "step by step"),
    ];

    public static readonly ImmutableArray<AnswerMember> Parts =
    [
        new("rules", "string", "us or iec"),
        new("currency", "string?", "currency of the prices"),
        new("inputs", "array", "every piece of each input's array, with what it must bear and what it is"),
        new("shopping", "array", "what to buy, what is owned left out"),
        new("alternatives", "array", "thicker cable, a wiring without fuses: what it costs and brings"),
    ];

    public static readonly ImmutableArray<AnswerMember> Grow =
    [
        new("weather_source", "string", "where the weather comes from"),
        new("worth_percent", "number", "share of the first panel's gain that another has to bring"),
        new("currency", "string?", "currency of the prices"),
        new("stated_kwh", "number?", "what the plan's own wiring brings"),
        new("best", "string?", "the kind to buy"),
        new("kinds", "array", "each kind with what one more after another brings"),
        new("ideal", "array", "which label would fill each input"),
    ];

    public static readonly ImmutableArray<AnswerMember> Tilt =
    [
        new("weather_source", "string", "where the weather comes from"),
        new("spans", "array", "best facing of the year and of its parts"),
        new("by_tilt", "array", "energy over the tilt"),
        new("within_1_percent_from_deg", "number", "lowest tilt within 1 % of the best"),
        new("within_1_percent_to_deg", "number", "highest tilt within 1 % of the best"),
        new("two_tilts", "object?", "what a second tilt in the year would add; null for nothing"),
        new("wirings", "array", "the wiring of each input"),
    ];

    public static readonly ImmutableArray<AnswerMember> Ask = [new("letters", "array", "one letter an input that only its maker can clear")];

    private static ImmutableArray<AnswerMember> Energy() =>
    [
        new("weather_source", "string", "where the weather comes from"),
        new("delivered_kwh", "number", "into the inputs"),
        new("clipped_kwh", "number", "held back by limits"),
        new("within_hour_kwh", "number", "of that, only within the minutes of an hour"),
        new("stored_kwh", "number", "used or stored"),
        new("plane_kwh_m2", "number", "sun in the plane of the panels"),
        new("losses", "array", "the ladder from label to store"),
        new("hours_limited", "object", "hours held by current, power and voltage, and off in light"),
        new("battery", "object?", "the battery's year or day; null without one"),
        new("wirings", "array", "the wiring of each input"),
    ];
}

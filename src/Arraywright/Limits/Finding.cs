namespace Arraywright.Limits;

/// <summary>What a finding means for the person about to connect.</summary>
public enum Level
{
    /// <summary>Nothing against it.</summary>
    Go,

    /// <summary>Not before somebody who knows has answered.</summary>
    Ask,

    /// <summary>Do not connect.</summary>
    Stop,
}

/// <summary>What one rule says of one wiring on one input.</summary>
/// <param name="Rule">Name of the rule, snake_case: "cold_voltage".</param>
/// <param name="Title">What is compared, in plain words.</param>
/// <param name="Level">Go, ask or stop.</param>
/// <param name="Value">The figure found, in <paramref name="Unit"/>.</param>
/// <param name="Limit">The figure it is held against, in <paramref name="Unit"/>; null when nothing is stated.</param>
/// <param name="Unit">"V", "A", "W", "%".</param>
/// <param name="Working">The arithmetic as a person would write it.</param>
/// <param name="Source">The standard, the label or the practice behind the rule.</param>
/// <param name="Note">What it means or what to do, one sentence; null when the figures say it all.</param>
public sealed record Finding(
    string Rule,
    string Title,
    Level Level,
    double Value,
    double? Limit,
    string Unit,
    string Working,
    string Source,
    string? Note = null)
{
    /// <summary>Room left to the limit, in % of the limit; negative when over; null when there is no limit. For a floor, room above it.</summary>
    public double? MarginPercent { get; init; } = Limit is > 0 ? (Limit.Value - Value) / Limit.Value * 100 : null;
}

using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>What an array may offer to an input in a short circuit, after what is stated of the input.</summary>
/// <param name="Field">Plan key of the figure that stands for it.</param>
/// <param name="Limit">The figure and the word behind it.</param>
internal sealed record OfferedCurrent(string Field, Limit Limit)
{
    /// <summary>The stated short-circuit limit; else the printed current of unknown meaning; else what the input draws, which stands in until somebody says more; null when no current is stated.</summary>
    public static OfferedCurrent? To(DcInput input) =>
        input.MaxShortCircuitCurrent is { } stated ? new("max_short_circuit_current", stated)
        : input.RatedCurrent is { } rated ? new("rated_current", rated)
        : input.MaxCurrent is { } drawn ? new("max_current", drawn)
        : null;

    /// <summary>The word behind a limit, as a source.</summary>
    public static string Word(Limit limit) => limit.Evidence.Kind switch
    {
        EvidenceKind.Label => "printed on the unit",
        EvidenceKind.Manual => "the manual",
        EvidenceKind.Maker => "the maker's written answer",
        _ => "stated in the plan, nobody's word behind it",
    };

    /// <summary>The figure, and how it was raised by evidence.</summary>
    public static string Written(Limit limit, string unit) => limit.Allowed > limit.Figure
        ? $"{Figures.Label(limit.Figure, unit)} + {Figures.Percent(limit.Evidence.ExceedFraction)} = {Figures.Label(limit.Allowed, unit)}"
        : Figures.Label(limit.Figure, unit);
}

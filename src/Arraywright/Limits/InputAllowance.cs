using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What may be connected to an input without asking anybody: the rules' own limits, ahead of any wiring.</summary>
public static class InputAllowance
{
    /// <summary>Most short-circuit amps by label, A; 0 where no current is stated, since then any array must be asked about.</summary>
    public static double ShortCircuitA(DcInput input) => OfferedCurrent.To(input)?.Limit.Allowed ?? 0;

    /// <summary>Most short-circuit amps by label that the connectors and the socket bear, whoever allows more, A; infinite where no rating is stated.</summary>
    public static double PartsA(DcInput input) => StatedPartsRule.MostA(input);

    /// <summary>Most amps at maximum power by label, A; infinite where nothing is stated or the word behind the limit clears any.</summary>
    /// <remarks>After <see cref="ShortCircuitA"/>: a word on what the array may offer clears what is drawn, as long as no more is offered.</remarks>
    public static double MaximumPowerA(DcInput input) => (input.MaxCurrent ?? input.RatedCurrent) switch
    {
        null => double.PositiveInfinity,
        { Evidence.ExceedFraction: > 0 } limit => limit.Allowed,
        { } when input.MaxShortCircuitCurrent is { Evidence.Kind: >= EvidenceKind.Label } => double.PositiveInfinity,
        { } limit => input.MaxCurrent is not null && Clipping.Clears(limit, double.MaxValue) ? double.PositiveInfinity : limit.Figure,
    };

    /// <summary>Most label watts on an input, W; infinite where nothing is stated or the word behind the limit clears any.</summary>
    public static double LabelPowerW(DcInput input) => LabelPowerW(input.MaxPower);

    /// <summary>The same of a unit, all inputs together.</summary>
    public static double LabelPowerW(ChargingUnit unit) => LabelPowerW(unit.MaxPower);

    private static double LabelPowerW(Limit? maxPower) => maxPower switch
    {
        null => double.PositiveInfinity,
        { Evidence.ExceedFraction: > 0 } limit => limit.Allowed,
        { } limit => Clipping.Clears(limit, double.MaxValue) ? double.PositiveInfinity : limit.Figure,
    };
}

using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What may be connected to an input without asking anybody: the rules' own limits, ahead of any wiring.</summary>
public static class InputAllowance
{
    /// <summary>Most short-circuit amps by label, A; 0 where no current is stated, since then any array must be asked about.</summary>
    public static double ShortCircuitA(DcInput input) => OfferedCurrent.To(input)?.Limit.Allowed ?? 0;

    /// <summary>Most label watts, W; infinite where nothing is stated or the word behind the limit clears any.</summary>
    public static double LabelPowerW(DcInput input) => input.MaxPower switch
    {
        null => double.PositiveInfinity,
        { Evidence.ExceedFraction: > 0 } limit => limit.Allowed,
        { } limit => Clipping.Clears(limit, double.MaxValue) ? double.PositiveInfinity : limit.Figure,
    };
}

using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>When a figure over a current or power limit is clipping, watts left unused, and not a danger.</summary>
internal static class Clipping
{
    /// <summary>Whether the word behind a limit clears a figure over it. A stated allowance bounds what it clears; without one, manual or maker must say that this is what the input takes at most.</summary>
    public static bool Clears(Limit limit, double value) => limit.Evidence.ExceedFraction > 0
        ? !Figures.Over(value, limit.Allowed)
        : limit.Evidence.Kind >= EvidenceKind.Manual;

    /// <summary>The watts that a limit cuts at standard conditions, as a sentence.</summary>
    public static string Cut(OperatingPoint point) => point.LimitedBy switch
    {
        LimitedBy.None => "At standard conditions the circuit stays just under it: nothing is cut.",
        LimitedBy.AboveWindow => "At standard conditions it would hold the array above the tracking window: what the input takes there is not known.",
        LimitedBy.Off => "At standard conditions the input does not run.",
        _ => $"{Figures.Result(point.UnlimitedPowerW - point.PowerW, "W")} of {Figures.Result(point.UnlimitedPowerW, "W")} are cut at standard conditions, by the {Named(point.LimitedBy)}.",
    };

    private static string Named(LimitedBy limited) => limited switch
    {
        LimitedBy.Current => "current limit",
        LimitedBy.Power => "power limit",
        _ => "voltage window",
    };
}

using Arraywright.Gear;

namespace Arraywright.Limits.Conductors;

/// <summary>The largest fuse that may stand before thin copper, whatever its table allows (NEC 240.4(D), copper; from memory).</summary>
internal static class SmallConductor
{
    public const string Source = "NEC 240.4(D), from memory";

    /// <summary>From 18 AWG to 8 AWG, which no cap holds.</summary>
    private static readonly (double AreaMm2, double FuseA)[] Caps =
        [.. ConductorSize.Gauges.Zip([7, 10, 15, 20, 30, double.PositiveInfinity], (size, fuseA) => (size.AreaMm2 * (1 - 1e-3), fuseA))];

    /// <summary>The largest fuse before copper of a cross-section, A; infinite above 10 AWG and by rules that know no such cap, 0 below 18 AWG.</summary>
    public static double MostFuseA(double areaMm2, RuleSet rules) =>
        rules == RuleSet.Us ? Caps.LastOrDefault(cap => areaMm2 >= cap.AreaMm2).FuseA : double.PositiveInfinity;
}

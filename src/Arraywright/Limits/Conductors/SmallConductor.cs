using Arraywright.Gear;

namespace Arraywright.Limits.Conductors;

/// <summary>The largest fuse that may stand before thin copper, whatever its table allows (NEC 240.4(D), copper; from memory).</summary>
internal static class SmallConductor
{
    public const string Source = "NEC 240.4(D), from memory";

    private static readonly (ConductorSize Size, double FuseA)[] Caps =
        [.. ConductorSize.Gauges.Take(5).Zip([7.0, 10.0, 15.0, 20.0, 30.0])];

    /// <summary>The largest fuse before copper of a cross-section, A; infinite above 10 AWG and by rules that know no such cap, 0 below 18 AWG.</summary>
    public static double MostFuseA(double areaMm2, RuleSet rules)
    {
        double Area(int gauge) => ConductorSize.Gauges[gauge].AreaMm2 * (1 - 1e-3);
        return rules != RuleSet.Us || areaMm2 >= Area(Caps.Length) ? double.PositiveInfinity
            : Caps.LastOrDefault(cap => areaMm2 >= cap.Size.AreaMm2 * (1 - 1e-3)).FuseA;
    }
}

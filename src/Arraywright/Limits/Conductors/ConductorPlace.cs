using Arraywright.Climate;
using Arraywright.Gear;

namespace Arraywright.Limits.Conductors;

/// <summary>How a conductor lies and after whose rules: what its ampacity depends on beside its size.</summary>
/// <param name="Rules">After whose rules.</param>
/// <param name="Class">How it is made.</param>
/// <param name="Laying">Where it lies.</param>
/// <param name="AmbientC">Hottest surroundings, °C.</param>
/// <param name="Loaded">Current-carrying wires that lie together, itself included.</param>
/// <param name="TerminalC">What the terminals are marked for, 60, 75 or 90 °C.</param>
public sealed record ConductorPlace(RuleSet Rules, CableClass Class, Laying Laying, double AmbientC, int Loaded, double TerminalC)
{
    /// <summary>How much hotter than the air a cable behind panels or in the sun may be, K. Common practice: the air behind a panel stays below its cells, which run 20 to 25 K above the air.</summary>
    public const double InSunK = 20;

    /// <summary>The same for a conduit in the sun close to a roof, K (NEC 310.15(B)(2), 33 °C; from memory).</summary>
    public const double ConduitInSunK = 33;

    /// <summary>Terminals that are not marked otherwise, up to 100 A, °C (NEC 110.14(C)).</summary>
    public const double UsualTerminalC = 60;

    /// <summary>The pair alone.</summary>
    public const int UsualLoaded = 2;

    /// <summary>Where a plan's cable lies.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="temperatures">Its design temperatures.</param>
    public static ConductorPlace Of(Plan plan, DesignTemperatures temperatures)
    {
        Laying laying = plan.Cable.Laying ?? Laying.Surface;
        return new ConductorPlace(
            PartsRules.For(plan).Value,
            plan.Cable.Made,
            laying,
            plan.Cable.AmbientC ?? (temperatures.HottestAirC + (laying == Laying.Conduit ? ConduitInSunK : InSunK)),
            plan.Cable.Bundled ?? UsualLoaded,
            plan.Cable.TerminalC ?? UsualTerminalC);
    }
}

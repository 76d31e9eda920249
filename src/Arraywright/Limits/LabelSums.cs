using Arraywright.Electrical;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What a wiring's labels add up to at standard test conditions: the arithmetic people check by hand.</summary>
public static class LabelSums
{
    /// <summary>Open-circuit voltage of the highest string alone, V; a block of panels side by side counts with its highest.</summary>
    public static double OpenCircuitV(Wiring wiring, IReadOnlyDictionary<string, PanelStock> stock) =>
        wiring.HighestV(name => stock[name].Panel.OpenCircuitV);

    /// <summary>Short-circuit current, A: strings add. A string of unequal panels counts with its largest, since the others may be bypassed.</summary>
    public static double ShortCircuitA(Wiring wiring, IReadOnlyDictionary<string, PanelStock> stock) =>
        wiring.Fold(name => stock[name].Panel.ShortCircuitA, Enumerable.Max, Enumerable.Sum);

    /// <summary>Current at maximum power, A: strings add. A string of unequal panels counts with its smallest, which holds the others back.</summary>
    public static double MaximumPowerA(Wiring wiring, IReadOnlyDictionary<string, PanelStock> stock) =>
        wiring.Fold(name => stock[name].Panel.MaximumPowerA.Value, Enumerable.Min, Enumerable.Sum);

    /// <summary>Rated power of all panels, W.</summary>
    public static double PowerW(Wiring wiring, IReadOnlyDictionary<string, PanelStock> stock) =>
        wiring.Panels.Sum(name => stock[name].Panel.PowerW.Value);
}

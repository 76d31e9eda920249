using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What is judged of a unit as a whole, over the wirings on all its inputs.</summary>
public static class UnitRules
{
    internal static RuleCard Card { get; } = new(
        "unit_power",
        "Sum of label watts on all inputs of a unit against what the unit takes at most; as power_limit",
        "practice: an input takes what it can of what is offered; the evidence stated for the unit",
        Level.Ask);

    /// <summary>Whether a finding speaks of a whole unit, though it stands with one of its inputs.</summary>
    public static bool Says(Finding finding) => finding.Rule == Card.Name;

    /// <summary>What the rules say of a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="wirings">The wirings on its inputs, by input name, in plan order; unused inputs left out.</param>
    /// <param name="stock">Every kind of panel in them, by its name.</param>
    /// <returns>Empty when the unit states nothing for the whole, or nothing is connected.</returns>
    public static ImmutableArray<Finding> Judge(
        ChargingUnit unit,
        IEnumerable<(string Input, Wiring Wiring)> wirings,
        IReadOnlyDictionary<string, PanelStock> stock)
    {
        (string Input, double PowerW)[] parts = [.. wirings.Select(pair => (pair.Input, LabelSums.PowerW(pair.Wiring, stock)))];
        if (unit.MaxPower is null || parts.Length == 0)
        {
            return [];
        }

        string sum = string.Join(" + ", parts.Select(part => $"{part.Input} {Figures.Label(part.PowerW, "W")}"));
        return [PowerLimitRule.Against(Card.Name, $"Label watts on all inputs of {unit.Name} against what it takes at most", unit.MaxPower, parts.Sum(part => part.PowerW), sum)];
    }
}

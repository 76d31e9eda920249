using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Tells what was filled in to make a panel of its label.</summary>
public static class PanelAssumptions
{
    /// <summary>One entry for each figure that the label does not state, in the order of the members of <see cref="Panel"/>.</summary>
    /// <remarks>Each says why this figure and how much the answer moves if it is wrong. Empty for a label that states everything.</remarks>
    public static IReadOnlyList<Assumption> Of(Panel panel)
    {
        List<Assumption> assumed = [];
        Add("power", panel.PowerW, Computed(panel.PowerW.Value) + " W", "");
        Add("vmp", panel.MaximumPowerV, Computed(panel.MaximumPowerV.Value) + " V", "If it is 5 % off, imp is 5 % off the other way and the power stays.");
        Add("imp", panel.MaximumPowerA, Computed(panel.MaximumPowerA.Value) + " A", "If it is 5 % off, vmp is 5 % off the other way and the power stays.");
        Add("voc_temperature", panel.OpenCircuitPerK, PercentPerK(panel.OpenCircuitPerK.Value), IfVoltageIsOff(panel));
        Add("isc_temperature", panel.ShortCircuitPerK, PercentPerK(panel.ShortCircuitPerK.Value), "If it is 0.02 %/K off, a panel 40 K hotter gives 0.8 % more or less current.");
        Add("cells", panel.Cells, panel.Cells.Value.ToString(), "Hardly anything rests on it: the curve is fitted to the label.");
        Add("bypass_diodes", panel.BypassDiodes, panel.BypassDiodes.Value.ToString(), "It counts only where shade falls on part of a panel or panels in series are unequal.");
        Add("tolerance", panel.ToleranceFraction, Figure(panel.ToleranceFraction.Value * 100) + " %", $"Each 1 % adds {Computed(panel.OpenCircuitV / 100)} V a panel to the volts held against the limit.");
        Add("technology", panel.Technology, TypicalFigures.Of(panel.Technology.Value).Name, "It chooses the typical figures and moves nothing that the label states.");
        return assumed;

        void Add<T>(string what, Sourced<T> sourced, string value, string ifWrong)
        {
            if (sourced.Origin != Origin.Given)
            {
                string moves = sourced.Origin == Origin.Derived ? "Computed from the label, nothing guessed." : ifWrong;
                assumed.Add(new Assumption($"{panel.Name} {what}", value, $"{Sentence(sourced.Why)} {moves}"));
            }
        }
    }

    private static string IfVoltageIsOff(Panel panel) =>
        $"If it is 0.05 %/K off, a panel 40 K hotter or colder has 2 % ({Computed(panel.OpenCircuitV * 0.02)} V) more or less; the cold-voltage limit does not rest on it.";

    private static string Sentence(string? why) => string.IsNullOrEmpty(why) ? "" : $"{char.ToUpperInvariant(why[0])}{why[1..]}.";
}

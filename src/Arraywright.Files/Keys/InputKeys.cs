using Arraywright.Files.Quantities;

namespace Arraywright.Files.Keys;

/// <summary>Keys of an input.</summary>
internal static class InputKeys
{
    public static readonly NameKey Name = new("name", "store-a", "Name of the input.") { Required = true };

    public static readonly QuantityKey MaxVoltage = new("max_voltage", QuantityKinds.Voltage.Within(1, 2000), "50 V", "Highest voltage the input bears. Hard: nothing moves it.") { Required = true };

    public static readonly QuantityKey StartVoltage = new("start_voltage", QuantityKinds.Voltage.Within(0.5, 2000), "12 V", "Voltage below which it does not start.") { Otherwise = "the lower end of mpp_voltage, or any" };

    public static readonly RangeKey MppVoltage = new("mpp_voltage", QuantityKinds.Voltage, "12..45 V", "Voltages in which it looks for the maximum power point.") { Otherwise = "anything up to max_voltage" };

    public static readonly LimitKey MaxCurrent = new("max_current", QuantityKinds.Current, "10 A", "What it draws at most; it clips what is above.") { Otherwise = "rated_current, or no limit" };

    public static readonly LimitKey MaxShortCircuitCurrent = new("max_short_circuit_current", QuantityKinds.Current, "14 A", "Largest short-circuit current the array may have.")
    {
        Otherwise = "rated_current, or no limit is known",
    };

    public static readonly LimitKey RatedCurrent = new("rated_current", QuantityKinds.Current, "10 A", "A printed current of unknown meaning: taken as what it draws and as what the array may offer, until evidence tells them apart.")
    {
        Otherwise = "none",
    };

    public static readonly LimitKey MaxPower = new("max_power", QuantityKinds.Power, "400 W", "What it takes at most; it clips what is above.") { Otherwise = "no limit" };

    public static readonly QuantityKey Efficiency = new("efficiency", QuantityKinds.Percent.Within(0.3, 1), "95 %", "Conversion efficiency from the input to the battery.") { Otherwise = "typical" };

    public static readonly NameKey Unit = new("unit", "dairy-store", "Name of the unit that this input belongs to.") { Otherwise = "it stands alone" };

    public static readonly WiringKey Wiring = new("wiring", "(shed-120 + shed-120) | (shed-120 + shed-120)", "The wiring to judge with `check`: + in series, | in parallel, 3*a for three in series.") { Otherwise = "the search finds one" };

    public static readonly SectionKey Battery = new("battery", BatteryKeys.Section, "The battery behind this input.") { Otherwise = "it never fills" };

    public static readonly PlanSection Section = new(
        "an input",
        [Name, MaxVoltage, StartVoltage, MppVoltage, MaxCurrent, MaxShortCircuitCurrent, RatedCurrent, MaxPower, Efficiency, Unit, Wiring, Battery]);
}

/// <summary>Keys of a limit written as a group.</summary>
internal static class LimitKeys
{
    public static readonly LimitValueKey Value = new("value", "14 A", "The figure, with its unit.") { Required = true };

    public static readonly ChoiceKey Evidence = new("evidence", ["none", "label", "manual", "maker"], "maker", "Who says so.") { Otherwise = "none" };

    public static readonly TextKey Note = new("note", "letter of 2026-03-02, \"array short-circuit current\"", "Date and wording, which quantity it speaks of.") { Otherwise = "none" };

    public static readonly QuantityKey Exceed = new("exceed", QuantityKinds.Percent.Within(0, 2), "20 %", "What that evidence allows above the value.") { Otherwise = "0 %" };

    public static readonly PlanSection Section = new("a limit", [Value, Evidence, Note, Exceed]);
}

/// <summary>Keys of a battery.</summary>
internal static class BatteryKeys
{
    public static readonly QuantityKey Capacity = new("capacity", QuantityKinds.Energy, "900 Wh", "Usable energy from empty to full.") { Required = true };

    public static readonly QuantityKey From = new("from", QuantityKinds.Percent, "20 %", "State of charge at the start.") { Otherwise = "0 %" };

    public static readonly QuantityKey To = new("to", QuantityKinds.Percent, "100 %", "State of charge at which charging stops.") { Otherwise = "100 %" };

    public static readonly QuantityKey Load = new("load", QuantityKinds.Power.Within(0, 1e6), "40 W", "Constant load drawn meanwhile.") { Otherwise = "0 W" };

    public static readonly PlanSection Section = new("a battery", [Capacity, From, To, Load]);
}

/// <summary>Keys of a unit with several inputs.</summary>
internal static class UnitKeys
{
    public static readonly NameKey Name = new("name", "dairy-store", "Name of the unit; its inputs call it by `unit:`.") { Required = true };

    public static readonly LimitKey MaxPower = new("max_power", QuantityKinds.Power, "800 W", "What all its inputs together take at most.") { Otherwise = "no shared limit" };

    public static readonly SectionKey Battery = new("battery", BatteryKeys.Section, "The battery its inputs share.") { Otherwise = "it never fills" };

    public static readonly PlanSection Section = new("a unit", [Name, MaxPower, Battery]);
}

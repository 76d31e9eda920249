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

    public static readonly QuantityKey SelfUse = new("self_use", QuantityKinds.Power.Within(0, 1000), "5 W", "What its electronics use while it works.") { Otherwise = "0 W" };

    public static readonly QuantityKey Connector = new("connector", QuantityKinds.Current.Within(1, 200), "30 A", "Rating of the array's connectors and branch connectors, the lowest of them.") { Otherwise = "30 A, the usual" };

    public static readonly QuantityKey Socket = new("socket", QuantityKinds.Current.Within(1, 200), "20 A", "Rating of the unit's solar socket and of the adapter into it, the lower of the two.") { Otherwise = "unknown; `parts` then asks" };

    public static readonly ChoiceKey WattMeter = new("watt_meter", ["none", "wanted"], "wanted", "Whether a watt meter is to stand in the cable.") { Otherwise = "none" };

    public static readonly NameKey Unit = new("unit", "dairy-store", "Name of the unit that this input belongs to.") { Otherwise = "it stands alone" };

    public static readonly WiringKey Wiring = new("wiring", "(shed-120 + shed-120) | (shed-120 + shed-120)", "The wiring to judge with `check`: + in series, | in parallel, 3*a for three in series.") { Otherwise = "the search finds one" };

    public static readonly SectionKey Battery = new("battery", BatteryKeys.Section, "The battery behind this input.") { Otherwise = "it never fills" };

    public static readonly PlanSection Section = new(
        "an input",
        [Name, MaxVoltage, StartVoltage, MppVoltage, MaxCurrent, MaxShortCircuitCurrent, RatedCurrent, MaxPower, Efficiency, SelfUse, Connector, Socket, WattMeter, Unit, Wiring, Battery]);
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

    public static readonly LoadKey Load = new("load", "40 W", "Load drawn meanwhile: constant, or a list of hours.") { Otherwise = "0 W" };

    public static readonly QuantityKey Reserve = new("reserve", QuantityKinds.Percent, "20 %", "State of charge that loads may not draw below.") { Otherwise = "0 %" };

    public static readonly ChoiceKey Chemistry = new("chemistry", ["iron phosphate", "nickel", "lead"], "iron phosphate", "What it is made of, which decides how it takes its last charge.") { Otherwise = "iron phosphate" };

    public static readonly QuantityKey MaxCharge = new("max_charge", QuantityKinds.Power, "500 W", "Most power it is charged with.") { Otherwise = "half its capacity an hour" };

    public static readonly PlanSection Section = new("a battery", [Capacity, From, To, Load, Reserve, Chemistry, MaxCharge]);
}

/// <summary>Keys of a load by the hour.</summary>
internal static class LoadHoursKeys
{
    public static readonly HourKey From = new("from", "18:00", "Local clock hour at which the load begins.") { Required = true };

    public static readonly HourKey To = new("to", "23:30", "Local clock hour at which it ends; earlier than the beginning means the next morning.") { Required = true };

    public static readonly QuantityKey Power = new("power", QuantityKinds.Power.Within(0, 1e6), "60 W", "Power drawn meanwhile; loads at the same hour add up.") { Required = true };

    public static readonly PlanSection Section = new("hours of load", [From, To, Power]);
}

/// <summary>Keys of a unit with several inputs.</summary>
internal static class UnitKeys
{
    public static readonly NameKey Name = new("name", "dairy-store", "Name of the unit; its inputs call it by `unit:`.") { Required = true };

    public static readonly LimitKey MaxPower = new("max_power", QuantityKinds.Power, "800 W", "What all its inputs together take at most.") { Otherwise = "no shared limit" };

    public static readonly SectionKey Battery = new("battery", BatteryKeys.Section, "The battery its inputs share.") { Otherwise = "it never fills" };

    public static readonly PlanSection Section = new("a unit", [Name, MaxPower, Battery]);
}

using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Power, volts and amps at maximum power, what the label leaves out filled in.</summary>
internal readonly record struct MaximumPower(Sourced<double> PowerW, Sourced<double> VoltageV, Sourced<double> CurrentA)
{
    /// <summary>Null when the label has neither power with voc and isc, nor power with one of vmp and imp, nor vmp with imp.</summary>
    public static MaximumPower? Of(PanelLabel label, TypicalFigures typical) => (label.PowerW, label.MaximumPowerV, label.MaximumPowerA) switch
    {
        ({ } powerW, { } voltageV, { } currentA) => new(Sourced.Given(powerW), Sourced.Given(voltageV), Sourced.Given(currentA)),
        (null, { } voltageV, { } currentA) => new(
            Sourced.Derived(voltageV * currentA, $"product of vmp and imp: {Figure(voltageV)} V × {Figure(currentA)} A"),
            Sourced.Given(voltageV),
            Sourced.Given(currentA)),
        ({ } powerW, { } voltageV, null) => new(
            Sourced.Given(powerW),
            Sourced.Given(voltageV),
            Sourced.Derived(powerW / voltageV, $"power over vmp: {Figure(powerW)} W / {Figure(voltageV)} V")),
        ({ } powerW, null, { } currentA) => new(
            Sourced.Given(powerW),
            Sourced.Derived(powerW / currentA, $"power over imp: {Figure(powerW)} W / {Figure(currentA)} A"),
            Sourced.Given(currentA)),
        ({ } powerW, null, null) when label is { OpenCircuitV: { } vocV, ShortCircuitA: { } iscA } => Split(powerW, vocV, iscA, typical),
        _ => null,
    };

    /// <summary>Splits a power into volts and amps: a fixed share of what the fill factor lacks to 1 lies in the voltage.</summary>
    private static MaximumPower Split(double powerW, double vocV, double iscA, TypicalFigures typical)
    {
        double fillFactor = powerW / (vocV * iscA);
        double voltageV = vocV * (1 - (typical.VoltageShare * (1 - fillFactor)));
        string why = $"{Ratio(voltageV / vocV)} of voc, usual for {typical.Name} panels whose power is {Ratio(fillFactor)} of voc × isc";
        return new(Sourced.Given(powerW), Sourced.Assumed(voltageV, why), Sourced.Assumed(powerW / voltageV, $"power over the vmp assumed, {Computed(voltageV)} V"));
    }
}

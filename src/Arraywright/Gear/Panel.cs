namespace Arraywright.Gear;

/// <summary>A kind of panel that can be computed with: the label checked, every gap filled openly. An object that exists is usable.</summary>
/// <remarks>Made by <see cref="PanelReader.Read"/> only. Label figures are at standard test conditions: 1000 W/m², 25 °C cell, AM 1.5 (IEC 60904-3).</remarks>
public sealed record Panel
{
    internal Panel()
    {
    }

    /// <summary>Name of this kind of panel.</summary>
    public required string Name { get; init; }

    /// <summary>Rated power, W.</summary>
    public required Sourced<double> PowerW { get; init; }

    /// <summary>Open-circuit voltage, V.</summary>
    public required double OpenCircuitV { get; init; }

    /// <summary>Short-circuit current, A.</summary>
    public required double ShortCircuitA { get; init; }

    /// <summary>Voltage at maximum power, V.</summary>
    public required Sourced<double> MaximumPowerV { get; init; }

    /// <summary>Current at maximum power, A.</summary>
    public required Sourced<double> MaximumPowerA { get; init; }

    /// <summary>Change of open-circuit voltage a kelvin, fraction (1/K). When assumed, energy may use it but the voltage limit may not.</summary>
    public required Sourced<double> OpenCircuitPerK { get; init; }

    /// <summary>Change of short-circuit current a kelvin, fraction (1/K).</summary>
    public required Sourced<double> ShortCircuitPerK { get; init; }

    /// <summary>Change of maximum power a kelvin on the label, fraction (1/K); null when the label is silent (the circuit model then gives its own).</summary>
    public double? PowerPerK { get; init; }

    /// <summary>Cells in series.</summary>
    public required Sourced<int> Cells { get; init; }

    /// <summary>Bypass diodes; each spans an equal group of cells. 0: none.</summary>
    public required Sourced<int> BypassDiodes { get; init; }

    /// <summary>Largest series fuse allowed by the label, A; null when the label is silent.</summary>
    public double? MaxSeriesFuseA { get; init; }

    /// <summary>Largest system voltage allowed by the label, V; null when the label is silent.</summary>
    public double? MaxSystemVoltageV { get; init; }

    /// <summary>Label tolerance, fraction (0.03 for 3 %).</summary>
    public required Sourced<double> ToleranceFraction { get; init; }

    /// <summary>Cell temperature at 800 W/m², 20 °C air and 1 m/s wind, °C; null when the label is silent (the mount's own coefficients then serve).</summary>
    public double? NoctC { get; init; }

    /// <summary>Cell technology.</summary>
    public required Sourced<Technology> Technology { get; init; }

    /// <summary>Price of one panel, in the plan's currency; null when not stated.</summary>
    public double? Price { get; init; }
}

namespace Arraywright.Gear;

/// <summary>What the label or datasheet of a panel says, as printed; null where it says nothing. Nothing is checked here: <see cref="Panel"/> is the checked twin.</summary>
public sealed record PanelLabel
{
    /// <summary>Name of this kind of panel: letters, digits, hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>Rated power at standard test conditions, W.</summary>
    public double? PowerW { get; init; }

    /// <summary>Open-circuit voltage at standard test conditions, V; not the operating voltage.</summary>
    public double? OpenCircuitV { get; init; }

    /// <summary>Short-circuit current at standard test conditions, A; not the operating current.</summary>
    public double? ShortCircuitA { get; init; }

    /// <summary>Voltage at maximum power, V; not the open-circuit voltage.</summary>
    public double? MaximumPowerV { get; init; }

    /// <summary>Current at maximum power, A; not the short-circuit current.</summary>
    public double? MaximumPowerA { get; init; }

    /// <summary>Change of open-circuit voltage a kelvin, as a fraction of its value (1/K); negative.</summary>
    public double? OpenCircuitPerK { get; init; }

    /// <summary>Change of short-circuit current a kelvin, as a fraction of its value (1/K).</summary>
    public double? ShortCircuitPerK { get; init; }

    /// <summary>Change of maximum power a kelvin, as a fraction of its value (1/K); negative.</summary>
    public double? PowerPerK { get; init; }

    /// <summary>Cells in series (a half-cut panel of 120 half cells counts 60).</summary>
    public int? Cells { get; init; }

    /// <summary>Bypass diodes in the panel; 0 for none.</summary>
    public int? BypassDiodes { get; init; }

    /// <summary>Largest series fuse allowed by the label, A.</summary>
    public double? MaxSeriesFuseA { get; init; }

    /// <summary>Largest system voltage allowed by the label, V.</summary>
    public double? MaxSystemVoltageV { get; init; }

    /// <summary>Tolerance of the label power, and so taken for its volts and amps, as a fraction.</summary>
    public double? ToleranceFraction { get; init; }

    /// <summary>Cell temperature at 800 W/m², 20 °C air, 1 m/s wind, °C.</summary>
    public double? NoctC { get; init; }

    /// <summary>Cell technology.</summary>
    public Technology? Technology { get; init; }

    /// <summary>Price of one panel, in the plan's currency.</summary>
    public double? Price { get; init; }
}

namespace Arraywright.Gear;

/// <summary>A direct-current charging input: a battery unit's solar socket, or the array side of a charge controller.</summary>
/// <remarks>What the input draws and what the array may offer are different limits, in different members.</remarks>
public sealed record DcInput
{
    /// <summary>Name: letters, digits, hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>Highest voltage the input bears, V. Hard: nothing moves it.</summary>
    public required double MaxVoltageV { get; init; }

    /// <summary>Open-circuit voltage below which the input does not start, V; null when not stated.</summary>
    public double? StartVoltageV { get; init; }

    /// <summary>Lower end of the voltage window the tracker works in, V; null when not stated.</summary>
    public double? TrackingMinV { get; init; }

    /// <summary>Upper end of the voltage window the tracker works in, V; null when not stated (then <see cref="MaxVoltageV"/>).</summary>
    public double? TrackingMaxV { get; init; }

    /// <summary>What the input draws at most, A: it clips, it is not a danger by itself.</summary>
    public Limit? MaxCurrent { get; init; }

    /// <summary>The short-circuit current the array may have at most, A.</summary>
    public Limit? MaxShortCircuitCurrent { get; init; }

    /// <summary>A printed current of unknown meaning, A: taken as drawn and as offered, until evidence tells them apart.</summary>
    public Limit? RatedCurrent { get; init; }

    /// <summary>What the input takes at most, W; above, it clips.</summary>
    public Limit? MaxPower { get; init; }

    /// <summary>Conversion efficiency from the input to the battery, fraction; null when not stated.</summary>
    public double? EfficiencyFraction { get; init; }

    /// <summary>Power the unit uses itself while this input runs, W; 0 when not stated.</summary>
    public double SelfUseW { get; init; }

    /// <summary>Rating of the array's connectors, branch connectors among them, A; null when not stated.</summary>
    public double? ConnectorA { get; init; }

    /// <summary>Rating of the unit's socket and of the adapter into it, the lower of the two, A; null when not stated.</summary>
    public double? SocketA { get; init; }

    /// <summary>Whether a watt meter is to stand in the run.</summary>
    public bool HasWattMeter { get; init; }

    /// <summary>Name of the <see cref="ChargingUnit"/> this input belongs to; null when it stands alone.</summary>
    public string? Unit { get; init; }

    /// <summary>Battery behind this input, when it stands alone.</summary>
    public Battery? Battery { get; init; }

    /// <summary>The current at which the input stops drawing more, A; infinity-free: null when nothing is stated.</summary>
    public double? DrawLimitA => MaxCurrent?.Figure ?? RatedCurrent?.Figure;
}

/// <summary>A unit with several inputs: what belongs to the whole stands here.</summary>
/// <param name="Name">Name: letters, digits, hyphens.</param>
/// <param name="MaxPower">What all its inputs together take at most, W; null when not stated.</param>
/// <param name="Battery">The battery they share; null when not stated.</param>
public sealed record ChargingUnit(string Name, Limit? MaxPower, Battery? Battery);

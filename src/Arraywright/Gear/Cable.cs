namespace Arraywright.Gear;

/// <summary>The copper between panels and input.</summary>
/// <param name="LengthM">One-way length of the run from the array to the input, m; the current goes there and back.</param>
/// <param name="AreaMm2">Cross-section of its copper, mm². Assumed until a wiring is known to size it for; then derived.</param>
/// <param name="StringLengthM">One-way length of the extra run of each string to the point where strings join, m.</param>
/// <param name="StringAreaMm2">Cross-section of that run, mm².</param>
/// <param name="ContactOhm">Resistance of one mated connector, Ω.</param>
public sealed record Cable(
    Sourced<double> LengthM,
    Sourced<double> AreaMm2,
    Sourced<double> StringLengthM,
    Sourced<double> StringAreaMm2,
    Sourced<double> ContactOhm)
{
    /// <summary>What the assumption of its size is called in a list of assumptions.</summary>
    public const string SizeName = "size of the cable";

    /// <summary>Temperature at which drops are reckoned: a conductor in the sun, under a part of its load, °C.</summary>
    public const double ConductorC = 50;

    /// <summary>How it is made; null when the plan does not say, which means flexible.</summary>
    public CableClass? Class { get; init; }

    /// <summary>Where it lies; null when the plan does not say, which means on a surface.</summary>
    public Laying? Laying { get; init; }

    /// <summary>Hottest surroundings of it, °C; null when the plan does not say.</summary>
    public double? AmbientC { get; init; }

    /// <summary>Current-carrying wires that lie together, its own pair included; null when the plan does not say, which means the pair alone.</summary>
    public int? Bundled { get; init; }

    /// <summary>What the terminals are marked for, 60, 75 or 90 °C; null when the plan does not say, which means 60 °C.</summary>
    public double? TerminalC { get; init; }

    /// <summary>Drop to size it for, share of the volts; null when the plan does not say.</summary>
    public double? MaxDropFraction { get; init; }

    /// <summary>One-way length of an extension lead between array and run, m; 0 for none.</summary>
    public double ExtensionLengthM { get; init; }

    /// <summary>Cross-section of that extension, mm²; null when the plan does not say, which means that of the run.</summary>
    public double? ExtensionAreaMm2 { get; init; }

    /// <summary>How it is made, the default filled in.</summary>
    public CableClass Made => Class ?? CableClass.Flexible;

    /// <summary>Cross-section of the extension, the default filled in, mm².</summary>
    public double ExtensionMm2 => ExtensionAreaMm2 ?? AreaMm2.Value;

    /// <summary>Connectors that an extension adds, one a pole.</summary>
    public int ExtensionContacts => ExtensionLengthM > 0 ? 2 : 0;

    /// <summary>Resistance of extension and run to the input, there and back, with the extension's own connectors, Ω.</summary>
    public double RunOhm => (2 * (OneWayOhm(LengthM.Value, AreaMm2.Value) + OneWayOhm(ExtensionLengthM, ExtensionMm2))) + (ExtensionContacts * ContactOhm.Value);

    /// <summary>Resistance of one string's own run, there and back, Ω, without its contacts.</summary>
    public double StringRunOhm => 2 * OneWayOhm(StringLengthM.Value, StringAreaMm2.Value);

    /// <summary>Resistance of one conductor, Ω.</summary>
    /// <param name="lengthM">Its length, m.</param>
    /// <param name="areaMm2">Its cross-section, mm².</param>
    public double OneWayOhm(double lengthM, double areaMm2) => lengthM * CopperResistance.PerMetreOhm(areaMm2, Made, ConductorC);
}

using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Limits;

/// <summary>What a rule looks at: one wiring on one input, the panels it is made of, the extremes of the place, and the circuit.</summary>
public sealed record RuleContext
{
    /// <summary>The wiring on this input.</summary>
    public required Wiring Wiring { get; init; }

    /// <summary>The input it is judged on.</summary>
    public required DcInput Input { get; init; }

    /// <summary>The unit the input belongs to; null when it stands alone.</summary>
    public required ChargingUnit? Unit { get; init; }

    /// <summary>Every kind of panel in the wiring, by its name.</summary>
    public required IReadOnlyDictionary<string, PanelStock> Stock { get; init; }

    /// <summary>The extremes the wiring must bear.</summary>
    public required CellExtremes Temperatures { get; init; }

    /// <summary>What the circuit does.</summary>
    public required ArrayPhysics Physics { get; init; }

    /// <summary>After whose rules fuses are chosen.</summary>
    public RuleSet Rules { get; init; } = RuleSet.Iec;

    /// <summary>The kind of panel of that name.</summary>
    internal Panel Panel(string name) => Stock[name].Panel;
}

/// <summary>The extremes of the place, as the panels feel them.</summary>
/// <param name="ColdestCellC">Coldest credible cell in daylight, °C. At first light a cell is as cold as the air.</param>
/// <param name="HottestAirC">Hottest air to design for, °C.</param>
/// <param name="HottestCellC">Cell in 1000 W/m² in that air, °C.</param>
/// <param name="ClimateColdestC">What the climate of the place suggests, °C, where it may be colder than the figure taken; else null.</param>
/// <param name="ClimateCondition">Under which condition, as the rest of a sentence.</param>
public sealed record CellExtremes(Sourced<double> ColdestCellC, double HottestAirC, double HottestCellC, double? ClimateColdestC = null, string ClimateCondition = "")
{
    /// <summary>Irradiance of a dim hour, W/m²: the low end of IEC 61853-1's matrix that labels speak of.</summary>
    internal const double DimWPerM2 = 200;

    /// <summary>Cold and bright: the sun comes over the hill on the coldest morning.</summary>
    internal Conditions ColdBright => new(1000, ColdestCellC.Value);

    /// <summary>Hot and bright.</summary>
    internal Conditions HotBright => new(1000, HottestCellC);

    /// <summary>Hot and dim; a cell's rise over the air is in proportion to the irradiance (the form of NOCT).</summary>
    internal Conditions HotDim => new(DimWPerM2, HottestAirC + ((HottestCellC - HottestAirC) * DimWPerM2 / 1000));

    /// <summary>Dim at a moderate cell: the low-irradiance point that datasheets print, 200 W/m² and 25 °C.</summary>
    internal static Conditions Dim { get; } = new(DimWPerM2, 25);
}

/// <summary>What the circuit room knows of a wiring, handed in so that a rule can be tested without it.</summary>
/// <param name="OpenCircuitV">Open-circuit voltage of one unshaded panel of the named kind, V.</param>
/// <param name="MaximumPowerPoint">Volts, amps and watts of a wiring (the whole, or a part of it) at its maximum power.</param>
/// <param name="Operating">What the input draws from the whole wiring.</param>
public sealed record ArrayPhysics(
    Func<string, Conditions, double> OpenCircuitV,
    Func<Wiring, Conditions, (double VoltageV, double CurrentA, double PowerW)> MaximumPowerPoint,
    Func<Conditions, OperatingPoint> Operating);

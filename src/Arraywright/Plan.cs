using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Sky;

namespace Arraywright;

/// <summary>What the best wiring is to be best at.</summary>
public enum Goal
{
    /// <summary>Energy over a year.</summary>
    Year,

    /// <summary>Energy over one day.</summary>
    Day,

    /// <summary>Power in one stated moment of strong sun.</summary>
    Peak,
}

/// <summary>How the panels are held, as far as it changes their temperature.</summary>
public enum MountKind
{
    /// <summary>Free on both sides.</summary>
    OpenRack,

    /// <summary>Parallel to a roof with a small gap.</summary>
    CloseRoof,

    /// <summary>Lying on the ground or a surface, no air behind.</summary>
    FlatOnGround,
}

/// <summary>Where the panels stand.</summary>
/// <param name="LatitudeDeg">Degrees, north positive.</param>
/// <param name="LongitudeDeg">Degrees, east positive.</param>
/// <param name="ElevationM">Metres above the sea.</param>
/// <param name="ColdestC">The user's own coldest air temperature, °C; null when left to the climate.</param>
/// <param name="Weather">Path of a weather file as written in the plan; null for the built-in climate.</param>
public sealed record Place(double LatitudeDeg, double LongitudeDeg, double ElevationM, double? ColdestC, string? Weather)
{
    /// <summary>Whether the plan leaves the height out: then the climate's coldest may be far too warm.</summary>
    public bool IsElevationAssumed { get; init; }

    /// <summary>Time zone whose clock the plan's hours are told by, daylight saving included; null when the plan does not say.</summary>
    public PlaceZone? Zone { get; init; }

    /// <summary>Hills, trees and houses round it; null when the plan does not say.</summary>
    public HorizonProfile? Horizon { get; init; }

    /// <summary>Share of light that the ground gives back, 0 to 1: one figure for the whole year, or twelve from January; empty when the plan does not say.</summary>
    public ImmutableArray<double> AlbedoFractions { get; init; } = [];
}

/// <summary>How the panels face.</summary>
/// <param name="TiltDeg">Degrees from horizontal, 0 to 90.</param>
/// <param name="AzimuthDeg">Degrees clockwise from north, 0 to 360.</param>
/// <param name="Kind">How they are held.</param>
public sealed record Mount(double TiltDeg, double AzimuthDeg, MountKind Kind)
{
    /// <summary>Light lost to dirt on the glass, 0 to 1; null when the plan does not say.</summary>
    public double? SoilingFraction { get; init; }
}

/// <summary>Shade on a kind of panel.</summary>
/// <param name="Fraction">Share of the irradiance kept off the whole panel, 0 to 1.</param>
/// <param name="GroupFractions">Share kept off each bypassed group of cells, one entry a group; empty when the panel is shaded evenly.</param>
/// <param name="Hours">Shade by the hour of the day: from, to (local clock hours) and the share kept off; empty when it is the same all day.</param>
public sealed record Shade(double Fraction, ImmutableArray<double> GroupFractions, ImmutableArray<ShadeHours> Hours)
{
    /// <summary>No shade.</summary>
    public static Shade None { get; } = new(0, [], []);
}

/// <summary>Shade during some hours of the day.</summary>
/// <param name="FromHour">Local clock hour at which it begins, 0 to 24.</param>
/// <param name="ToHour">Local clock hour at which it ends, 0 to 24.</param>
/// <param name="Fraction">Share of the irradiance kept off, 0 to 1.</param>
public sealed record ShadeHours(double FromHour, double ToHour, double Fraction);

/// <summary>Panels of one kind at hand.</summary>
/// <param name="Panel">The kind.</param>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Shade">Shade on all of them.</param>
/// <param name="Mount">Their own mount; null when they share the plan's.</param>
public sealed record PanelStock(Panel Panel, int Count, Shade Shade, Mount? Mount);

/// <summary>An input of the plan and, for a check, the wiring that the plan states for it.</summary>
/// <param name="Input">The input.</param>
/// <param name="StatedWiring">The stated wiring; null when the search is to find one.</param>
public sealed record PlannedInput(DcInput Input, Wiring? StatedWiring);

/// <summary>A whole plan, read and checked: what every room works from.</summary>
public sealed record Plan
{
    /// <summary>Its title.</summary>
    public required string Name { get; init; }

    /// <summary>What to be best at.</summary>
    public required Goal Goal { get; init; }

    /// <summary>Where; null when the plan does not say (a quick question).</summary>
    public required Place? Place { get; init; }

    /// <summary>The weather of the file that <see cref="Place.Weather"/> names, put in by whoever reads that file; null where none is named or read.</summary>
    public WeatherYear? WeatherYear { get; init; }

    /// <summary>The days that the goal "day" is about; null when the plan names none.</summary>
    public DaySpan? Dates { get; init; }

    /// <summary>How the panels face.</summary>
    public required Mount Mount { get; init; }

    /// <summary>How the sky's light is taken to be spread; null when the plan does not say.</summary>
    public SkyModel? Sky { get; init; }

    /// <summary>Panels at hand, in plan order; names differ.</summary>
    public required ImmutableArray<PanelStock> Panels { get; init; }

    /// <summary>Kinds of panel that might be bought, in plan order, each counted 1; names differ from those at hand.</summary>
    public ImmutableArray<PanelStock> Candidates { get; init; } = [];

    /// <summary>Code of the currency of every price in the plan, such as "EUR"; null when it names no price.</summary>
    public string? Currency { get; init; }

    /// <summary>Inputs at hand, in plan order; names differ.</summary>
    public required ImmutableArray<PlannedInput> Inputs { get; init; }

    /// <summary>Units that inputs belong to; may be empty.</summary>
    public required ImmutableArray<ChargingUnit> Units { get; init; }

    /// <summary>The copper.</summary>
    public required Cable Cable { get; init; }

    /// <summary>After whose rules conductors, fuses and connectors are chosen; null when the plan does not say.</summary>
    public RuleSet? Rules { get; init; }

    /// <summary>Parts at hand, in plan order.</summary>
    public ImmutableArray<OwnedPart> Owned { get; init; } = [];

    /// <summary>Prices of parts, in plan order and in <see cref="Currency"/>.</summary>
    public ImmutableArray<PartPrice> PartPrices { get; init; } = [];

    /// <summary>What was left out and filled in while reading, in a stable order.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>Label figures that are possible but odd; each moves the verdict to ask.</summary>
    public required ImmutableArray<LabelDoubt> Doubts { get; init; }

    /// <summary>A verdict on wirings of this plan, or ask where it was go and a label is in doubt.</summary>
    public Level Doubted(Level judged) => Doubts.IsEmpty || judged == Level.Stop ? judged : Level.Ask;

    /// <summary>The same of <see cref="Candidates"/>: they move no verdict before one is bought.</summary>
    public ImmutableArray<LabelDoubt> CandidateDoubts { get; init; } = [];
}

using System.Collections.Immutable;
using Arraywright.Limits;

namespace Arraywright.Growing;

/// <summary>How panels face, and what their wiring then delivers.</summary>
/// <param name="TiltDeg">Degrees from horizontal.</param>
/// <param name="AzimuthDeg">Degrees clockwise from north.</param>
/// <param name="DeliveredKWh">Into the inputs over the span asked about.</param>
public sealed record Facing(double TiltDeg, double AzimuthDeg, double DeliveredKWh);

/// <summary>The best way to face for one span of the year.</summary>
public sealed record BestFacing
{
    /// <summary>The span as a person names it: "the year", "November to January".</summary>
    public required string Span { get; init; }

    /// <summary>As the plan has it.</summary>
    public required Facing Own { get; init; }

    /// <summary>The best, to 1° of tilt and 2° of azimuth; null where it makes no difference, as in a polar night.</summary>
    public required Facing? Best { get; init; }

    /// <summary>The best tilt facing where the plan faces, to 1°; null where it makes no difference.</summary>
    public required Facing? BestTilt { get; init; }

    /// <summary>What the plan's own facing loses against the best, 0 to 1.</summary>
    public double LossShare => Best is { DeliveredKWh: > 0 and var most } ? 1 - (Own.DeliveredKWh / most) : 0;
}

/// <summary>Two tilts in a year, changed twice.</summary>
public sealed record TwoTilts
{
    /// <summary>The steeper tilt, degrees.</summary>
    public required double SteepDeg { get; init; }

    /// <summary>The flatter tilt, degrees.</summary>
    public required double FlatDeg { get; init; }

    /// <summary>First day of the steeper tilt; only month and day count.</summary>
    public required DateOnly SteepFrom { get; init; }

    /// <summary>First day of the flatter tilt; only month and day count.</summary>
    public required DateOnly FlatFrom { get; init; }

    /// <summary>Into the inputs in a year.</summary>
    public required double DeliveredKWh { get; init; }

    /// <summary>What it loses at most when either change, or both, comes two weeks early or late, 0 to 1 of it.</summary>
    public required double TwoWeeksOffShare { get; init; }
}

/// <summary>How panels should face.</summary>
public sealed record TiltResult
{
    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The wiring, judged: the stated one, or the best as the plan faces.</summary>
    public required Design Design { get; init; }

    /// <summary>The year, the three darkest months, and, where a date was given, the days about it.</summary>
    public required ImmutableArray<BestFacing> Spans { get; init; }

    /// <summary>The year at some tilts from flat to upright, facing where it is best; empty where it makes no difference.</summary>
    public required ImmutableArray<Facing> ByTilt { get; init; }

    /// <summary>The tilts between which the year is within 1 % of the best, facing where it is best; null where it makes no difference.</summary>
    public required (double LeastDeg, double MostDeg)? NearlyBest { get; init; }

    /// <summary>The best two tilts, facing where it is best for the year; null where a second one adds nothing.</summary>
    public required TwoTilts? Two { get; init; }

    /// <summary>Kinds of panel that have a facing of their own in the plan and keep it.</summary>
    public required ImmutableArray<string> Fixed { get; init; }

    /// <summary>Where the weather comes from, in one sentence.</summary>
    public required string WeatherSource { get; init; }

    /// <summary>Everything filled in.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The usual cautions.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The verdict on the wiring, or worse where a label is in doubt.</summary>
    public Level Verdict => Plan.Doubted(Design.Verdict);
}

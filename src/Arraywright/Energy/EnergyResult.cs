using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Energy;

/// <summary>One step of the energy ladder.</summary>
/// <param name="Stage">Plain name of what takes the energy; first "label", last "into the unit" and what follows it.</param>
/// <param name="KWh">For "label" and "into the unit" the level, else what is lost at this stage (negative for a gain).</param>
public sealed record EnergyStep(string Stage, double KWh);

/// <summary>Hours in which something held an input; those of several inputs add.</summary>
/// <param name="Current">By its current limit.</param>
/// <param name="Power">By its power limit.</param>
/// <param name="Voltage">By an end of its voltage window.</param>
/// <param name="Off">Off in light: the volts do not reach its start or its window. In the ladder this falls to "voltage window and start".</param>
public readonly record struct HoursLimited(double Current, double Power, double Voltage, double Off);

/// <summary>What a span of time brings, all inputs together.</summary>
public sealed record EnergySpan
{
    /// <summary>Name: "January", or the date.</summary>
    public required string Name { get; init; }

    /// <summary>Energy level after each <see cref="Stage"/>, kWh.</summary>
    public required ImmutableArray<double> LevelsKWh { get; init; }

    /// <summary>Sun in the plan's plane, kWh/m².</summary>
    public required double PlaneKWhPerM2 { get; init; }

    /// <summary>Load asked for, kWh.</summary>
    public required double LoadKWh { get; init; }

    /// <summary>Load served, kWh.</summary>
    public required double ServedKWh { get; init; }

    /// <summary>Into the inputs, before conversion, kWh.</summary>
    public double DeliveredKWh => LevelsKWh[(int)Stage.VoltageWindow];

    /// <summary>Cut off by current and power limits and the voltage window, kWh.</summary>
    public double ClippedKWh => LevelsKWh[(int)Stage.Cable] - LevelsKWh[(int)Stage.VoltageWindow];
}

/// <summary>What batteries saw; energies of all batteries together.</summary>
/// <param name="TurnedAwayKWh">Offered after conversion and not taken, because the battery was full or nearly so.</param>
/// <param name="LoadKWh">Load asked for.</param>
/// <param name="ServedKWh">Load served.</param>
/// <param name="DaysLoadMet">Days on which every hour of the load was served.</param>
/// <param name="Days">Days of the span.</param>
/// <param name="HoursToFull">Hours from the start until the first battery reached its end of charge; null when it never did.</param>
/// <param name="LowestStateOfCharge">Lowest state of charge of any battery, 0 to 1.</param>
public sealed record BatteryReport(double TurnedAwayKWh, double LoadKWh, double ServedKWh, int DaysLoadMet, int Days, double? HoursToFull, double LowestStateOfCharge);

/// <summary>One time step of a day, all inputs together.</summary>
/// <param name="EndsAtHour">Clock hour at its end, 0 to 24.</param>
/// <param name="PlaneWPerM2">Sun in the plane of the first kind of panel.</param>
/// <param name="CellC">Its cell temperature.</param>
/// <param name="UnlimitedW">Power if no input limited anything.</param>
/// <param name="TakenW">Power into the inputs.</param>
/// <param name="LimitedBy">What holds the first input that is held.</param>
/// <param name="StateOfCharge">Of the first battery, 0 to 1; null without one.</param>
public readonly record struct EnergyMoment(double EndsAtHour, double PlaneWPerM2, double CellC, double UnlimitedW, double TakenW, LimitedBy LimitedBy, double? StateOfCharge);

/// <summary>What a design delivers over a span of weather.</summary>
public sealed record EnergyResult
{
    /// <summary>Twelve months, or the one day.</summary>
    public required ImmutableArray<EnergySpan> Spans { get; init; }

    /// <summary>The whole.</summary>
    public required EnergySpan Total { get; init; }

    /// <summary>The ladder from label energy to what was used; it adds up.</summary>
    public required ImmutableArray<EnergyStep> Losses { get; init; }

    /// <summary>Hours held by limits, summed over inputs.</summary>
    public required HoursLimited HoursLimited { get; init; }

    /// <summary>Batteries; null when the plan has none.</summary>
    public required BatteryReport? Battery { get; init; }

    /// <summary>Every step, when asked for; else empty.</summary>
    public required ImmutableArray<EnergyMoment> Moments { get; init; }

    /// <summary>What the minutes within each step take off beyond its mean, kWh: already in the total; 0 when switched off.</summary>
    public required double WithinStepKWh { get; init; }

    /// <summary>What it cost: Newton steps on whole circuits. Counted alike on any machine.</summary>
    internal long NewtonSteps { get; init; }
}

using System.Collections.Immutable;

namespace Arraywright.Gear;

/// <summary>How a battery takes its last charge.</summary>
public enum BatteryChemistry
{
    /// <summary>Lithium iron phosphate: full current to about 95 %.</summary>
    IronPhosphate,

    /// <summary>Lithium nickel oxides: full current to about 80 %.</summary>
    Nickel,

    /// <summary>Lead and acid: full current to about 80 %, then a long absorption.</summary>
    Lead,
}

/// <summary>A battery behind an input or a unit.</summary>
/// <param name="CapacityWh">Usable energy from empty to full, Wh.</param>
/// <param name="FromFraction">State of charge at the start, 0 to 1.</param>
/// <param name="ToFraction">State of charge at which charging stops, 0 to 1.</param>
/// <param name="LoadW">Constant load drawn meanwhile, W; see <see cref="LoadByHourW"/>.</param>
public sealed record Battery(double CapacityWh, double FromFraction, double ToFraction, double LoadW)
{
    /// <summary>Chemistry; null when not stated.</summary>
    public BatteryChemistry? Chemistry { get; init; }

    /// <summary>Most power it is charged with, W; null when not stated.</summary>
    public double? MaxChargeW { get; init; }

    /// <summary>State of charge that loads may not draw below, 0 to 1.</summary>
    public double ReserveFraction { get; init; }

    /// <summary>Load by the hour of the day, W, 24 entries, instead of <see cref="LoadW"/>; empty when it is constant.</summary>
    public ImmutableArray<double> LoadByHourW { get; init; } = [];

    /// <summary>Load in an hour of the day, W.</summary>
    /// <param name="hour">0 to 23, local clock.</param>
    public double LoadAtW(int hour) => LoadByHourW.IsEmpty ? LoadW : LoadByHourW[hour];
}

using System.Collections.Immutable;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Growing;

/// <summary>The pile with some more panels of one kind.</summary>
public sealed record GrowthPoint
{
    /// <summary>How many more.</summary>
    public required int More { get; init; }

    /// <summary>The wiring that delivers most of those that may be connected; where there is none, the one to ask about or the reason to stop.</summary>
    public required Design Design { get; init; }

    /// <summary>Its verdict, or worse where a label is in doubt.</summary>
    public required Level Verdict { get; init; }

    /// <summary>Its year.</summary>
    public required EnergyResult Year { get; init; }

    /// <summary>What would deliver more if the makers agreed; null where nothing would.</summary>
    public required GrowthWish? IfAsked { get; init; }

    /// <summary>What this panel adds to what may be connected, kWh a year; 0 for the pile as it is.</summary>
    public required double GainKWh { get; init; }

    /// <summary>Price of this panel for each kWh a year that it adds, in the plan's currency; null without a price or a gain.</summary>
    public required double? CostPerYearlyKWh { get; init; }

    /// <summary>Into the inputs in a year by what may be connected, kWh; 0 where nothing may.</summary>
    public double DeliveredKWh => Design.Verdict == Level.Go ? Year.Total.DeliveredKWh : 0;

    /// <summary>Of what the panels could give, the share that limits cut off, 0 to 1.</summary>
    public double ClippedShare => Year.Total.ClippedKWh / Math.Max(1e-9, Year.Total.ClippedKWh + Year.Total.DeliveredKWh);

    /// <summary>After conversion, what found room in batteries and loads, kWh a year.</summary>
    public double StoredKWh => Design.Verdict == Level.Go ? Year.Total.LevelsKWh[(int)Stage.BatteryFull] : 0;
}

/// <summary>What a maker's word would allow.</summary>
/// <param name="Design">The wiring, with what is to be asked.</param>
/// <param name="DeliveredKWh">Into the inputs in a year.</param>
public sealed record GrowthWish(Design Design, double DeliveredKWh);

/// <summary>More panels of one kind, one at a time.</summary>
public sealed record GrowthCurve
{
    /// <summary>The kind; its count is what the plan has, 1 for a candidate.</summary>
    public required PanelStock Kind { get; init; }

    /// <summary>Whether the plan has some already.</summary>
    public required bool IsOwned { get; init; }

    /// <summary>From none more upward.</summary>
    public required ImmutableArray<GrowthPoint> Points { get; init; }

    /// <summary>How many are worth it.</summary>
    public required DiminishingReturn Worth { get; init; }

    /// <summary>Whether its label is in doubt, so that none may be recommended before it is read again.</summary>
    public required bool IsInDoubt { get; init; }

    /// <summary>Money for each kWh a year that those worth it add, in the plan's currency; null without a price or where none is worth it.</summary>
    public double? CostPerYearlyKWh => Worth.More > 0 && Kind.Panel.Price is { } price
        ? Worth.More * price / (Points[Worth.More].DeliveredKWh - Points[0].DeliveredKWh)
        : null;
}

/// <summary>What growing would bring.</summary>
public sealed record GrowthResult
{
    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The question.</summary>
    public required GrowthOptions Options { get; init; }

    /// <summary>The pile as it is.</summary>
    public required GrowthPoint Now { get; init; }

    /// <summary>Into the inputs in a year by the wiring that the plan states, kWh; null where it states none.</summary>
    public required double? StatedKWh { get; init; }

    /// <summary>One curve a kind, the kind to prefer first.</summary>
    public required ImmutableArray<GrowthCurve> Curves { get; init; }

    /// <summary>Whether <see cref="Curves"/> are ordered by cost; else by what those worth it add.</summary>
    public required bool IsByCost { get; init; }

    /// <summary>The other way round, one entry an input.</summary>
    public required ImmutableArray<IdealPanel> Ideals { get; init; }

    /// <summary>Where the weather comes from, in one sentence.</summary>
    public required string WeatherSource { get; init; }

    /// <summary>Everything filled in.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The usual cautions.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The kind to buy, with how many; null where none is worth it.</summary>
    public GrowthCurve? Best => Curves.FirstOrDefault(curve => curve is { IsInDoubt: false, Worth.More: > 0 });

    /// <summary>The verdict on what is recommended, or, where nothing is, on the pile as it is.</summary>
    public Level Verdict => Best is { } best ? best.Points[best.Worth.More].Verdict : Now.Verdict;
}

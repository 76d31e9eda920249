using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>The temperatures a wiring is judged by: the coldest for its highest voltage, the hottest for its lowest.</summary>
/// <remarks>Worst credible cases, for limits only; energy is reckoned with mean temperatures.</remarks>
public sealed record DesignTemperatures
{
    /// <summary>From the mean daily minimum of the coldest month down to the coldest credible air, K.</summary>
    /// <remarks>
    /// Our own figure: at 74 places the coldest hour of a typical year lies 9.7 K below that mean, twice its spread of 3.3 K is taken on top,
    /// and the 2.1 K by which the built-in climate errs. Assumed: no published rule.
    /// </remarks>
    public const double BelowColdestMonthK = 18;

    /// <summary>From the coldest hour of a weather file down to the coldest credible air, K.</summary>
    /// <remarks>Our own figure: a typical year holds no record. Twice the 3.3 K by which the coldest hours of typical years spread, rounded up. Assumed: no published rule.</remarks>
    public const double BelowWeatherFileK = 7;

    /// <summary>From the mean daily maximum of the hottest month up to the hottest credible air, K.</summary>
    /// <remarks>Our own figure: in seven typical years from Alaska to Hawaii the hottest hour lies 6.5 K above that mean; twice the spread of 3.2 K on top.</remarks>
    public const double AboveHottestMonthK = 13;

    /// <summary>Coldest air taken where neither the plan nor the climate says anything, °C; −60 °C beyond 60° of latitude.</summary>
    public const double UnknownColdestC = -25;

    /// <summary>Hottest air taken where the climate says nothing, °C.</summary>
    public const double UnknownHottestC = 40;

    /// <summary>What the assumption of the coldest air is called in a list of assumptions.</summary>
    public const string ColdestAir = "coldest air temperature";

    /// <summary>A plan's coldest air may lie this far above the climate's before the difference is pointed out, K.</summary>
    public const double ColdDoubtK = 8;

    /// <summary>How high a place may lie whose plan does not say, m: higher than most people live. Our own figure.</summary>
    public const double UnknownHeightM = 2000;

    /// <summary>Coldest credible air, °C.</summary>
    public required double ColdestAirC { get; init; }

    /// <summary>Coldest credible cell, °C: the coldest air's. At dawn light is enough for nearly the whole voltage and too weak to warm the cells; by night cells may be a little colder than the air, but then there is no voltage.</summary>
    public double ColdestCellC => ColdestAirC;

    /// <summary>How <see cref="ColdestAirC"/> was found, as a person would write it.</summary>
    public required string ColdWorking { get; init; }

    /// <summary>Coldest credible air by the plan's weather file, °C; null without one.</summary>
    public double? ColdestByFileC { get; init; }

    /// <summary>Coldest credible air by the built-in climate, °C; null where it knows nothing.</summary>
    public double? ColdestByClimateC { get; init; }

    /// <summary>Coldest hour with any sun in the weather of the place, °C; null where none is known. Shown beside the design figure, which is colder.</summary>
    public double? ColdestDaylightAirC { get; init; }

    /// <summary>Coldest cell with any sun on it in that weather, °C, by the hour's mean; null where none is known.</summary>
    public double? ColdestDaylightCellC { get; init; }

    /// <summary>Where that weather comes from, in one sentence; null where none is known.</summary>
    public string? DaylightSource { get; init; }

    /// <summary>Hottest credible air, °C.</summary>
    public required double HottestAirC { get; init; }

    /// <summary>Hottest credible cell of each kind of panel, in plan order, °C: hottest air, 1000 W/m², 1 m/s.</summary>
    public required ImmutableArray<double> HottestCellByStockC { get; init; }

    /// <summary>Hottest credible cell of all kinds, °C.</summary>
    public double HottestCellC => HottestCellByStockC.Max();

    /// <summary>How the hottest air and cells were found, as a person would write it.</summary>
    public required string HotWorking { get; init; }

    /// <summary>Both workings.</summary>
    public string Working => $"{ColdWorking}; {HotWorking}";

    /// <summary>What was filled in, cold first.</summary>
    public required ImmutableArray<Assumption> Assumptions { get; init; }

    /// <summary>The climate's coldest air, °C, or the weather file's, where the plan's own figure stands but lies more than <see cref="ColdDoubtK"/> above it, or above an hour of the file, or at <see cref="UnknownHeightM"/> where the plan states no height; null otherwise.</summary>
    public double? ClimateSuggestsColderC { get; init; }

    /// <summary>Under which condition it does, as the rest of a sentence; empty where it simply does.</summary>
    public string ClimateCondition { get; init; } = "";

    /// <summary>The design temperatures of a plan: its own coldest figure first, then the colder of its weather file and the built-in climate, then a figure on the safe side.</summary>
    public static DesignTemperatures For(Plan plan)
    {
        MonthlyClimate? climate = plan.Place is { } place ? WorldClimate.Of(place) : null;
        var cold = ColdAir.Of(plan, climate);
        (double AirC, string Working, Assumption Assumption) hot = Hottest(climate);
        ImmutableArray<double> cellsC = [.. new Ambient(1000, hot.AirC, CellTemperature.UsualWindMPerS).ByStock(plan).Select(seen => seen.CellC)];
        string cells = string.Join(", ", plan.Panels.Select((stock, i) => $"{stock.Panel.Name} + {cellsC[i] - hot.AirC:0} K = {Degrees.Text(cellsC[i])}"));

        return new DesignTemperatures
        {
            ColdestAirC = cold.AirC,
            ColdWorking = cold.Working,
            ColdestByFileC = cold.ByFileC,
            ColdestByClimateC = cold.ByClimateC,
            HottestAirC = hot.AirC,
            HottestCellByStockC = cellsC,
            HotWorking = $"{hot.Working}; cells in 1000 W/m² and 1 m/s of wind: {cells}",
            Assumptions = cold.Assumption is { } assumed ? [assumed, hot.Assumption] : [hot.Assumption],
            ClimateSuggestsColderC = cold.SuggestsC,
            ClimateCondition = cold.Condition,
        };
    }

    /// <summary>The same for a person who asks about cells colder than these: the limits are held against those then, so that no verdict is kinder than the meter.</summary>
    /// <param name="askedC">The coldest cell asked about, °C.</param>
    public DesignTemperatures WithAsked(double askedC)
    {
        if (askedC >= ColdestAirC)
        {
            return this;
        }

        string asked = $"cells at {Degrees.Text(askedC, 1)}, as asked";
        return this with
        {
            ColdestAirC = askedC,
            ColdWorking = $"{asked}; without that {ColdWorking}",
            Assumptions =
            [
                new(ColdestAir, asked, $"That is colder than the coldest otherwise ({ColdWorking}), so the voltage limit is held against it. If it can get so cold, write it into the plan (coldest)."),
                .. Assumptions.Where(assumption => assumption.What != ColdestAir),
            ],
            ClimateSuggestsColderC = ClimateSuggestsColderC < askedC ? ClimateSuggestsColderC : null,
        };
    }

    private static (double AirC, string Working, Assumption Assumption) Hottest(MonthlyClimate? climate)
    {
        const string What = "hottest air temperature";
        const string Moves = "5 K hotter lowers volts by 1.5 to 2 %.";
        if (climate is null)
        {
            return (UnknownHottestC, $"hottest air {Degrees.Text(UnknownHottestC)}, assumed", new(What, Degrees.Text(UnknownHottestC), $"The climate of the place is not known. {Moves}"));
        }

        ClimateMonth month = climate.Hottest;
        double airC = Math.Ceiling(month.MeanDailyMaxC + AboveHottestMonthK);
        string working = $"{month.Name} mean {Degrees.Text(month.MeanAirC, 1)} + half the daily range {month.DailyRangeK / 2:0.0} K + {AboveHottestMonthK:0} K = {Degrees.Text(airC)}, rounded up";
        return (airC, working, new(What, Degrees.Text(airC), $"Built-in climate: {working}. {Moves}"));
    }
}

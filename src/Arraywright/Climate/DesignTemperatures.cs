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

    private const double PolarColdestC = -60;
    private const double PolarLatitudeDeg = 60;

    /// <summary>Coldest credible air, °C.</summary>
    public required double ColdestAirC { get; init; }

    /// <summary>Coldest credible cell, °C: the coldest air's. At dawn light is enough for nearly the whole voltage and too weak to warm the cells; by night cells may be a little colder than the air, but then there is no voltage.</summary>
    public double ColdestCellC => ColdestAirC;

    /// <summary>How <see cref="ColdestAirC"/> was found, as a person would write it.</summary>
    public required string ColdWorking { get; init; }

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

    /// <summary>The climate's coldest air, °C, where the plan's own figure stands but lies more than <see cref="ColdDoubtK"/> above it, or at <see cref="UnknownHeightM"/> where the plan states no height; null otherwise.</summary>
    public double? ClimateSuggestsColderC { get; init; }

    /// <summary>Under which condition it does, as the rest of a sentence; empty where it simply does.</summary>
    public string ClimateCondition { get; init; } = "";

    /// <summary>The design temperatures of a plan: its own coldest figure first, then the built-in climate, then a figure on the safe side.</summary>
    public static DesignTemperatures For(Plan plan)
    {
        MonthlyClimate? climate = plan.Place is { } place ? WorldClimate.Of(place) : null;
        Extreme cold = Coldest(plan.Place, climate);
        Extreme hot = Hottest(climate);
        ImmutableArray<double> cellsC = [.. new Ambient(1000, hot.AirC, CellTemperature.UsualWindMPerS).ByStock(plan).Select(seen => seen.CellC)];
        string cells = string.Join(", ", plan.Panels.Select((stock, i) => $"{stock.Panel.Name} + {cellsC[i] - hot.AirC:0} K = {Degrees.Text(cellsC[i])}"));

        return new DesignTemperatures
        {
            ColdestAirC = cold.AirC,
            ColdWorking = cold.Working,
            HottestAirC = hot.AirC,
            HottestCellByStockC = cellsC,
            HotWorking = $"{hot.Working}; cells in 1000 W/m² and 1 m/s of wind: {cells}",
            Assumptions = [.. new[] { cold.Assumption, hot.Assumption }.OfType<Assumption>()],
            ClimateSuggestsColderC = cold.ClimateSuggestsC,
            ClimateCondition = cold.Condition,
        };
    }

    private static Extreme Coldest(Place? place, MonthlyClimate? climate)
    {
        const string Moves = "A morning 5 K colder raises open-circuit volts by 1.5 to 2 %. Better: write the coldest local record into the plan (coldest).";
        (double AirC, string Working)? fromClimate = climate is null ? null : ColdestIn(climate.Coldest);

        if (place?.ColdestC is { } ownC)
        {
            string working = $"coldest air {Degrees.Text(ownC, 1)}, the plan's own figure";
            return fromClimate is var (climateC, climateWorking) && ownC > climateC + ColdDoubtK
                ? new(ownC, working, new(ColdestAir, $"{Degrees.Text(ownC, 1)}, as the plan says", $"The built-in climate suggests it may be colder ({climateWorking}). {Moves}"), climateC)
                : new(ownC, working, null);
        }

        if (fromClimate is var (airC, found))
        {
            if (place is { IsElevationAssumed: true } && WorldClimate.At(place.LatitudeDeg, place.LongitudeDeg, UnknownHeightM) is { } high)
            {
                double highC = Math.Min(airC, ColdestIn(high.Coldest).AirC);
                string condition = $" if the place lies {UnknownHeightM:0} m high (state its elevation)";
                return new(airC, found, new(ColdestAir, Degrees.Text(airC), $"Built-in climate, at sea level: {found}. It suggests {Degrees.Text(highC)}{condition}. {Moves}"), highC, condition);
            }

            return new(airC, found, new(ColdestAir, Degrees.Text(airC), $"Built-in climate: {found}. {Moves}"));
        }

        double unknownC = place is not null && Math.Abs(place.LatitudeDeg) > PolarLatitudeDeg ? PolarColdestC : UnknownColdestC;
        string reason = place is null ? "the plan names no place" : "the built-in climate does not know this place";
        return new(unknownC, $"coldest air {Degrees.Text(unknownC)}, assumed: {reason}", new(ColdestAir, Degrees.Text(unknownC), $"Taken on the safe side, as {reason}. {Moves}"));
    }

    /// <summary>Rounded down to a whole degree, to the safe side.</summary>
    private static (double AirC, string Working) ColdestIn(ClimateMonth month)
    {
        double airC = Math.Floor(month.MeanDailyMinC - BelowColdestMonthK);
        return (airC, $"{month.Name} mean {Degrees.Text(month.MeanAirC, 1)} - half the daily range {month.DailyRangeK / 2:0.0} K - {BelowColdestMonthK:0} K = {Degrees.Text(airC)}, rounded down");
    }

    private static Extreme Hottest(MonthlyClimate? climate)
    {
        const string What = "hottest air temperature";
        const string Moves = "5 K hotter lowers volts by 1.5 to 2 %.";
        if (climate is null)
        {
            return new(UnknownHottestC, $"hottest air {Degrees.Text(UnknownHottestC)}, assumed", new(What, Degrees.Text(UnknownHottestC), $"The climate of the place is not known. {Moves}"));
        }

        ClimateMonth month = climate.Hottest;
        double airC = Math.Ceiling(month.MeanDailyMaxC + AboveHottestMonthK);
        string working = $"{month.Name} mean {Degrees.Text(month.MeanAirC, 1)} + half the daily range {month.DailyRangeK / 2:0.0} K + {AboveHottestMonthK:0} K = {Degrees.Text(airC)}, rounded up";
        return new(airC, working, new(What, Degrees.Text(airC), $"Built-in climate: {working}. {Moves}"));
    }

    private readonly record struct Extreme(double AirC, string Working, Assumption? Assumption, double? ClimateSuggestsC = null, string Condition = "");
}

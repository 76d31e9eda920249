using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>A year of hours made from monthly means, so that clear and dull days, and clear and clouded hours, are spread as they are.</summary>
/// <remarks>
/// Days: <see cref="DailyClearness"/>, ordered by a seeded series with a day-to-day correlation of 0.3 (usual for daily clearness: Aguiar, Collares-Pereira
/// and Conde, Solar Energy 40 (1988) 269; from memory). Hours: <see cref="HourlyClearness"/>. Diffuse after Erbs. Air: a cosine of the daily range, warmest
/// at 15 h. The same place always gives the same year.
/// </remarks>
public static class SyntheticYear
{
    /// <summary>A year without a leap day, whose names of days are borrowed.</summary>
    private const int ModelYear = 2025;

    private const double DayToDay = 0.3;
    private const double WindMPerS = 2;
    private const double WarmestHour = 15;

    /// <summary>The clearest hour against the clear sky of usual air: on some days the air is cleaner.</summary>
    private const double ClearestOverClear = 1.03;

    /// <summary>No hour passes this share of the sun outside the air, whatever the monthly figure says.</summary>
    private const double MostOfOutside = 0.85;

    /// <summary>What a year of the built-in climate rests on.</summary>
    private const string BuiltIn = "a year made from the built-in climate (means of 1961 to 1990; irradiation of the year within 6 % at 95 of 100 places); a weather file of the place would be better";

    /// <summary>The weather a plan is run through without a file: made from the built-in climate; null where the plan names no place, or one off the climate's map.</summary>
    public static WeatherYear? For(Plan plan) =>
        plan.Place is { } place && WorldClimate.Of(place) is { } climate ? Of(climate, place) : null;

    /// <summary>The year of a place with a given climate.</summary>
    /// <param name="climate">The climate.</param>
    /// <param name="place">The place.</param>
    /// <param name="source">What the climate rests on, in one sentence; null for the built-in one.</param>
    public static WeatherYear Of(MonthlyClimate climate, Place place, string? source = null)
    {
        var noise = new NormalNumbers(Seed(place));
        double utcOffsetH = Math.Round(place.LongitudeDeg / 15);
        var sun = new SunOfMonth(place, utcOffsetH);
        var steps = ImmutableArray.CreateBuilder<WeatherStep>(8760);
        foreach (ClimateMonth month in climate.Months)
        {
            sun.Fill(ModelYear, month.Month);
            double[] globalW = MonthOfHours(sun, month.HorizontalKWhPerM2 * 1000, HighestOverClear(place.LatitudeDeg), noise);
            for (int day = 0; day < sun.Days; day++)
            {
                DateTime date = new(ModelYear, month.Month, day + 1);
                (double meanC, double rangeK) = Air(climate, date);
                for (int hour = 0; hour < 24; hour++)
                {
                    double airC = meanC + (rangeK / 2 * WarmthOfHour[hour]);
                    steps.Add(Step(date.AddHours(hour + 1), globalW[(24 * day) + hour], sun, (24 * day) + hour, airC));
                }
            }
        }

        return new WeatherYear(
            new WeatherPlace(place.LatitudeDeg, place.LongitudeDeg, place.ElevationM),
            steps.MoveToImmutable(),
            1,
            utcOffsetH,
            source ?? BuiltIn,
            []);
    }

    /// <summary>Where the density of days ends, against a clear day of usual air.</summary>
    /// <remarks>
    /// In the tropics a little below it: there every day has its clouds, and the air is damp. Outside, behind fronts, many days are without any: 1.20 puts as many there as six
    /// weather years from 32° to 61° want, each of them also when it is left out (docs/models-climate.md). Between 23.4° and 30° in between.
    /// </remarks>
    private static double HighestOverClear(double latitudeDeg)
    {
        const double Tropical = 0.95;
        const double Temperate = 1.20;
        double along = (Math.Abs(latitudeDeg) - 23.4) / (30 - 23.4);
        return Tropical + ((Temperate - Tropical) * Math.Clamp(along, 0, 1));
    }

    private static double[] MonthOfHours(SunOfMonth sun, double wantedWh, double highestOverClear, NormalNumbers noise)
    {
        if (sun.ClearWhPerM2 <= 0 || wantedWh <= 0)
        {
            return new double[24 * sun.Days];
        }

        double mean = wantedWh / sun.OutsideWhPerM2;
        double clear = sun.ClearWhPerM2 / sun.OutsideWhPerM2;

        // A month that claims more than a clear sky gives is believed: its days are clear, and nearly alike.
        double clearest = Math.Max(ClearestOverClear * clear, 1.02 * mean);
        double highest = Math.Max(highestOverClear * clear, 1.1 * mean);
        double[] days = Ordered(DailyClearness.Spread(mean, highest, clearest, sun.Days), noise);
        double[] globalW = HourlyClearness.Spread(sun, days, clearest / clear, noise);
        HourlyClearness.BringToSum(globalW, sun.OutsideWPerM2, MostOfOutside, wantedWh);
        return globalW;
    }

    private static WeatherStep Step(DateTime ends, double globalW, SunOfMonth sun, int at, double airC)
    {
        double up = sun.UpShare[at];
        if (globalW <= 0 || up <= 0)
        {
            return new WeatherStep(ends, 0, 0, 0, airC, WindMPerS);
        }

        double outside = sun.OutsideWPerM2[at];
        double diffuse = globalW * BeamDiffuseSplit.DiffuseShare(globalW / outside);
        double beam = Math.Min((globalW - diffuse) / up, 0.8 * outside / up);
        return new WeatherStep(ends, globalW, beam, globalW - (beam * up), airC, WindMPerS);
    }

    private static double[] WarmthOfHour { get; } = [.. Enumerable.Range(0, 24).Select(hour => Math.Cos((hour + 0.5 - WarmestHour) * Math.PI / 12))];

    /// <summary>Mean and daily range: monthly means stand in the middle of their months and run straight between.</summary>
    private static (double MeanC, double RangeK) Air(MonthlyClimate climate, DateTime date)
    {
        double along = (date.Day - 0.5) / DateTime.DaysInMonth(ModelYear, date.Month);
        int before = (date.Month + (along < 0.5 ? 10 : 11)) % 12;
        double share = along < 0.5 ? along + 0.5 : along - 0.5;
        ClimateMonth one = climate.Months[before];
        ClimateMonth next = climate.Months[(before + 1) % 12];
        return (one.MeanAirC + (share * (next.MeanAirC - one.MeanAirC)), one.DailyRangeK + (share * (next.DailyRangeK - one.DailyRangeK)));
    }

    /// <summary>The days of a month in the order of a correlated random series.</summary>
    private static double[] Ordered(double[] rising, NormalNumbers noise)
    {
        double[] keys = new double[rising.Length];
        int[] order = new int[rising.Length];
        double last = noise.Next();
        for (int day = 0; day < keys.Length; day++)
        {
            last = (DayToDay * last) + (Math.Sqrt(1 - (DayToDay * DayToDay)) * noise.Next());
            (keys[day], order[day]) = (last, day);
        }

        Array.Sort(keys, order);
        double[] placed = new double[rising.Length];
        for (int rank = 0; rank < order.Length; rank++)
        {
            placed[order[rank]] = rising[rank];
        }

        return placed;
    }

    private static int Seed(Place place) =>
        ((int)Math.Round(place.LatitudeDeg * 100) * 40009) ^ (int)Math.Round(place.LongitudeDeg * 100);
}

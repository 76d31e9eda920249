using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>A year of hours made from monthly means, so that clear and dull days, and clear and clouded hours, are spread as they are.</summary>
/// <remarks>
/// Days: <see cref="DailyClearness"/>, ordered by a seeded series with a day-to-day correlation of 0.3 (usual for daily clearness: Aguiar, Collares-Pereira
/// and Conde, Solar Energy 40 (1988) 269; from memory). Hours: the profile of M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155, with the spread
/// and correlation of R. Aguiar and M. Collares-Pereira, Solar Energy 49 (1992) 167 (from memory), each day brought back to its sum. Diffuse after Erbs.
/// Air: a cosine of the daily range, warmest at 15 h. The same place always gives the same year.
/// </remarks>
public static class SyntheticYear
{
    /// <summary>A year without a leap day, whose names of days are borrowed.</summary>
    private const int ModelYear = 2025;

    private const double DayToDay = 0.3;
    private const double WindMPerS = 2;
    private const double WarmestHour = 15;
    /// <summary>The clearest day or hour against the clear sky of usual air: on some days the air is cleaner. Found by holding the year against seven real ones; see the reference tests.</summary>
    private const double ClearestOverUsual = 1.10;

    /// <summary>The year of a place with a given climate.</summary>
    public static WeatherYear Of(MonthlyClimate climate, Place place)
    {
        var random = new Random(Seed(place));
        double utcOffsetH = Math.Round(place.LongitudeDeg / 15);
        var path = new SunPath(Site.Of(place.LatitudeDeg, place.LongitudeDeg, place.ElevationM));
        var steps = ImmutableArray.CreateBuilder<WeatherStep>(8760);
        var hours = new HourSun[24];
        foreach (ClimateMonth month in climate.Months)
        {
            int days = DateTime.DaysInMonth(ModelYear, month.Month);
            double[][] outsideW = new double[days][];
            double outsideSum = 0;
            double clearSum = 0;
            for (int day = 0; day < days; day++)
            {
                outsideSum += Outside(path, new DateTime(ModelYear, month.Month, day + 1), utcOffsetH, place, hours);
                clearSum += hours.Sum(hour => hour.ClearWPerM2);
                outsideW[day] = [.. hours.Select(hour => hour.OutsideWPerM2)];
            }

            double mean = outsideSum > 0 ? month.HorizontalKWhPerM2 * 1000 / outsideSum : 0;
            double clearest = outsideSum > 0 ? ClearestOverUsual * clearSum / outsideSum : 1;
            double[] clearness = Ordered(DailyClearness.Spread(mean, clearest, days), random);
            double[] globalW = MonthOfHours(path, month, utcOffsetH, place, clearness, random, hours);
            BringToSum(globalW, outsideW, month.HorizontalKWhPerM2 * 1000);
            for (int day = 0; day < days; day++)
            {
                DateTime date = new(ModelYear, month.Month, day + 1);
                Outside(path, date, utcOffsetH, place, hours);
                for (int hour = 0; hour < 24; hour++)
                {
                    steps.Add(Step(date.AddHours(hour + 1), globalW[(24 * day) + hour], hours[hour], AirC(climate, date, hour)));
                }
            }
        }

        return new WeatherYear(
            new WeatherPlace(place.LatitudeDeg, place.LongitudeDeg, place.ElevationM),
            steps.MoveToImmutable(),
            1,
            utcOffsetH,
            "a year made from the built-in climate (means of 1961 to 1990; irradiation of the year within 6 % at 95 of 100 places); a weather file of the place would be better",
            []);
    }

    /// <summary>Sun outside the air over each hour of a day; returns their sum, Wh/m².</summary>
    private static double Outside(SunPath path, DateTime date, double utcOffsetH, Place place, HourSun[] hours)
    {
        double midnight = SunClock.JulianDay(date) - (utcOffsetH / 24);
        double sum = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            HourSun total = default;
            for (int part = 0; part < 4; part++)
            {
                double moment = midnight + ((hour + ((part + 0.5) / 4)) / 24);
                SunPosition sun = path.At(moment);
                double up = Math.Max(0, Math.Sin(sun.GeometricElevationDeg * Math.PI / 180));
                double facing = ExtraterrestrialDay.SolarConstantWPerM2 / (sun.DistanceAu * sun.DistanceAu);
                total = total with
                {
                    OutsideWPerM2 = total.OutsideWPerM2 + (up * facing / 4),
                    ClearWPerM2 = total.ClearWPerM2 + (ClearSky.Of(sun, place.ElevationM, facing).GlobalWPerM2 / 4),
                    UpShare = total.UpShare + (up / 4),
                };
            }

            SunOfDate slow = path.OfDate(midnight + ((hour + 0.5) / 24));
            double solarHour = hour + 0.5 - utcOffsetH + (place.LongitudeDeg / 15) + (slow.EquationOfTimeMin / 60);
            hours[hour] = total with { HourAngleRad = (solarHour - 12) * Math.PI / 12 };
            sum += total.OutsideWPerM2;
        }

        return sum;
    }

    private static double[] MonthOfHours(SunPath path, ClimateMonth month, double utcOffsetH, Place place, double[] clearness, Random random, HourSun[] hours)
    {
        double[] globalW = new double[24 * clearness.Length];
        double spread = 0;
        for (int day = 0; day < clearness.Length; day++)
        {
            double outside = Outside(path, new DateTime(ModelYear, month.Month, day + 1), utcOffsetH, place, hours);
            if (outside <= 0)
            {
                continue;
            }

            double k = clearness[day];
            double correlation = 0.38 + (0.06 * Math.Cos((7.4 * k) - 2.5));
            double spreadA = 0.14 * Exponential.Of(-20 * (k - 0.35) * (k - 0.35));
            double spreadB = (3 * (k - 0.45) * (k - 0.45)) + (16 * k * k * k * k * k);
            (double a, double b) = Profile(hours);
            double sum = 0;
            for (int hour = 0; hour < 24; hour++)
            {
                spread = (correlation * spread) + (Math.Sqrt(1 - (correlation * correlation)) * Normal(random));
                HourSun sun = hours[hour];
                double share = k * Math.Max(0.2, a + (b * Math.Cos(sun.HourAngleRad)));
                double sigma = Math.Min(0.35, spreadA * Exponential.Of(spreadB * (1 - sun.UpShare)));
                double hourShare = Math.Min(Math.Max(share + (sigma * spread), 0.25 * share), sun.ClearestShare);
                globalW[(24 * day) + hour] = hourShare * sun.OutsideWPerM2;
                sum += globalW[(24 * day) + hour];
            }

            double scale = sum > 0 ? k * outside / sum : 0;
            for (int hour = 0; hour < 24; hour++)
            {
                double clear = hours[hour].ClearestShare * hours[hour].OutsideWPerM2;
                globalW[(24 * day) + hour] = Math.Min(globalW[(24 * day) + hour] * scale, clear);
            }
        }

        return globalW;
    }

    /// <summary>Collares-Pereira and Rabl's coefficients, from the sunset hour angle that the day's sun shows.</summary>
    private static (double A, double B) Profile(HourSun[] hours)
    {
        double lit = hours.Count(hour => hour.OutsideWPerM2 > 0);
        double sunset = Math.PI * Math.Min(lit, 23) / 24;
        double sine = Math.Sin(sunset - (Math.PI / 3));
        return (0.409 + (0.5016 * sine), 0.6609 - (0.4767 * sine));
    }

    /// <summary>Scales a month to its sum, hours that would pass the clear sky held back and the rest raised for them.</summary>
    private static void BringToSum(double[] globalW, double[][] outsideW, double wantedWh)
    {
        for (int round = 0; round < 20; round++)
        {
            double sum = globalW.Sum();
            double scale = sum > 0 ? wantedWh / sum : 0;
            if (Math.Abs(scale - 1) < 1e-6)
            {
                return;
            }

            for (int i = 0; i < globalW.Length; i++)
            {
                globalW[i] = Math.Min(globalW[i] * scale, 0.85 * outsideW[i / 24][i % 24]);
            }
        }
    }

    private static WeatherStep Step(DateTime ends, double globalW, HourSun sun, double airC)
    {
        if (globalW <= 0 || sun.UpShare <= 0)
        {
            return new WeatherStep(ends, 0, 0, 0, airC, WindMPerS);
        }

        double diffuse = globalW * BeamDiffuseSplit.DiffuseShare(globalW / sun.OutsideWPerM2);
        double beam = (globalW - diffuse) / sun.UpShare;
        double most = 0.8 * sun.OutsideWPerM2 / sun.UpShare;
        beam = Math.Min(beam, most);
        return new WeatherStep(ends, globalW, beam, globalW - (beam * sun.UpShare), airC, WindMPerS);
    }

    /// <summary>Monthly means stand in the middle of their months and run straight between; the day's cosine on top.</summary>
    private static double AirC(MonthlyClimate climate, DateTime date, int hour)
    {
        double along = (date.Day - 0.5) / DateTime.DaysInMonth(ModelYear, date.Month);
        int before = (date.Month + (along < 0.5 ? 10 : 11)) % 12;
        double share = along < 0.5 ? along + 0.5 : along - 0.5;
        ClimateMonth one = climate.Months[before];
        ClimateMonth next = climate.Months[(before + 1) % 12];
        double mean = one.MeanAirC + (share * (next.MeanAirC - one.MeanAirC));
        double range = one.DailyRangeK + (share * (next.DailyRangeK - one.DailyRangeK));
        return mean + (range / 2 * Math.Cos((hour + 0.5 - WarmestHour) * Math.PI / 12));
    }

    /// <summary>The days of a month in the order of a correlated random series.</summary>
    private static double[] Ordered(double[] rising, Random random)
    {
        double[] keys = new double[rising.Length];
        double last = Normal(random);
        for (int day = 0; day < keys.Length; day++)
        {
            last = (DayToDay * last) + (Math.Sqrt(1 - (DayToDay * DayToDay)) * Normal(random));
            keys[day] = last;
        }

        int[] order = [.. Enumerable.Range(0, keys.Length).OrderBy(day => keys[day])];
        double[] placed = new double[rising.Length];
        for (int rank = 0; rank < order.Length; rank++)
        {
            placed[order[rank]] = rising[rank];
        }

        return placed;
    }

    /// <summary>A standard normal number, after Box and Muller (1958).</summary>
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static int Seed(Place place) =>
        ((int)Math.Round(place.LatitudeDeg * 100) * 40009) ^ (int)Math.Round(place.LongitudeDeg * 100);

    /// <summary>The sun over one hour.</summary>
    private readonly record struct HourSun(double OutsideWPerM2, double ClearWPerM2, double UpShare, double HourAngleRad)
    {
        /// <summary>No hour is clearer: a little over the clear sky of usual air, since air is clearer on some days.</summary>
        public double ClearestShare => OutsideWPerM2 > 0 ? ClearestOverUsual * ClearWPerM2 / OutsideWPerM2 : 0;
    }
}

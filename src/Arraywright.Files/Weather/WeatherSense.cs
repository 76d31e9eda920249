using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Whether a file's sun can be the sun of its place: some every day, but not more than there is, in the right half of the year and of the day; and whether that place is the plan's.</summary>
internal static class WeatherSense
{
    /// <summary>Beyond this latitude summer has more sun than winter everywhere.</summary>
    private const double SeasonsFromDeg = 25;

    /// <summary>A year's sun on the ground over that outside the air. The dullest places have 0.25, the clearest 0.75.</summary>
    private const double LeastClearness = 0.15;
    private const double MostClearness = 0.85;

    /// <summary>A day with this much sun outside the air is never quite dark on the ground, kWh/m²: the thickest cloud lets a twentieth through.</summary>
    private const double NeverDarkKWhPerM2 = 1;

    /// <summary>From this distance of plan and file on it is pointed out, km, and from the other the file is refused: another climate.</summary>
    private const double FarKm = 50;
    private const double TooFarKm = 500;

    /// <summary>So many metres between plan and file change the air by 2 K, and are pointed out.</summary>
    private const double HigherM = 300;

    private const double KmPerDeg = 111.2;

    public static void Check(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        if (globalW.Sum() <= 0)
        {
            raw.Refuse(rows[0].Line, 1, "no sun in the whole year", "global irradiance over zero by day");
            return;
        }

        CheckPlace(raw);
        CheckSeasons(raw, rows, globalW);
        CheckDays(raw, rows, globalW);
        WeatherClock.Check(raw, rows, globalW);
    }

    private static void CheckPlace(RawWeather raw)
    {
        if (raw.PlanPlace is not { } plan)
        {
            return;
        }

        double distanceKm = DistanceKm(raw.Place.LatitudeDeg, raw.Place.LongitudeDeg, plan.LatitudeDeg, plan.LongitudeDeg);
        if (distanceKm > TooFarKm)
        {
            raw.Refuse(raw.PlaceLine, 1, $"weather of latitude {raw.Place.LatitudeDeg} and longitude {raw.Place.LongitudeDeg}, {distanceKm:0} km from the plan's place", $"weather from within {TooFarKm:0} km", "is a sign of the plan's place wrong?");
        }
        else if (distanceKm > FarKm)
        {
            raw.Tell($"It is {distanceKm:0} km from the plan's place.");
        }

        double higherM = plan.ElevationM - raw.Place.ElevationM;
        if (!plan.IsElevationAssumed && Math.Abs(higherM) > HigherM)
        {
            raw.Tell($"The plan's place lies {Math.Abs(higherM):0} m {(higherM > 0 ? "higher" : "lower")} than the file's; its air was taken as it stands.");
        }
    }

    /// <summary>Along the great circle, by the haversine formula.</summary>
    private static double DistanceKm(double latitudeDeg, double longitudeDeg, double otherLatitudeDeg, double otherLongitudeDeg)
    {
        static double HalfSine(double deg) => Math.Pow(Math.Sin(deg * Math.PI / 360), 2);
        static double Cos(double deg) => Math.Cos(deg * Math.PI / 180);
        double chord = HalfSine(latitudeDeg - otherLatitudeDeg) + (Cos(latitudeDeg) * Cos(otherLatitudeDeg) * HalfSine(longitudeDeg - otherLongitudeDeg));
        return 2 * Math.Asin(Math.Min(1, Math.Sqrt(chord))) * 180 / Math.PI * KmPerDeg;
    }

    private static void CheckSeasons(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        double summer = 0, winter = 0;
        for (int i = 0; i < globalW.Length; i++)
        {
            int month = rows[i].Ends.AddMinutes(-raw.StepMinutes).Month;
            summer += month is >= 5 and <= 7 ? globalW[i] : 0;
            winter += month is >= 11 or 1 ? globalW[i] : 0;
        }

        double latitudeDeg = raw.Place.LatitudeDeg;
        if (Math.Abs(latitudeDeg) > SeasonsFromDeg && (latitudeDeg > 0 ? summer < winter : summer > winter))
        {
            raw.Refuse(raw.PlaceLine, 1, $"latitude {latitudeDeg} and most sun in the months {(summer > winter ? "May to July" : "November to January")}", "the summer of that half of the Earth", "is the sign of the latitude right?");
        }
    }

    /// <summary>The sun of the year, and of each day, against that outside the air.</summary>
    private static void CheckDays(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        int perDay = 1440 / raw.StepMinutes;
        double outsideKWhPerM2 = 0;
        for (int day = 0; day * perDay < globalW.Length; day++)
        {
            double outsideToday = ExtraterrestrialDay.HorizontalKWhPerM2(raw.Place.LatitudeDeg, Math.Min(day + 1, 365));
            outsideKWhPerM2 += outsideToday;
            if (outsideToday > NeverDarkKWhPerM2 && !globalW.AsSpan(day * perDay, perDay).ContainsAnyExcept(0))
            {
                RawStep first = rows[day * perDay];
                raw.Refuse(first.Line, 1, $"no sun on {first.Ends:MM-dd}", "global irradiance over zero by day", "a sensor may have failed: fill the day from another source");
            }
        }

        double globalKWhPerM2 = globalW.Sum() / 1000 * raw.StepMinutes / 60;
        double clearness = globalKWhPerM2 / outsideKWhPerM2;
        if (clearness is < LeastClearness or > MostClearness)
        {
            raw.Refuse(rows[0].Line, 1, $"{globalKWhPerM2:0} kWh/m² of sun in the year, {clearness * 100:0} % of that outside the air", $"{LeastClearness * 100:0} to {MostClearness * 100:0} %", "is the unit of the irradiance right? It is the mean over each step in W/m²");
        }
    }
}

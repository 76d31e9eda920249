using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Whether a file's sun can be the sun of its place: some every day, but not more than there is, in the right half of the year and of the day.</summary>
internal static class WeatherSense
{
    /// <summary>Beyond this latitude summer has more sun than winter everywhere.</summary>
    private const double SeasonsFromDeg = 25;

    /// <summary>A year's sun on the ground over that outside the air. The dullest places have 0.25, the clearest 0.75.</summary>
    private const double LeastClearness = 0.15;
    private const double MostClearness = 0.85;

    /// <summary>A day with this much sun outside the air is never quite dark on the ground, kWh/m²: the thickest cloud lets a twentieth through.</summary>
    private const double NeverDarkKWhPerM2 = 1;

    public static void Check(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        if (globalW.Sum() <= 0)
        {
            raw.Refuse(rows[0].Line, 1, "no sun in the whole year", "global irradiance over zero by day");
            return;
        }

        CheckSeasons(raw, rows, globalW);
        CheckDays(raw, rows, globalW);
        WeatherClock.Check(raw, rows, globalW);
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

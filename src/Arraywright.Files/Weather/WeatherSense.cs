using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Whether a file's sun can be the sun of its place: some, but not more than there is, and in the right half of the year and of the day.</summary>
internal static class WeatherSense
{
    /// <summary>Hours that the middle of the file's sunshine may be off the sun's own noon. Six of seven real years lie within 0.2, the one under afternoon clouds of the trade wind at 0.75; daylight saving and stamps at the start of the hour add one each.</summary>
    private const double NoonH = 1.2;

    /// <summary>From here on the clock is pointed out.</summary>
    private const double NoonDoubtH = 0.85;

    /// <summary>Beyond this latitude summer has more sun than winter everywhere.</summary>
    private const double SeasonsFromDeg = 25;

    /// <summary>A year's sun on the ground over that outside the air. The dullest places have 0.25, the clearest 0.75.</summary>
    private const double LeastClearness = 0.15;
    private const double MostClearness = 0.85;

    public static void Check(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        double stepH = raw.StepMinutes / 60.0;
        double sum = 0, east = 0, north = 0, summer = 0, winter = 0;
        for (int i = 0; i < globalW.Length; i++)
        {
            DateTime middle = rows[i].Ends.AddHours(-stepH / 2);
            double turn = middle.TimeOfDay.TotalHours * Math.PI / 12;
            sum += globalW[i];
            east += globalW[i] * Math.Sin(turn);
            north += globalW[i] * Math.Cos(turn);
            summer += middle.Month is >= 5 and <= 7 ? globalW[i] : 0;
            winter += middle.Month is >= 11 or 1 ? globalW[i] : 0;
        }

        if (sum <= 0)
        {
            raw.Refuse(rows[^1].Line, 1, "no sun in the whole year", "global irradiance over zero by day");
            return;
        }

        double latitudeDeg = raw.Place.LatitudeDeg;
        if (Math.Abs(latitudeDeg) > SeasonsFromDeg && (latitudeDeg > 0 ? summer < winter : summer > winter))
        {
            raw.Refuse(1, 1, $"latitude {latitudeDeg} and most sun in the {(summer > winter ? "months May to July" : "months November to January")}", "the summer of that half of the Earth", "is the sign of the latitude right?");
        }

        CheckClearness(raw, sum * stepH / 1000);
        CheckNoon(raw, Math.Atan2(east, north) * 12 / Math.PI);
    }

    private static void CheckClearness(RawWeather raw, double globalKWhPerM2)
    {
        double outsideKWhPerM2 = 0;
        for (int day = 1; day <= 365; day++)
        {
            outsideKWhPerM2 += ExtraterrestrialDay.HorizontalKWhPerM2(raw.Place.LatitudeDeg, day);
        }

        double clearness = globalKWhPerM2 / outsideKWhPerM2;
        if (clearness is < LeastClearness or > MostClearness)
        {
            raw.Refuse(1, 1, $"{globalKWhPerM2:0} kWh/m² of sun in the year, {clearness * 100:0} % of that outside the air", $"{LeastClearness * 100:0} to {MostClearness * 100:0} %", "is the unit of the irradiance right? It is the mean over each step in W/m²");
        }
    }

    /// <summary>Solar noon of the year's mean, where the equation of time averages out, against the middle of the sunshine on the circle of the day.</summary>
    private static void CheckNoon(RawWeather raw, double middleH)
    {
        double noonH = 12 + raw.UtcOffsetH - (raw.Place.LongitudeDeg / 15);
        double offH = Wrapped(middleH - noonH);
        if (Math.Abs(offH) > NoonH)
        {
            raw.Refuse(1, 1, $"time zone {raw.UtcOffsetH:+0.##;-0.##;0} and longitude {raw.Place.LongitudeDeg}, but the middle of the sunshine at {Hour(middleH):0.0} h", $"about {Hour(noonH):0.0} h there", "is the time zone, or the sign of the longitude, right?");
        }
        else if (Math.Abs(offH) > NoonDoubtH)
        {
            raw.Tell($"The middle of the sunshine is {Math.Abs(offH) * 60:0} minutes {(offH < 0 ? "before" : "after")} the sun's noon; the times were taken as they stand. Are they the ends of the steps, in standard time?");
        }
    }

    private static double Wrapped(double hours) => hours - (24 * Math.Round(hours / 24));

    private static double Hour(double hours) => hours - (24 * Math.Floor(hours / 24));
}

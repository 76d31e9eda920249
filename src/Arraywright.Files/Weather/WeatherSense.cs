using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Whether a file's sun can be the sun of its place: a whole year, some sun, in the right half of the year and of the day.</summary>
internal static class WeatherSense
{
    /// <summary>Hours that the middle of the file's sunshine may be off the sun's own noon: clouds lean to one half of the day, daylight saving and stamps at the start of the hour add one each.</summary>
    private const double NoonH = 1.2;

    /// <summary>Beyond this latitude summer has more sun than winter everywhere.</summary>
    private const double SeasonsFromDeg = 25;

    private const double YearH = 8760;

    public static void Check(RawWeather raw, WeatherPlace place, double utcOffsetH, double stepH, IReadOnlyList<DateTime> ends, double[] global, int lastLine)
    {
        double hours = ends.Count * stepH;
        if (Math.Abs(hours - YearH) > 1 && Math.Abs(hours - YearH - 24) > 1)
        {
            raw.Refuse(lastLine, 1, $"weather of {hours:0.#} hours", "a whole year: 8760 hours, or 8784 with a leap day", hours < YearH ? "the file may be cut off" : null);
            return;
        }

        double sun = 0;
        double momentH = 0;
        double summer = 0;
        double winter = 0;
        for (int i = 0; i < global.Length; i++)
        {
            sun += global[i];
            momentH += global[i] * MiddleH(ends[i], stepH);
            summer += ends[i].Month is >= 5 and <= 7 ? global[i] : 0;
            winter += ends[i].Month is >= 11 or 1 ? global[i] : 0;
        }

        if (sun <= 0)
        {
            raw.Refuse(lastLine, 1, "no sun in the whole year", "global irradiance over zero by day");
            return;
        }

        if (Math.Abs(place.LatitudeDeg) > SeasonsFromDeg && (place.LatitudeDeg > 0 ? summer < winter : summer > winter))
        {
            raw.Refuse(1, 1, $"latitude {place.LatitudeDeg} and most sun in the {(summer > winter ? "months May to July" : "months November to January")}", "the summer of that half of the Earth", "is the sign of the latitude right?");
        }

        // Solar noon of the year's mean: the equation of time averages out.
        double noonH = 12 + utcOffsetH - (place.LongitudeDeg / 15);
        double offH = (momentH / sun) - noonH;
        if (Math.Abs(offH) > NoonH)
        {
            raw.Refuse(1, 1, $"time zone {utcOffsetH:+0.##;-0.##;0} and longitude {place.LongitudeDeg}, but the middle of the sunshine at {momentH / sun:0.0} h", $"about {noonH:0.0} h there", "is the time zone, or the sign of the longitude, right?");
        }
    }

    private static double MiddleH(DateTime ends, double stepH)
    {
        double hour = ends.TimeOfDay.TotalHours - (stepH / 2);
        return hour < 0 ? hour + 24 : hour;
    }
}

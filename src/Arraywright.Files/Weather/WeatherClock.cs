using System.Globalization;
using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Whether the clock of a file fits its place: month by month, the middle of the bright sun of the day against the sun's own noon.</summary>
/// <remarks>
/// Bright is, at each time of the day, what one day in eight passes: clouds that come every afternoon do not move it, as they would move a mean. In seven
/// real years the two are within 16 minutes of each other in every month with a right clock. Our own measure: no published one is known to us.
/// </remarks>
internal static class WeatherClock
{
    /// <summary>From here on a month's clock is pointed out, h. Months of typical years come from different sources, and some of them stamp the beginnings of hours.</summary>
    private const double DoubtH = 0.45;

    /// <summary>From here on, in most months, time zone and longitude are another place's, h: beyond summer time or stamps at the beginning of an hour.</summary>
    private const double MostH = 1.25;

    private const int OneDayIn = 8;

    /// <summary>A month with less of the brightest month's sun than this says nothing: the sun hardly rises.</summary>
    private const double LeastShare = 0.05;

    /// <summary>Sun that stands around the clock has no middle: the mean direction's length, 0 for an even sun, near 0.8 for days of twelve hours.</summary>
    private const double LeastPeaked = 0.25;

    public static void Check(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        List<Month> months = Months(raw, rows, globalW);
        if (months.Count == 0)
        {
            return;
        }

        double medianH = months.Select(month => month.OffH).Order().ElementAt(months.Count / 2);
        if (Math.Abs(medianH) > MostH)
        {
            raw.Refuse(
                raw.PlaceLine,
                1,
                $"time zone {raw.UtcOffsetH:+0.##;-0.##;0} and longitude {raw.Place.LongitudeDeg}, but the middle of the sunshine {Math.Abs(medianH):0.0} h {Early(medianH)}",
                $"it at about {12 + raw.UtcOffsetH - (raw.Place.LongitudeDeg / 15):0.0} h there, the sun's noon",
                "is the time zone, or the sign of the longitude, right?");
            return;
        }

        Tell(raw, [.. months.Where(month => month.OffH < -DoubtH)]);
        Tell(raw, [.. months.Where(month => month.OffH > DoubtH)]);
    }

    private static string Early(double offH) => offH < 0 ? "early" : "late";

    private static void Tell(RawWeather raw, Month[] off)
    {
        if (off.Length > 0)
        {
            string names = off.Length == 12 ? "every month" : string.Join(", ", off.Select(month => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month.Number)));
            raw.Tell($"The sun of {names} is {60 * off.Average(month => Math.Abs(month.OffH)):0} minutes {Early(off[0].OffH)} (first in line {off.Min(month => month.FirstLine)}), {(off[0].OffH < 0 ? "as where stamps are the beginnings of steps" : "as in summer time")}; it was taken as it stands.");
        }
    }

    private static List<Month> Months(RawWeather raw, List<RawStep> rows, double[] globalW)
    {
        int perDay = 1440 / raw.StepMinutes;
        List<double>[] byTime = [.. Enumerable.Range(0, 12 * perDay).Select(_ => new List<double>(31))];
        int[] firstLine = new int[12];
        for (int i = 0; i < globalW.Length; i++)
        {
            DateTime begins = rows[i].Ends.AddMinutes(-raw.StepMinutes);
            int month = begins.Month - 1;
            byTime[(month * perDay) + ((int)begins.TimeOfDay.TotalMinutes / raw.StepMinutes)].Add(globalW[i]);
            firstLine[month] = firstLine[month] == 0 ? rows[i].Line : firstLine[month];
        }

        (double Sum, double East, double North)[] suns = [.. byTime.Chunk(perDay).Select(Bright)];
        double most = suns.Max(sun => sun.Sum);
        List<Month> months = [];
        for (int month = 0; month < 12; month++)
        {
            (double sum, double east, double north) = suns[month];
            if (sum > LeastShare * most && Math.Sqrt((east * east) + (north * north)) > LeastPeaked * sum)
            {
                double middleH = Math.Atan2(east, north) * 12 / Math.PI;
                months.Add(new Month(month + 1, Wrapped(middleH - NoonH(raw, month + 1)), firstLine[month]));
            }
        }

        return months;
    }

    /// <summary>The bright sun of a month: its sum, and its direction on the circle of the day.</summary>
    private static (double Sum, double East, double North) Bright(List<double>[] times)
    {
        double sum = 0, east = 0, north = 0;
        for (int time = 0; time < times.Length; time++)
        {
            List<double> days = times[time];
            days.Sort();
            double brightW = days.Count == 0 ? 0 : days[^(1 + (days.Count / OneDayIn))];
            double turn = (time + 0.5) / times.Length * 2 * Math.PI;
            sum += brightW;
            east += brightW * Math.Sin(turn);
            north += brightW * Math.Cos(turn);
        }

        return (sum, east, north);
    }

    /// <summary>The sun's noon in the middle of a month, h of the file's clock. The equation of time of one year serves for all: within a quarter of a minute.</summary>
    private static double NoonH(RawWeather raw, int month) =>
        12 + raw.UtcOffsetH - (raw.Place.LongitudeDeg / 15) - (SunOfDate.At(SunClock.JulianDay(new DateTime(2001, month, 15, 12, 0, 0))).EquationOfTimeMin / 60);

    private static double Wrapped(double hours) => hours - (24 * Math.Round(hours / 24));

    private readonly record struct Month(int Number, double OffH, int FirstLine);
}

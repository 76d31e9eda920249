namespace Arraywright.Files.Weather;

/// <summary>Puts rows on the calendar of one year: doubles are left out, short gaps get empty rows, and the year begins in January.</summary>
/// <remarks>The number of the year does not count: the months of a typical year come from different ones.</remarks>
internal static class RowsInOrder
{
    private const int MinutesPerDay = 1440;

    /// <summary>The rows of the whole year in order; null, with the reasons told, where they do not make one.</summary>
    public static List<RawStep>? Of(List<RawStep> rows, RawWeather raw)
    {
        int step = raw.StepMinutes;
        bool isLeap = rows.Exists(row => Middle(row, step) is { Month: 2, Day: 29 });
        int yearMinutes = (isLeap ? 366 : 365) * MinutesPerDay;
        List<RawStep> ordered = new(yearMinutes / step);
        int doubles = 0, firstDouble = 0, filled = 0, firstFilled = 0;
        int last = 0;
        foreach (RawStep row in rows)
        {
            if (raw.IsFull)
            {
                return null;
            }

            int place = Begin(row, step, isLeap);
            if (place % step != 0)
            {
                raw.Refuse(row.Line, 1, $"the time {row.Ends:yyyy-MM-dd HH:mm}", $"times {step} minutes apart, on the hour and its parts");
                continue;
            }

            int ahead = ordered.Count == 0 ? step : (place - last + yearMinutes) % yearMinutes;
            if (ahead == 0)
            {
                firstDouble = doubles++ == 0 ? row.Line : firstDouble;
                continue;
            }

            if (ahead > yearMinutes / 2)
            {
                raw.Refuse(row.Line, 1, $"{row.Ends:MM-dd HH:mm} after {ordered[^1].Ends:MM-dd HH:mm}", "rows in order of time", "sort the file, or fetch it again");
                continue;
            }

            int missing = (ahead / step) - 1;
            if (missing > RawWeather.LongestGap)
            {
                raw.Refuse(row.Line, 1, $"{missing} rows missing before {row.Ends:MM-dd HH:mm}", $"at most {RawWeather.LongestGap} in a row", "fetch the file again, or fill it from another source");
            }
            else if (missing > 0)
            {
                firstFilled = filled == 0 ? row.Line : firstFilled;
                filled += missing;
                AddEmpty(ordered, row.Line, missing, step);
            }

            ordered.Add(row);
            last = place;
        }

        int lacking = (yearMinutes / step) - ordered.Count;
        if (lacking is > 0 and <= RawWeather.LongestGap)
        {
            firstFilled = filled == 0 ? ordered[^1].Line : firstFilled;
            filled += lacking;
            AddEmpty(ordered, ordered[^1].Line, lacking, step);
            for (int i = ordered.Count - lacking; i < ordered.Count; i++)
            {
                // What is missing before the first row stands in that row's year.
                RawStep row = ordered[i];
                ordered[i] = Begin(row, step, isLeap) < Begin(ordered[0], step, isLeap) ? row with { Ends = WeatherTime.InYear(row.Ends, ordered[0].Ends.Year, step) } : row;
            }
        }

        raw.Tell(doubles, "rows with the time of the row before left out", firstDouble);
        raw.Tell(filled, "rows that are not in the file added and drawn straight between their neighbours", firstFilled);
        return InWholeYear(ordered, yearMinutes, raw) ? FromJanuary(ordered, step, isLeap) : null;
    }

    private static bool InWholeYear(List<RawStep> rows, int yearMinutes, RawWeather raw)
    {
        double hours = rows.Count * raw.StepMinutes / 60.0;
        if (hours != yearMinutes / 60.0)
        {
            string? hint = hours < 8760 ? "the file may be cut off" : "leave one year in it";
            raw.Refuse(rows[^1].Line, 1, $"weather of {hours:0.#} hours", "a whole year: 8760 hours, or 8784 with a leap day", hint);
            return false;
        }

        return true;
    }

    private static void AddEmpty(List<RawStep> rows, int line, int count, int step)
    {
        for (int i = 0; i < count; i++)
        {
            rows.Add(new RawStep(line, rows[^1].Ends.AddMinutes(step), null, null, null, null, null));
        }
    }

    /// <summary>A year may begin in any month of the file; the rows are turned so that January comes first.</summary>
    private static List<RawStep> FromJanuary(List<RawStep> rows, int step, bool isLeap)
    {
        int first = rows.FindIndex(row => Begin(row, step, isLeap) == 0);
        return first <= 0 ? rows : [.. rows.Skip(first), .. rows.Take(first)];
    }

    private static DateTime Middle(in RawStep row, int step) => row.Ends.AddMinutes(-step / 2.0);

    /// <summary>Minute of the year at which a row's step begins.</summary>
    private static int Begin(in RawStep row, int step, bool isLeap)
    {
        DateTime begins = row.Ends.AddMinutes(-step);
        int day = begins.DayOfYear - 1;
        bool pastLeapDay = begins.Month > 2;
        day += pastLeapDay && isLeap && !DateTime.IsLeapYear(begins.Year) ? 1 : 0;
        day -= pastLeapDay && !isLeap && DateTime.IsLeapYear(begins.Year) ? 1 : 0;
        return (day * MinutesPerDay) + (begins.Hour * 60) + begins.Minute;
    }
}

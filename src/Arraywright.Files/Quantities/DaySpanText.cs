using System.Globalization;

namespace Arraywright.Files.Quantities;

/// <summary>Days of any year: <c>06-21</c>, <c>05-01..05-14</c>; a year before them is read and does not count.</summary>
internal static class DaySpanText
{
    public static bool TryRead(string text, out DaySpan days)
    {
        string[] ends = text.Split("..", StringSplitOptions.TrimEntries);
        days = default;
        if (ends.Length > 2 || !TryDay(ends[0], out DateOnly from) || !TryDay(ends[^1], out DateOnly to))
        {
            return false;
        }

        days = new DaySpan(from.Month, from.Day, to.Month, to.Day);
        return true;
    }

    /// <summary>A day without a year is read in a leap year, so that 02-29 is one.</summary>
    private static bool TryDay(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)
        || DateOnly.TryParseExact("2024-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}

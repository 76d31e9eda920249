using System.Globalization;

namespace Arraywright.Files.Quantities;

/// <summary>Days of any year: <c>06-21</c>, <c>05-01..05-14</c>; a year before them is read and does not count.</summary>
public static class DayText
{
    /// <summary>A day, or days from one to another.</summary>
    public static bool TryRead(string text, out DaySpan days)
    {
        string[] ends = text.Split("..", StringSplitOptions.TrimEntries);
        days = default;
        if (ends.Length > 2 || !TryRead(ends[0], out DateOnly from) || !TryRead(ends[^1], out DateOnly to))
        {
            return false;
        }

        days = new DaySpan(from.Month, from.Day, to.Month, to.Day);
        return true;
    }

    /// <summary>One day; without a year it is read in a leap year, so that 02-29 is one.</summary>
    public static bool TryRead(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)
        || DateOnly.TryParseExact("2024-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}

namespace Arraywright.Files.Weather;

/// <summary>A moment as weather tables write it: <c>2023-01-01T01:00</c>, a space for the T, with seconds, with <c>Z</c> or <c>+01:00</c>, or hour 24.</summary>
internal static class WeatherTime
{
    /// <summary>Reads one; the zone is null where none is written.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out DateTime time, out double? zoneH)
    {
        time = default;
        zoneH = null;
        text = text.Trim(" \"");
        if (text.Length < 16 || text[4] != '-' || text[7] != '-' || text[10] is not ('T' or 't' or ' ') || text[13] != ':'
            || !Whole(text[..4], out int year) || !Whole(text[5..7], out int month) || !Whole(text[8..10], out int day)
            || !Whole(text[11..13], out int hour) || !Whole(text[14..16], out int minute)
            || year is < 1800 or > 2200 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month)
            || hour > 24 || minute > 59 || (hour == 24 && minute > 0))
        {
            return false;
        }

        ReadOnlySpan<char> rest = text[16..];
        if (rest.StartsWith(":00"))
        {
            rest = rest[3..];
            rest = rest.StartsWith(".0") ? rest.TrimStart('.').TrimStart('0') : rest;
        }

        time = new DateTime(year, month, day).AddMinutes((60 * hour) + minute);
        return rest.IsEmpty || IsZone(rest, out zoneH);
    }

    /// <summary>A step that begins in the neighbouring year, put into this one.</summary>
    public static DateTime InYear(DateTime ends, int year, int stepMinutes) =>
        ends.AddYears(year - ends.AddMinutes(-stepMinutes).Year);

    private static bool IsZone(ReadOnlySpan<char> text, out double? zoneH)
    {
        if (text is "Z" or "z")
        {
            zoneH = 0;
            return true;
        }

        zoneH = null;
        if (text[0] is not ('+' or '-') || text.Length is not (3 or 5 or 6) || !Whole(text[1..3], out int hours))
        {
            return false;
        }

        int minutes = 0;
        if (text.Length > 3 && (!Whole(text[^2..], out minutes) || (text.Length == 6 && text[3] != ':')))
        {
            return false;
        }

        double sized = hours + (minutes / 60.0);
        zoneH = text[0] == '-' ? -sized : sized;
        return sized <= 14 && minutes < 60;
    }

    private static bool Whole(ReadOnlySpan<char> digits, out int value)
    {
        value = 0;
        foreach (char digit in digits)
        {
            if (!char.IsAsciiDigit(digit))
            {
                return false;
            }

            value = (value * 10) + (digit - '0');
        }

        return true;
    }
}

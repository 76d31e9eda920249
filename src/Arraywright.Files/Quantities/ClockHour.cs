using System.Globalization;

namespace Arraywright.Files.Quantities;

/// <summary>A clock hour: <c>7:30</c>, <c>16</c>, <c>16 h</c>.</summary>
internal static class ClockHour
{
    /// <summary>The hour, 0 to 24; minutes are its fraction.</summary>
    public static bool TryRead(string text, out double hour)
    {
        ReadOnlySpan<char> written = text.AsSpan().Trim(' ');
        int colon = written.IndexOf(':');
        ReadOnlySpan<char> hours = colon < 0 ? written.TrimEnd('h').TrimEnd(' ') : written[..colon];
        int minutes = 0;
        bool good = int.TryParse(hours, NumberStyles.None, CultureInfo.InvariantCulture, out int whole)
            && (colon < 0 || (written.Length - colon == 3 && int.TryParse(written[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out minutes)));
        hour = whole + (minutes / 60.0);
        return good && minutes < 60 && hour <= 24;
    }

    /// <summary>The hour as one writes it, to the minute.</summary>
    public static string Write(double hour)
    {
        int minutes = (int)Math.Round(hour * 60);
        return $"{minutes / 60}:{minutes % 60:00}";
    }
}

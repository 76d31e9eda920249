namespace Arraywright.Sky;

/// <summary>Clock time and the day count of astronomers.</summary>
public static class SunClock
{
    /// <summary>Julian day of a moment; local standard time gives local days, to be shifted by the zone.</summary>
    public static double JulianDay(DateTime moment) => 2440587.5 + (moment - new DateTime(1970, 1, 1)).TotalDays;
}

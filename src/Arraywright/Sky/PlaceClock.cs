namespace Arraywright.Sky;

/// <summary>The clock on the wall at a place, by which people state hours of load and shade; weather keeps standard time all year.</summary>
internal static class PlaceClock
{
    /// <summary>What the clock on the wall shows, daylight saving included; without a zone, standard time.</summary>
    /// <param name="standard">Local standard time of the weather.</param>
    /// <param name="utcOffsetH">That time less universal time, h.</param>
    /// <param name="zone">The place's zone; null when it is not known.</param>
    public static DateTime At(DateTime standard, double utcOffsetH, PlaceZone? zone)
    {
        if (zone is null)
        {
            return standard;
        }

        DateTime utc = standard.AddHours(-utcOffsetH);
        return utc.AddHours(zone.AheadH(utc));
    }
}

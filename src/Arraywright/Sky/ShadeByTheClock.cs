using System.Collections.Immutable;

namespace Arraywright.Sky;

/// <summary>Shade that comes at hours of the day.</summary>
internal static class ShadeByTheClock
{
    /// <summary>Mean share of light kept off through a stretch of the day, 0 to 1: shade for half of it counts half.</summary>
    /// <param name="hours">Shade by clock hours, none over another; one may go through midnight.</param>
    /// <param name="fromHour">Clock hour at which the stretch begins, −24 to 24.</param>
    /// <param name="lengthH">Its length, h, above 0, up to 24.</param>
    public static double ShareKeptOff(ImmutableArray<ShadeHours> hours, double fromHour, double lengthH)
    {
        double shadedH = 0;
        foreach (ShadeHours shade in hours)
        {
            double shadeLengthH = shade.ToHour - shade.FromHour + (shade.ToHour < shade.FromHour ? 24 : 0);
            for (int dayH = -48; dayH <= 24; dayH += 24)
            {
                double begins = shade.FromHour + dayH;
                shadedH += shade.Fraction * Math.Max(0, Math.Min(fromHour + lengthH, begins + shadeLengthH) - Math.Max(fromHour, begins));
            }
        }

        return Math.Clamp(shadedH / lengthH, 0, 1);
    }
}

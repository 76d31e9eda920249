using System.Collections.Immutable;

namespace Arraywright.Climate;

/// <summary>A plain clear day: the sun rises at 6, stands highest at 12 and sets at 18, its strength a sine between. For shade that comes by the hour.</summary>
/// <remarks>Crude: no season, no tilt, clock hours taken as sun hours. For plans whose weather is not known.</remarks>
public static class ClearDay
{
    /// <summary>Share of the day's sun that shade by the hour keeps off, 0 to 1. Where hours overlap, their shades add.</summary>
    public static double ShareKeptOff(ImmutableArray<ShadeHours> hours)
    {
        double keptOff = 0;
        foreach (ShadeHours shade in hours)
        {
            double throughMidnight = shade.ToHour < shade.FromHour ? 1 : 0;
            keptOff += shade.Fraction * (ShareUntil(shade.ToHour) - ShareUntil(shade.FromHour) + throughMidnight);
        }

        return Math.Min(1, keptOff);
    }

    private static double ShareUntil(double hour) => (1 - Math.Cos(Math.PI * (Math.Clamp(hour, 6, 18) - 6) / 12)) / 2;
}

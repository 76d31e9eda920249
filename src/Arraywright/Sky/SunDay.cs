using Arraywright.Electrical;

namespace Arraywright.Sky;

/// <summary>Whether the sun rises and sets on a day.</summary>
public enum Daylight
{
    /// <summary>It rises and sets. On the day that polar day or night begins or ends it may do only one of the two: the other then stands where the sun is lowest.</summary>
    RisesAndSets,

    /// <summary>It stays up: polar day.</summary>
    AllDay,

    /// <summary>It stays down: polar night.</summary>
    None,
}

/// <summary>Sunrise, noon and sunset of a day.</summary>
/// <param name="Daylight">Whether there are any.</param>
/// <param name="RiseJulianDay">Julian day (universal time) of sunrise, the upper rim at the horizon; where it does not rise, of solar noon.</param>
/// <param name="NoonJulianDay">Julian day of the sun's highest stand.</param>
/// <param name="SetJulianDay">Julian day of sunset; where it does not set, of solar noon.</param>
public readonly record struct SunDay(Daylight Daylight, double RiseJulianDay, double NoonJulianDay, double SetJulianDay)
{
    private static readonly double RiseSine = Angle.Sin(SunPosition.RiseDeg);

    /// <summary>The day at a place.</summary>
    /// <param name="noonGuess">Julian day of about local noon: within six hours.</param>
    /// <param name="site">The place.</param>
    /// <remarks>
    /// Noon is where the hour angle is 0; rise and set where the geometric elevation is −0.8333°, solved for. The
    /// reference report takes one step towards them instead.
    /// </remarks>
    public static SunDay Of(double noonGuess, in Site site)
    {
        SunPath path = new(site);
        Site place = site;
        double noon = noonGuess;
        for (int step = 0; step < 3; step++)
        {
            noon -= HourAngleDeg(path, noon, site) / 360;
        }

        // From one lowest stand over noon to the next; the sun's own way north or south decides the border days of polar day and night.
        double before = noon - 0.5;
        double after = noon + 0.5;
        if (Height(noon) <= 0)
        {
            return new SunDay(Daylight.None, noon, noon, noon);
        }

        if (Height(before) >= 0 && Height(after) >= 0)
        {
            return new SunDay(Daylight.AllDay, noon, noon, noon);
        }

        return new SunDay(
            Daylight.RisesAndSets,
            Height(before) < 0 ? RootSearch.Between(Height, before, noon) : before,
            noon,
            Height(after) < 0 ? RootSearch.Between(Height, noon, after) : after);

        double Height(double moment) => Sine(path, moment, place) - RiseSine;
    }

    /// <summary>Sine of the geometric elevation of the sun's centre.</summary>
    private static double Sine(SunPath path, double julianDay, in Site site)
    {
        SunOfDate sun = path.OfDate(julianDay);
        return (Angle.Sin(site.LatitudeDeg) * Angle.Sin(sun.DeclinationDeg))
            + (Angle.Cos(site.LatitudeDeg) * Angle.Cos(sun.DeclinationDeg) * Angle.Cos(HourAngleDeg(path, julianDay, site)));
    }

    private static double HourAngleDeg(SunPath path, double julianDay, in Site site)
    {
        SunOfDate sun = path.OfDate(julianDay);
        double angle = Angle.Wrapped(SunPosition.SiderealDeg(julianDay) + sun.EquinoxesDeg + site.LongitudeDeg - sun.RightAscensionDeg);
        return angle > 180 ? angle - 360 : angle;
    }
}

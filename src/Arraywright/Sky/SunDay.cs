namespace Arraywright.Sky;

/// <summary>Whether the sun rises and sets on a day.</summary>
public enum Daylight
{
    /// <summary>It rises and sets.</summary>
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
    /// <summary>The day at a place.</summary>
    /// <param name="noonGuess">Julian day of about local noon: within six hours.</param>
    /// <param name="site">The place.</param>
    /// <remarks>
    /// Noon is where the hour angle is 0; rise and set where the geometric elevation is −0.8333°, found by the tangent from the ideal hour
    /// angle. The reference report interpolates instead and is within two seconds of this.
    /// </remarks>
    public static SunDay Of(double noonGuess, in Site site)
    {
        SunPath path = new(site);
        double noon = noonGuess;
        for (int step = 0; step < 3; step++)
        {
            noon -= HourAngleDeg(path, noon, site) / 360;
        }

        double declinationDeg = path.OfDate(noon).DeclinationDeg;
        double cosine = (Angle.Sin(SunPosition.RiseDeg) - (Angle.Sin(site.LatitudeDeg) * Angle.Sin(declinationDeg)))
            / (Angle.Cos(site.LatitudeDeg) * Angle.Cos(declinationDeg));
        if (!(Math.Abs(cosine) < 1))
        {
            return new SunDay(cosine < 0 ? Daylight.AllDay : Daylight.None, noon, noon, noon);
        }

        double halfDay = Angle.Degrees(Math.Acos(cosine)) / 360;
        return new SunDay(Daylight.RisesAndSets, Crossing(path, noon - halfDay, site), noon, Crossing(path, noon + halfDay, site));
    }

    private static double Crossing(SunPath path, double guess, in Site site)
    {
        double moment = guess;
        for (int step = 0; step < 4; step++)
        {
            SunOfDate sun = path.OfDate(moment);
            double hourDeg = HourAngleDeg(path, moment, site);
            double sine = (Angle.Sin(site.LatitudeDeg) * Angle.Sin(sun.DeclinationDeg)) + (Angle.Cos(site.LatitudeDeg) * Angle.Cos(sun.DeclinationDeg) * Angle.Cos(hourDeg));
            double elevationDeg = Angle.Degrees(Math.Asin(Math.Clamp(sine, -1, 1)));
            double perDay = -360 * Angle.Cos(site.LatitudeDeg) * Angle.Cos(sun.DeclinationDeg) * Angle.Sin(hourDeg) / Angle.Cos(elevationDeg);
            double shift = (SunPosition.RiseDeg - elevationDeg) / perDay;
            moment += double.IsFinite(shift) ? Math.Clamp(shift, -0.05, 0.05) : 0;
        }

        return moment;
    }

    private static double HourAngleDeg(SunPath path, double julianDay, in Site site)
    {
        SunOfDate sun = path.OfDate(julianDay);
        double angle = Angle.Wrapped(SunPosition.SiderealDeg(julianDay) + sun.EquinoxesDeg + site.LongitudeDeg - sun.RightAscensionDeg);
        return angle > 180 ? angle - 360 : angle;
    }
}

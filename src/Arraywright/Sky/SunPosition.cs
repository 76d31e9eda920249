namespace Arraywright.Sky;

/// <summary>Where the sun stands for somebody at a place.</summary>
/// <param name="GeometricElevationDeg">Elevation without refraction, degrees.</param>
/// <param name="ElevationDeg">Elevation as seen, with refraction, degrees.</param>
/// <param name="AzimuthDeg">Degrees clockwise from north.</param>
/// <param name="DistanceAu">Distance, astronomical units.</param>
public readonly record struct SunPosition(double GeometricElevationDeg, double ElevationDeg, double AzimuthDeg, double DistanceAu)
{
    /// <summary>Half the sun's disc and the refraction at the horizon: the sun is up from this elevation on, degrees.</summary>
    internal const double RiseDeg = -0.8333;

    /// <summary>Its light outside the air on a plane that faces it, W/m².</summary>
    public double ExtraterrestrialWPerM2 => ExtraterrestrialDay.FacingWPerM2(DistanceAu);

    /// <summary>Zenith angle as seen, degrees.</summary>
    public double ZenithDeg => 90 - ElevationDeg;

    /// <summary>The sun at a moment and place.</summary>
    /// <param name="julianDay">Julian day in universal time.</param>
    /// <param name="site">The place.</param>
    /// <param name="deltaTSeconds">Terrestrial less universal time, s; null for the usual figure.</param>
    public static SunPosition At(double julianDay, in Site site, double? deltaTSeconds = null) =>
        Of(SunOfDate.At(julianDay, deltaTSeconds), julianDay, site);

    /// <summary>The sun for a place, once it is known against the Earth's centre.</summary>
    /// <remarks>Equations 28, 29 and 38 to 46 of NREL/TP-560-34302: parallax, refraction, azimuth.</remarks>
    public static SunPosition Of(in SunOfDate sun, double julianDay, in Site site)
    {
        double hourAngleDeg = SiderealDeg(julianDay) + sun.EquinoxesDeg + site.LongitudeDeg - sun.RightAscensionDeg;
        double parallaxDeg = 8.794 / (3600 * sun.DistanceAu);
        double u = Math.Atan(0.99664719 * Angle.Tan(site.LatitudeDeg));
        double x = Math.Cos(u) + (site.ElevationM / 6378140 * Angle.Cos(site.LatitudeDeg));
        double y = (0.99664719 * Math.Sin(u)) + (site.ElevationM / 6378140 * Angle.Sin(site.LatitudeDeg));
        double sinParallax = Angle.Sin(parallaxDeg);
        double cosDeclination = Angle.Cos(sun.DeclinationDeg);
        double divisor = cosDeclination - (x * sinParallax * Angle.Cos(hourAngleDeg));
        double shiftRad = Math.Atan2(-x * sinParallax * Angle.Sin(hourAngleDeg), divisor);
        double declinationRad = Math.Atan2((Angle.Sin(sun.DeclinationDeg) - (y * sinParallax)) * Math.Cos(shiftRad), divisor);
        double hourRad = Angle.Radians(hourAngleDeg) - shiftRad;

        double sinLatitude = Angle.Sin(site.LatitudeDeg);
        double cosLatitude = Angle.Cos(site.LatitudeDeg);
        double sinElevation = (sinLatitude * Math.Sin(declinationRad)) + (cosLatitude * Math.Cos(declinationRad) * Math.Cos(hourRad));
        double elevationDeg = Angle.Degrees(Math.Asin(Math.Clamp(sinElevation, -1, 1)));
        double azimuthDeg = Angle.Wrapped(180 + Angle.Degrees(Math.Atan2(
            Math.Sin(hourRad),
            (Math.Cos(hourRad) * sinLatitude) - (Math.Tan(declinationRad) * cosLatitude))));
        return new SunPosition(elevationDeg, elevationDeg + RefractionDeg(elevationDeg, site), azimuthDeg, sun.DistanceAu);
    }

    /// <summary>Mean sidereal time at Greenwich, degrees.</summary>
    internal static double SiderealDeg(double julianDay)
    {
        double days = julianDay - 2451545;
        double c = days / 36525;
        return Angle.Wrapped(280.46061837 + (360.98564736629 * days) + (c * c * (0.000387933 - (c / 38710000))));
    }

    private static double RefractionDeg(double elevationDeg, in Site site) =>
        elevationDeg < RiseDeg ? 0 : site.PressurePa / 101000 * (283 / (273 + site.AirC)) * 1.02 / (60 * Angle.Tan(elevationDeg + (10.3 / (elevationDeg + 5.11))));
}

namespace Arraywright.Sky;

/// <summary>Where the sun stands against the Earth's centre at one moment: what changes slowly.</summary>
/// <param name="RightAscensionDeg">Apparent right ascension, degrees, 0 to 360.</param>
/// <param name="DeclinationDeg">Apparent declination, degrees.</param>
/// <param name="DistanceAu">Distance, astronomical units.</param>
/// <param name="EquinoxesDeg">Nutation in longitude projected on the equator, degrees: apparent less mean sidereal time.</param>
/// <param name="EquationOfTimeMin">Solar less clock time of the Greenwich meridian, minutes.</param>
public readonly record struct SunOfDate(double RightAscensionDeg, double DeclinationDeg, double DistanceAu, double EquinoxesDeg, double EquationOfTimeMin)
{
    /// <summary>The sun at a moment.</summary>
    /// <param name="julianDay">Julian day in universal time.</param>
    /// <param name="deltaTSeconds">Terrestrial less universal time, s; null for the usual figure of the year.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite.</exception>
    /// <remarks>Equations 4 to 37 and A1 to A4 of I. Reda and A. Andreas, Solar Position Algorithm, NREL/TP-560-34302 (2003, revised 2008). Error under 0.0003° for the years −2000 to 6000.</remarks>
    public static SunOfDate At(double julianDay, double? deltaTSeconds = null)
    {
        if (!double.IsFinite(julianDay) || deltaTSeconds is { } given && !double.IsFinite(given))
        {
            throw new ArgumentOutOfRangeException(nameof(julianDay), julianDay, "A moment is a finite figure.");
        }

        double seconds = deltaTSeconds ?? DeltaT.Seconds(2000 + ((julianDay - 2451545) / 365.25));
        double centuries = (julianDay + (seconds / 86400) - 2451545) / 36525;
        double t = centuries / 10;

        double longitudeDeg = Angle.Wrapped(Angle.Degrees(Series(SolarTerms.Longitude, t)) + 180);
        double latitudeDeg = -Angle.Degrees(Series(SolarTerms.Latitude, t));
        double distanceAu = Series(SolarTerms.Radius, t);
        (double nutationDeg, double nutationOfObliquityDeg) = Nutation(centuries);
        double obliquityDeg = (MeanObliquityArcSeconds(t / 10) / 3600) + nutationOfObliquityDeg;
        double apparentDeg = longitudeDeg + nutationDeg - (20.4898 / (3600 * distanceAu));

        double sinLongitude = Angle.Sin(apparentDeg);
        double rightAscensionDeg = Angle.Wrapped(Angle.Degrees(Math.Atan2(
            (sinLongitude * Angle.Cos(obliquityDeg)) - (Angle.Tan(latitudeDeg) * Angle.Sin(obliquityDeg)),
            Angle.Cos(apparentDeg))));
        double declinationDeg = Angle.Degrees(Math.Asin(
            (Angle.Sin(latitudeDeg) * Angle.Cos(obliquityDeg)) + (Angle.Cos(latitudeDeg) * Angle.Sin(obliquityDeg) * sinLongitude)));
        double equinoxesDeg = nutationDeg * Angle.Cos(obliquityDeg);
        double equationMin = 4 * (MeanLongitudeDeg(t) - 0.0057183 - rightAscensionDeg + equinoxesDeg);
        return new SunOfDate(rightAscensionDeg, declinationDeg, distanceAu, equinoxesDeg, equationMin - (1440 * Math.Round(equationMin / 1440)));
    }

    /// <summary>The sum of a series of <see cref="SolarTerms"/>, rad or AU.</summary>
    /// <param name="powers">Its rows, one array a power of t.</param>
    /// <param name="t">Julian millennia of terrestrial time from 2000.</param>
    internal static double Series(ReadOnlySpan<double[]> powers, double t)
    {
        double sum = 0;
        for (int power = powers.Length - 1; power >= 0; power--)
        {
            double terms = 0;
            double[] rows = powers[power];
            for (int row = 0; row < rows.Length; row += 3)
            {
                terms += rows[row] * Math.Cos(rows[row + 1] + (rows[row + 2] * t));
            }

            sum = (sum * t) + terms;
        }

        return sum / 1e8;
    }

    /// <summary>Nutation at c Julian centuries of terrestrial time from 2000, degrees.</summary>
    internal static (double LongitudeDeg, double ObliquityDeg) Nutation(double c)
    {
        ReadOnlySpan<double> arguments =
        [
            Angle.Radians(297.85036 + (c * (445267.111480 + (c * (-0.0019142 + (c / 189474)))))),
            Angle.Radians(357.52772 + (c * (35999.050340 + (c * (-0.0001603 - (c / 300000)))))),
            Angle.Radians(134.96298 + (c * (477198.867398 + (c * (0.0086972 + (c / 56250)))))),
            Angle.Radians(93.27191 + (c * (483202.017538 + (c * (-0.0036825 + (c / 327270)))))),
            Angle.Radians(125.04452 + (c * (-1934.136261 + (c * (0.0020708 + (c / 450000)))))),
        ];
        double longitude = 0;
        double obliquity = 0;
        ReadOnlySpan<double> rows = SolarTerms.Nutation;
        for (int row = 0; row < rows.Length; row += 9)
        {
            double argument = 0;
            for (int i = 0; i < 5; i++)
            {
                argument += rows[row + i] * arguments[i];
            }

            longitude += (rows[row + 5] + (rows[row + 6] * c)) * Math.Sin(argument);
            obliquity += (rows[row + 7] + (rows[row + 8] * c)) * Math.Cos(argument);
        }

        return (longitude / 36e6, obliquity / 36e6);
    }

    internal static double MeanObliquityArcSeconds(double u) =>
        84381.448 + (u * (-4680.93 + (u * (-1.55 + (u * (1999.25 + (u * (-51.38 + (u * (-249.67 + (u * (-39.05 + (u * (7.12 + (u * (27.87 + (u * (5.79 + (u * 2.45)))))))))))))))))));

    internal static double MeanLongitudeDeg(double t) =>
        Angle.Wrapped(280.4664567 + (t * (360007.6982779 + (t * (0.03032028 + (t * ((1 / 49931.0) + (t * ((-1 / 15300.0) - (t / 2000000))))))))));
}

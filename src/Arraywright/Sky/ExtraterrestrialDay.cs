namespace Arraywright.Sky;

/// <summary>The sun above the air, over a whole day: what a horizontal plane would get if there were no atmosphere.</summary>
/// <remarks>
/// Declination and distance after Spencer (1971), the day's integral after Duffie and Beckman, eq. 1.10.3; solar constant 1361 W/m² (Kopp and Lean 2011).
/// Spencer's declination is within 0.5° of the true one, which moves the result by less than 1 % below 50° of latitude and by more near the polar night.
/// Uses the platform's sine and cosine: the last bit may differ between machines.
/// </remarks>
public static class ExtraterrestrialDay
{
    /// <summary>Irradiance on a plane facing the sun at the mean distance, W/m².</summary>
    public const double SolarConstantWPerM2 = 1361;

    /// <summary>Irradiance on a plane facing the sun at a distance, W/m².</summary>
    /// <param name="distanceAu">Astronomical units, over 0.</param>
    public static double FacingWPerM2(double distanceAu) => SolarConstantWPerM2 / (distanceAu * distanceAu);

    /// <summary>Irradiation of a horizontal plane above the air, kWh/m² a day; 0 in the polar night.</summary>
    /// <param name="latitudeDeg">Degrees, north positive, −90 to 90.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double HorizontalKWhPerM2(double latitudeDeg, int dayOfYear) =>
        HorizontalKWhPerM2(latitudeDeg, DeclinationRad(dayOfYear), DistanceFactor(dayOfYear));

    /// <summary>The same for a given declination and square of mean over actual distance.</summary>
    internal static double HorizontalKWhPerM2(double latitudeDeg, double declinationRad, double distanceFactor)
    {
        double latitude = latitudeDeg * Math.PI / 180;

        // Half the day's length as an angle: 0 in the polar night, π under the midnight sun.
        double sunset = Math.Acos(Math.Clamp(-Math.Tan(latitude) * Math.Tan(declinationRad), -1, 1));
        double meanSine = ((Math.Cos(latitude) * Math.Cos(declinationRad) * Math.Sin(sunset))
            + (sunset * Math.Sin(latitude) * Math.Sin(declinationRad))) / Math.PI;
        return 24 * SolarConstantWPerM2 / 1000 * distanceFactor * Math.Max(0, meanSine);
    }

    /// <summary>Declination, rad.</summary>
    internal static double DeclinationRad(int dayOfYear)
    {
        double dayAngle = DayAngle(dayOfYear);
        return 0.006918
            - (0.399912 * Math.Cos(dayAngle)) + (0.070257 * Math.Sin(dayAngle))
            - (0.006758 * Math.Cos(2 * dayAngle)) + (0.000907 * Math.Sin(2 * dayAngle))
            - (0.002697 * Math.Cos(3 * dayAngle)) + (0.001480 * Math.Sin(3 * dayAngle));
    }

    /// <summary>Square of mean over actual distance to the sun.</summary>
    internal static double DistanceFactor(int dayOfYear)
    {
        double dayAngle = DayAngle(dayOfYear);
        return 1.000110
            + (0.034221 * Math.Cos(dayAngle)) + (0.001280 * Math.Sin(dayAngle))
            + (0.000719 * Math.Cos(2 * dayAngle)) + (0.000077 * Math.Sin(2 * dayAngle));
    }

    private static double DayAngle(int dayOfYear) => 2 * Math.PI * (dayOfYear - 1) / 365;
}

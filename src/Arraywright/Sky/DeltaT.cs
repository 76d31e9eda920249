namespace Arraywright.Sky;

/// <summary>Terrestrial time less universal time: how far the turning Earth has fallen behind the clock.</summary>
internal static class DeltaT
{
    /// <summary>Seconds, for the years 1950 to 2100; beyond, the nearest of these.</summary>
    /// <param name="year">Decimal year.</param>
    /// <remarks>Polynomials of F. Espenak and J. Meeus, Five Millennium Canon of Solar Eclipses, NASA/TP-2006-214141 (from memory). Ten seconds of error move the sun by 0.0001° against the stars.</remarks>
    public static double Seconds(double year)
    {
        double y = Math.Clamp(year, 1950, 2100);
        if (y < 1961)
        {
            double t = y - 1950;
            return 29.07 + (t * (0.407 + (t * ((-1 / 233.0) + (t / 2547)))));
        }

        if (y < 1986)
        {
            double t = y - 1975;
            return 45.45 + (t * (1.067 + (t * ((-1 / 260.0) - (t / 718)))));
        }

        if (y < 2005)
        {
            double t = y - 2000;
            return 63.86 + (t * (0.3345 + (t * (-0.060374 + (t * (0.0017275 + (t * (0.000651814 + (t * 0.00002373599)))))))));
        }

        if (y < 2050)
        {
            double t = y - 2000;
            return 62.92 + (t * (0.32217 + (t * 0.005589)));
        }

        double u = (y - 1820) / 100;
        return -20 + (32 * u * u) - (0.5628 * (2150 - y));
    }
}

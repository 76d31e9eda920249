namespace Arraywright.Sky;

/// <summary>How much air sunlight passes, against the shortest way at sea level.</summary>
public static class AirMass
{
    /// <summary>Pressure of the standard atmosphere, Pa.</summary>
    public static double StandardPressurePa(double elevationM) => 101325 * Math.Pow(1 - (2.25577e-5 * elevationM), 5.25588);

    /// <summary>Relative air mass, no unit, after F. Kasten and A. T. Young, Applied Optics 28 (1989) 4735.</summary>
    /// <param name="zenithDeg">Zenith angle as seen, degrees; beyond 90 it stays at the horizon's.</param>
    public static double Relative(double zenithDeg)
    {
        double z = Math.Min(zenithDeg, 90);
        return 1 / (Angle.Cos(z) + (0.50572 * Math.Pow(96.07995 - z, -1.6364)));
    }
}

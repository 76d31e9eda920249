namespace Arraywright.Sky;

/// <summary>How much light the glass of a panel lets through at an angle, against straight on.</summary>
/// <remarks>
/// Snell's and Fresnel's laws and absorption in 2 mm of glass (refractive index 1.526, 4/m), after De Soto, Klein and Beckman, Solar Energy 80
/// (2006) 78; for sky and ground at effective angles after M. J. Brandemuehl and W. A. Beckman, Solar Energy 24 (1980) 511 (both from memory).
/// </remarks>
public static class IncidenceLoss
{
    private const double Index = 1.526;
    private const double AbsorptionM = 4 * 0.002;

    private static readonly double StraightOn = Through(1e-3);

    /// <summary>Share let through of light from one direction, 1 straight on, 0 from 90 degrees.</summary>
    /// <param name="incidenceDeg">Angle to the normal, degrees.</param>
    public static double BeamFraction(double incidenceDeg) => incidenceDeg >= 90 ? 0 : Math.Clamp(Through(Math.Max(incidenceDeg, 1e-3)) / StraightOn, 0, 1);

    /// <summary>Share let through of light from the sky.</summary>
    /// <param name="tiltDeg">Tilt of the panel, degrees.</param>
    public static double SkyFraction(double tiltDeg) => BeamFraction(59.7 - (0.1388 * tiltDeg) + (0.001497 * tiltDeg * tiltDeg));

    /// <summary>Share let through of light from the ground.</summary>
    /// <param name="tiltDeg">Tilt of the panel, degrees.</param>
    public static double GroundFraction(double tiltDeg) => BeamFraction(90 - (0.5788 * tiltDeg) + (0.002693 * tiltDeg * tiltDeg));

    private static double Through(double incidenceDeg)
    {
        double inRad = Angle.Radians(incidenceDeg);
        double glassRad = Math.Asin(Math.Sin(inRad) / Index);
        double across = Math.Sin(glassRad - inRad) / Math.Sin(glassRad + inRad);
        double along = Math.Tan(glassRad - inRad) / Math.Tan(glassRad + inRad);
        return Electrical.Exponential.Of(-AbsorptionM / Math.Cos(glassRad)) * (1 - (0.5 * ((across * across) + (along * along))));
    }
}

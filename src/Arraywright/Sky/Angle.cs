namespace Arraywright.Sky;

/// <summary>Angles in degrees.</summary>
internal static class Angle
{
    private const double PerDegree = Math.PI / 180;

    public static double Radians(double degrees) => degrees * PerDegree;

    public static double Degrees(double radians) => radians / PerDegree;

    public static double Sin(double degrees) => Math.Sin(degrees * PerDegree);

    public static double Cos(double degrees) => Math.Cos(degrees * PerDegree);

    public static double Tan(double degrees) => Math.Tan(degrees * PerDegree);

    /// <summary>The same direction, from 0 to under 360.</summary>
    public static double Wrapped(double degrees)
    {
        double wrapped = degrees - (360 * Math.Floor(degrees / 360));
        return wrapped >= 360 ? 0 : wrapped;
    }
}

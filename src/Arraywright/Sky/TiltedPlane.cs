using Arraywright.Sky.Perez;

namespace Arraywright.Sky;

/// <summary>How the light of the sky is taken to be spread over it.</summary>
public enum SkyModel
{
    /// <summary>R. Perez and others, Solar Energy 44 (1990) 271: bright around the sun and at the horizon.</summary>
    Perez,

    /// <summary>J. E. Hay and J. A. Davies (1980): bright around the sun.</summary>
    HayDavies,

    /// <summary>B. Y. H. Liu and R. C. Jordan (1963): the same everywhere.</summary>
    Isotropic,
}

/// <summary>Irradiance on a tilted plane by where it comes from, W/m²; parts may be slightly negative in the Perez model's horizon.</summary>
/// <param name="BeamWPerM2">Straight from the sun.</param>
/// <param name="CircumsolarWPerM2">From the sky around the sun.</param>
/// <param name="SkyWPerM2">From the rest of the sky.</param>
/// <param name="HorizonWPerM2">From the band at the horizon.</param>
/// <param name="GroundWPerM2">From the ground.</param>
public readonly record struct TiltedPlane(double BeamWPerM2, double CircumsolarWPerM2, double SkyWPerM2, double HorizonWPerM2, double GroundWPerM2)
{
    /// <summary>Their sum, not under 0.</summary>
    public double TotalWPerM2 => Math.Max(0, BeamWPerM2 + CircumsolarWPerM2 + SkyWPerM2 + HorizonWPerM2 + GroundWPerM2);

    /// <summary>The plane under a sky.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="light">What it and the sky give.</param>
    /// <param name="tiltDeg">Tilt of the plane, degrees from horizontal.</param>
    /// <param name="incidenceDeg">Angle between the sun and the plane's normal, degrees.</param>
    /// <param name="albedoFraction">Share of light that the ground gives back.</param>
    /// <param name="model">How the sky's light is spread.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite, irradiance or albedo is negative, or there is no sun outside the air.</exception>
    public static TiltedPlane Of(in SunPosition sun, in SkyLight light, double tiltDeg, double incidenceDeg, double albedoFraction, SkyModel model)
    {
        Check(double.IsFinite(light.GlobalWPerM2 + light.BeamNormalWPerM2 + light.DiffuseWPerM2), nameof(light));
        Check(light is { GlobalWPerM2: >= 0, BeamNormalWPerM2: >= 0, DiffuseWPerM2: >= 0, ExtraterrestrialWPerM2: > 0 and < double.PositiveInfinity }, nameof(light));
        Check(double.IsFinite(sun.ElevationDeg + sun.GeometricElevationDeg), nameof(sun));
        Check(double.IsFinite(incidenceDeg + tiltDeg), nameof(incidenceDeg));
        Check(albedoFraction is >= 0 and <= 1, nameof(albedoFraction));
        double towards = Math.Max(0, Angle.Cos(incidenceDeg));
        bool isUp = sun.GeometricElevationDeg > 0;
        double beam = light.BeamNormalWPerM2 * towards;
        double ground = light.GlobalWPerM2 * albedoFraction * (1 - Angle.Cos(tiltDeg)) / 2;
        double open = (1 + Angle.Cos(tiltDeg)) / 2;
        double diffuse = light.DiffuseWPerM2;
        if (!isUp)
        {
            // No sun in the sky to be bright around: the models would still put up to eleven times the light there, as if it stood at 5°.
            return new TiltedPlane(0, 0, diffuse * open, 0, ground);
        }

        switch (model)
        {
            case SkyModel.Isotropic:
                return new TiltedPlane(beam, 0, diffuse * open, 0, ground);
            case SkyModel.HayDavies:
                double through = Math.Clamp(light.BeamNormalWPerM2 / light.ExtraterrestrialWPerM2, 0, 1);
                double ratio = towards / Math.Max(Angle.Cos(85), Angle.Cos(Math.Min(sun.ZenithDeg, 90)));
                return new TiltedPlane(beam, diffuse * through * ratio, diffuse * (1 - through) * open, 0, ground);
            default:
                (double around, double horizon) = SkyBrightness.Of(light, Math.Min(sun.ZenithDeg, 90));
                double focus = towards / Math.Max(Angle.Cos(85), Angle.Cos(Math.Min(sun.ZenithDeg, 90)));
                return new TiltedPlane(beam, diffuse * around * focus, diffuse * (1 - around) * open, diffuse * horizon * Angle.Sin(tiltDeg), ground);
        }
    }

    private static void Check(bool holds, string name)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(name, "Finite figures, irradiance and albedo of 0 or more, and a sun outside the air.");
        }
    }

    /// <summary>Angle between the sun and the normal of a plane, degrees, 0 to 180.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="tiltDeg">Tilt of the plane, degrees from horizontal.</param>
    /// <param name="azimuthDeg">Where it faces, degrees clockwise from north.</param>
    public static double IncidenceDeg(in SunPosition sun, double tiltDeg, double azimuthDeg)
    {
        double cosine = (Angle.Sin(sun.ElevationDeg) * Angle.Cos(tiltDeg))
            + (Angle.Cos(sun.ElevationDeg) * Angle.Sin(tiltDeg) * Angle.Cos(sun.AzimuthDeg - azimuthDeg));
        return Angle.Degrees(Math.Acos(Math.Clamp(cosine, -1, 1)));
    }
}

/// <summary>What sun and sky give at one moment.</summary>
/// <param name="GlobalWPerM2">On the flat, all together.</param>
/// <param name="BeamNormalWPerM2">Straight from the sun, on a plane that faces it.</param>
/// <param name="DiffuseWPerM2">From the sky, on the flat.</param>
/// <param name="ExtraterrestrialWPerM2">Outside the air, on a plane that faces the sun.</param>
public readonly record struct SkyLight(double GlobalWPerM2, double BeamNormalWPerM2, double DiffuseWPerM2, double ExtraterrestrialWPerM2);

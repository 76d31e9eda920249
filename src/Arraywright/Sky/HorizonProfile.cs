using System.Collections.Immutable;

namespace Arraywright.Sky;

/// <summary>A point of the horizon.</summary>
/// <param name="AzimuthDeg">Degrees clockwise from north.</param>
/// <param name="ElevationDeg">Height above the level, degrees.</param>
public readonly record struct HorizonPoint(double AzimuthDeg, double ElevationDeg);

/// <summary>Hills, trees and houses round a place.</summary>
public sealed class HorizonProfile : IEquatable<HorizonProfile>
{
    /// <summary>Slices of the round in which the sky above the horizon is added up: half a degree each.</summary>
    private const int Slices = 720;

    /// <summary>A horizon through points, straight between them and round the circle.</summary>
    /// <param name="points">Any azimuth, each once; elevation 0 to 90 degrees; none for a free horizon.</param>
    /// <exception cref="ArgumentException">A figure is not finite, an elevation is below 0 or over 90, or an azimuth stands twice.</exception>
    public HorizonProfile(IEnumerable<HorizonPoint> points)
    {
        Points = [.. points.Select(point => point with { AzimuthDeg = Angle.Wrapped(point.AzimuthDeg) }).OrderBy(point => point.AzimuthDeg)];
        for (int i = 0; i < Points.Length; i++)
        {
            if (!double.IsFinite(Points[i].AzimuthDeg) || !(Points[i].ElevationDeg is >= 0 and <= 90) || (i > 0 && Points[i].AzimuthDeg <= Points[i - 1].AzimuthDeg))
            {
                throw new ArgumentException("A horizon has finite azimuths, each once, and elevations from 0 to 90 degrees.", nameof(points));
            }
        }
    }

    /// <summary>A free horizon.</summary>
    public static HorizonProfile Free { get; } = new([]);

    /// <summary>Its points by azimuth, from 0 to under 360.</summary>
    public ImmutableArray<HorizonPoint> Points { get; }

    /// <summary>Equal when the points are.</summary>
    public bool Equals(HorizonProfile? other) => other is not null && Points.AsSpan().SequenceEqual(other.Points.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as HorizonProfile);

    /// <inheritdoc/>
    public override int GetHashCode() => Points.IsEmpty ? 0 : HashCode.Combine(Points.Length, Points[0], Points[^1]);

    /// <summary>Elevation of the horizon in a direction, degrees; 0 where it is free.</summary>
    public double ElevationDeg(double azimuthDeg)
    {
        if (Points.IsEmpty)
        {
            return 0;
        }

        double azimuth = Angle.Wrapped(azimuthDeg);
        int next = 0;
        while (next < Points.Length && Points[next].AzimuthDeg < azimuth)
        {
            next++;
        }

        (double fromDeg, double fromElevationDeg) = next > 0 ? Points[next - 1] : Points[^1] with { AzimuthDeg = Points[^1].AzimuthDeg - 360 };
        (double toDeg, double toElevationDeg) = next < Points.Length ? Points[next] : Points[0] with { AzimuthDeg = Points[0].AzimuthDeg + 360 };
        double share = (azimuth - fromDeg) / (toDeg - fromDeg);
        return fromElevationDeg + (share * (toElevationDeg - fromElevationDeg));
    }

    /// <summary>Share of an evenly bright sky's light on a plane that the horizon leaves, 0 to 1. What hides the sky counts as dark.</summary>
    /// <param name="tiltDeg">Tilt of the plane, degrees from horizontal, 0 to 90.</param>
    /// <param name="azimuthDeg">Where it faces, degrees clockwise from north.</param>
    public double SkyLeftFraction(double tiltDeg, double azimuthDeg)
    {
        if (Points.IsEmpty)
        {
            return 1;
        }

        double left = 0;
        double whole = 0;
        for (int slice = 0; slice < Slices; slice++)
        {
            double towardsDeg = (slice + 0.5) * 360 / Slices;
            double across = Angle.Sin(tiltDeg) * Angle.Cos(towardsDeg - azimuthDeg);
            double behindRad = Math.Max(0, Math.Atan2(-across, Angle.Cos(tiltDeg)));
            whole += Above(behindRad, across, Angle.Cos(tiltDeg));
            left += Above(Math.Max(behindRad, Angle.Radians(ElevationDeg(towardsDeg))), across, Angle.Cos(tiltDeg));
        }

        return Math.Clamp(left / whole, 0, 1);
    }

    /// <summary>The integral of (up·sin e + across·cos e)·cos e, the cosine of incidence over the sky, from an elevation to the zenith.</summary>
    private static double Above(double fromRad, double across, double up)
    {
        double cosine = Math.Cos(fromRad);
        return 0.5 * ((up * cosine * cosine) + (across * ((Math.PI / 2) - fromRad - (Math.Sin(fromRad) * cosine))));
    }
}

using System.Collections.Immutable;

namespace Arraywright.Sky;

/// <summary>Hills, trees and houses round a place.</summary>
public sealed class HorizonProfile
{
    private readonly ImmutableArray<(double AzimuthDeg, double ElevationDeg)> _points;

    /// <summary>A horizon through points, straight between them and round the circle.</summary>
    /// <param name="points">Azimuth clockwise from north and elevation, degrees; none for a free horizon.</param>
    public HorizonProfile(IEnumerable<(double AzimuthDeg, double ElevationDeg)> points) =>
        _points = [.. points.Select(point => (Angle.Wrapped(point.AzimuthDeg), point.ElevationDeg)).OrderBy(point => point.Item1)];

    /// <summary>A free horizon.</summary>
    public static HorizonProfile Free { get; } = new([]);

    /// <summary>Elevation of the horizon in a direction, degrees; 0 where it is free.</summary>
    public double ElevationDeg(double azimuthDeg)
    {
        if (_points.IsEmpty)
        {
            return 0;
        }

        double azimuth = Angle.Wrapped(azimuthDeg);
        int next = 0;
        while (next < _points.Length && _points[next].AzimuthDeg < azimuth)
        {
            next++;
        }

        (double fromDeg, double fromElevationDeg) = next > 0 ? _points[next - 1] : (_points[^1].AzimuthDeg - 360, _points[^1].ElevationDeg);
        (double toDeg, double toElevationDeg) = next < _points.Length ? _points[next] : (_points[0].AzimuthDeg + 360, _points[0].ElevationDeg);
        double share = toDeg > fromDeg ? (azimuth - fromDeg) / (toDeg - fromDeg) : 0;
        return fromElevationDeg + (share * (toElevationDeg - fromElevationDeg));
    }
}

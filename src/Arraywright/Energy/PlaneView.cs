using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>A plane with what it sees of sky and ground: what stays the same through the year is worked out once.</summary>
internal sealed class PlaneView
{
    /// <summary>No step's mean is brighter, W/m²; the sky models may say so of light that does not fit its sun, such as much light from a sun just rising.</summary>
    public const double MostWPerM2 = 1500;

    private readonly Mount _mount;
    private readonly SunOptions _options;
    private readonly double _skyFraction;
    private readonly double _horizonFraction;
    private readonly double _groundFraction;

    public PlaneView(Mount mount, SunOptions options)
    {
        (_mount, _options) = (mount, options);
        double left = options.Horizon.SkyLeftFraction(mount.TiltDeg, mount.AzimuthDeg);
        _skyFraction = left * IncidenceLoss.SkyFraction(mount.TiltDeg);

        // Flat glass does not see the ground; the sky's bright rim it does, at a grazing angle.
        _horizonFraction = left * IncidenceLoss.GroundFraction(mount.TiltDeg > 0 ? mount.TiltDeg : 1);
        _groundFraction = IncidenceLoss.GroundFraction(mount.TiltDeg);
    }

    /// <summary>Irradiance in the plane, and what of it gets through horizon, glass and dirt, W/m².</summary>
    public (double PlaneWPerM2, double UsefulWPerM2) Of(in SunPosition sun, in SkyLight light, int month)
    {
        if (light.GlobalWPerM2 <= 0)
        {
            return (0, 0);
        }

        double incidenceDeg = TiltedPlane.IncidenceDeg(sun, _mount.TiltDeg, _mount.AzimuthDeg);
        TiltedPlane plane = TiltedPlane.Of(sun, light, _mount.TiltDeg, incidenceDeg, _options.AlbedoFraction(month), _options.Sky);
        bool isHidden = sun.ElevationDeg < _options.Horizon.ElevationDeg(sun.AzimuthDeg);
        double beamFraction = isHidden ? 0 : IncidenceLoss.BeamFraction(incidenceDeg);
        double useful = ((plane.BeamWPerM2 + plane.CircumsolarWPerM2) * beamFraction)
            + (plane.SkyWPerM2 * _skyFraction)
            + (plane.HorizonWPerM2 * _horizonFraction)
            + (plane.GroundWPerM2 * _groundFraction);
        double credible = plane.TotalWPerM2 > MostWPerM2 ? MostWPerM2 / plane.TotalWPerM2 : 1;
        return (plane.TotalWPerM2 * credible, Math.Max(0, useful) * credible * (1 - _options.SoilingFraction));
    }
}

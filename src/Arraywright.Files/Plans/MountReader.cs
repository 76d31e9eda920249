using Arraywright.Files.Keys;

namespace Arraywright.Files.Plans;

/// <summary>Reads how the panels face.</summary>
internal static class MountReader
{
    public static Mount Read(Fields root, Place? place, List<Assumption> assumed)
    {
        Fields? fields = root.Group(RootKeys.Mount);
        double? tiltDeg = fields?.Figure(MountKeys.Tilt), azimuthDeg = fields?.Figure(MountKeys.Azimuth);
        int? kind = fields?.Choice(MountKeys.Kind);
        double? soilingFraction = fields?.Figure(MountKeys.Soiling);
        Mount mount = new(
            tiltDeg ?? Defaults.TiltDeg(place, assumed),
            azimuthDeg ?? Defaults.AzimuthDeg(place, assumed),
            kind is null ? Defaults.Kind(assumed) : (MountKind)kind);
        return mount with { SoilingFraction = soilingFraction };
    }

    /// <summary>A panel's own mount; null when it shares the plan's.</summary>
    public static Mount? ReadOwn(Fields panel, Mount shared)
    {
        double? tiltDeg = panel.Figure(PanelKeys.Tilt), azimuthDeg = panel.Figure(PanelKeys.Azimuth);
        return tiltDeg is null && azimuthDeg is null ? null : shared with { TiltDeg = tiltDeg ?? shared.TiltDeg, AzimuthDeg = azimuthDeg ?? shared.AzimuthDeg };
    }
}

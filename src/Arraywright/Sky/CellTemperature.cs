namespace Arraywright.Sky;

/// <summary>How hot the cells of a panel run in the sun. Never the air's temperature.</summary>
/// <remarks>
/// Without a NOCT on the label: <see cref="SandiaMounting"/> by the kind of mount, the usual construction taken (glass and polymer sheet; close to a roof
/// only glass on glass is published). With one: the cells rise above the air by (NOCT − 20 °C)/800 W/m² times the irradiance (IEC 61215), which
/// holds on an open rack in 1 m/s of wind; other mounts and winds scale that rise as they scale the Sandia one, the same construction compared with
/// itself. That scaling is our own joining of two published models. It says how this panel differs from the usual one, and the mount from a rack.
/// </remarks>
public static class CellTemperature
{
    /// <summary>Wind at which NOCT is stated, and which is taken where nothing is known, m/s.</summary>
    public const double UsualWindMPerS = 1;

    private const double NoctAirC = 20;
    private const double NoctIrradianceWPerM2 = 800;

    /// <summary>Cell temperature, °C; the air's in the dark. Settled weather: behind a passing cloud, cells take some ten minutes to follow.</summary>
    /// <param name="airC">Air temperature, °C.</param>
    /// <param name="irradianceWPerM2">Irradiance in the plane of the panel, W/m², 0 or more.</param>
    /// <param name="windMPerS">Wind, m/s, 0 or more.</param>
    /// <param name="mount">How the panel is held.</param>
    /// <param name="noctC">Cell temperature at 800 W/m², 20 °C air, 1 m/s, open rack, °C, from the label; null where it is silent.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite, or irradiance or wind is negative.</exception>
    public static double At(double airC, double irradianceWPerM2, double windMPerS, MountKind mount, double? noctC)
    {
        Check(double.IsFinite(airC), airC, nameof(airC));
        Check(double.IsFinite(irradianceWPerM2) && irradianceWPerM2 >= 0, irradianceWPerM2, nameof(irradianceWPerM2));
        Check(double.IsFinite(windMPerS) && windMPerS >= 0, windMPerS, nameof(windMPerS));

        (SandiaMounting mounted, SandiaMounting onRack) = mount switch
        {
            MountKind.OpenRack => (SandiaMounting.OpenRackSheet, SandiaMounting.OpenRackSheet),
            MountKind.CloseRoof => (SandiaMounting.CloseRoofGlass, SandiaMounting.OpenRackGlass),
            MountKind.FlatOnGround => (SandiaMounting.InsulatedSheet, SandiaMounting.OpenRackSheet),
            _ => throw new ArgumentOutOfRangeException(nameof(mount), mount, "Not a way to hold a panel."),
        };

        double riseK = mounted.CellRiseK(irradianceWPerM2, windMPerS);
        if (noctC is { } noct)
        {
            Check(noct > NoctAirC && double.IsFinite(noct), noct, nameof(noctC));
            double usualNoctRiseK = onRack.CellRiseK(NoctIrradianceWPerM2, UsualWindMPerS);
            riseK *= (noct - NoctAirC) / usualNoctRiseK;
        }

        return airC + riseK;
    }

    private static void Check(bool holds, double value, string name)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(name, value, "Finite temperatures, NOCT above 20 °C, irradiance and wind of 0 or more.");
        }
    }
}

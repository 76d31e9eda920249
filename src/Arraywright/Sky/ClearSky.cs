using Arraywright.Electrical;

namespace Arraywright.Sky;

/// <summary>Sun and sky without a cloud.</summary>
/// <remarks>P. Ineichen and R. Perez, Solar Energy 73 (2002) 151, without the author's later factor for high air masses. Above some 4000 m in clean air its global would pass what comes in from outside: it is held to that.</remarks>
public static class ClearSky
{
    /// <summary>Turbidity after Linke where nothing is known: clear, mild air (2 very clean and cold, 4 to 6 hazy: common practice).</summary>
    public const double UsualTurbidityIndex = 3;

    /// <summary>Clear sun and sky.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="elevationM">Height of the place, m.</param>
    /// <param name="extraterrestrialWPerM2">Outside the air, facing the sun, W/m².</param>
    /// <param name="turbidity">Linke turbidity, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite, there is less than no sun, or the turbidity is below 1.</exception>
    public static SkyLight Of(in SunPosition sun, double elevationM, double extraterrestrialWPerM2, double turbidity = UsualTurbidityIndex)
    {
        if (!(double.IsFinite(elevationM + extraterrestrialWPerM2) && extraterrestrialWPerM2 >= 0 && turbidity is >= 1 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(extraterrestrialWPerM2), extraterrestrialWPerM2, "Finite figures, sun of 0 or more, turbidity of 1 or more.");
        }

        if (!(sun.ElevationDeg > 0))
        {
            return new SkyLight(0, 0, 0, extraterrestrialWPerM2);
        }

        double upright = Angle.Cos(sun.ZenithDeg);
        double airMass = AirMass.Relative(sun.ZenithDeg) * AirMass.StandardPressurePa(elevationM) / 101325;
        double f1 = Exponential.Of(-elevationM / 8000);
        double f2 = Exponential.Of(-elevationM / 1250);
        double through = ((5.09e-5 * elevationM) + 0.868) * Exponential.Of(-((3.92e-5 * elevationM) + 0.0387) * airMass * (f1 + (f2 * (turbidity - 1))));
        double global = Math.Min(1, through) * extraterrestrialWPerM2 * upright;
        double beam = (0.664 + (0.163 / f1)) * extraterrestrialWPerM2 * Exponential.Of(-0.09 * airMass * (turbidity - 1));
        double most = global * (1 - ((0.1 - (0.2 * Exponential.Of(-turbidity))) / (0.1 + (0.882 / f1)))) / upright;
        beam = Math.Max(0, Math.Min(beam, most));
        return new SkyLight(global, beam, Math.Max(0, global - (beam * upright)), extraterrestrialWPerM2);
    }
}

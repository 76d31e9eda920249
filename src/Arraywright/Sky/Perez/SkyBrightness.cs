namespace Arraywright.Sky.Perez;

/// <summary>How much of the sky's light sits around the sun and at the horizon.</summary>
/// <remarks>R. Perez, P. Ineichen, R. Seals, J. Michalsky, R. Stewart, Solar Energy 44 (1990) 271, Table 6, with the author's coefficients of 1999 to seven decimals.</remarks>
internal static class SkyBrightness
{
    /// <summary>Upper ends of all bins of sky clearness but the last.</summary>
    internal static ReadOnlySpan<double> ClearnessEnds => [1.065, 1.230, 1.500, 1.950, 2.800, 4.500, 6.200];

    /// <summary>F11, F12, F13, F21, F22, F23 of eight bins of sky clearness.</summary>
    internal static ReadOnlySpan<double> Coefficients =>
    [
        -0.0083117, 0.5877285, -0.0620636, -0.0596012, 0.0721249, -0.0220216,
        0.1299457, 0.6825954, -0.1513752, -0.0189325, 0.0659650, -0.0288748,
        0.3296958, 0.4868735, -0.2210958, 0.0554140, -0.0639588, -0.0260542,
        0.5682053, 0.1874525, -0.2951290, 0.1088631, -0.1519229, -0.0139754,
        0.8730280, -0.3920403, -0.3616149, 0.2255647, -0.4620442, 0.0012448,
        1.1326077, -1.2367284, -0.4118494, 0.2877813, -0.8230357, 0.0558651,
        1.0601591, -1.5999137, -0.3589221, 0.2642124, -1.1272340, 0.1310694,
        0.6777470, -0.3272588, -0.2504286, 0.1561313, -1.3765031, 0.2506212,
    ];

    /// <summary>Share of the diffuse light around the sun (F1), and brightening of the horizon (F2, may be negative).</summary>
    /// <param name="light">What sun and sky give.</param>
    /// <param name="zenithDeg">Zenith angle of the sun, 0 to 90 degrees.</param>
    public static (double AroundShare, double HorizonShare) Of(in SkyLight light, double zenithDeg)
    {
        if (light.DiffuseWPerM2 <= 0)
        {
            return (0, 0);
        }

        double z = Angle.Radians(zenithDeg);
        double cube = 1.041 * z * z * z;
        double clearness = (((light.DiffuseWPerM2 + light.BeamNormalWPerM2) / light.DiffuseWPerM2) + cube) / (1 + cube);
        int bin = 0;
        while (bin < ClearnessEnds.Length && clearness > ClearnessEnds[bin])
        {
            bin++;
        }

        double brightness = AirMass.Relative(zenithDeg) * light.DiffuseWPerM2 / light.ExtraterrestrialWPerM2;
        ReadOnlySpan<double> f = Coefficients.Slice(6 * bin, 6);
        return (Math.Max(0, f[0] + (f[1] * brightness) + (f[2] * z)), f[3] + (f[4] * brightness) + (f[5] * z));
    }
}

namespace Arraywright.Sky;

/// <summary>How much of the sun on the flat is diffuse, where only the whole is known.</summary>
public static class BeamDiffuseSplit
{
    /// <summary>Diffuse share of horizontal irradiation over an hour, after D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293.</summary>
    /// <param name="clearnessShare">Global horizontal over extraterrestrial horizontal irradiation.</param>
    public static double DiffuseShare(double clearnessShare)
    {
        double k = Math.Max(0, clearnessShare);
        return k <= 0.22 ? 1 - (0.09 * k)
            : k <= 0.80 ? 0.9511 + (k * (-0.1604 + (k * (4.388 + (k * (-16.638 + (k * 12.336)))))))
            : 0.165;
    }
}

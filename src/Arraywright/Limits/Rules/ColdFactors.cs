using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>How far the cold raises open-circuit voltage where the label gives no coefficient.</summary>
/// <remarks>NFPA 70 (NEC) Table 690.7(A), 2017 to 2023 (numbers as Table 690.7 of 2008); IEC 62548 reprints it. For crystalline silicon.</remarks>
internal static class ColdFactors
{
    /// <summary>Factor of each band of five degrees, from 24 … 20 °C down to -36 … -40 °C.</summary>
    private static ReadOnlySpan<double> Bands => [1.02, 1.04, 1.06, 1.08, 1.10, 1.12, 1.14, 1.16, 1.18, 1.20, 1.21, 1.23, 1.25];

    /// <summary>Largest factor of the table; what is used for thin film, which the table leaves out, where the cold alone would ask less.</summary>
    private const double Largest = 1.25;

    /// <summary>The rise a kelvin that the table embodies (1 + 0.0040·(25 − T) at each band's cold edge); carries it on below -40 °C.</summary>
    private const double SlopePerK = 0.0040;

    /// <summary>The factor to multiply the label's open-circuit voltage by.</summary>
    /// <param name="technology">What the cells are made of.</param>
    /// <param name="coldestC">Coldest temperature, °C. A fraction of a degree counts as the colder whole one.</param>
    public static double For(Technology technology, double coldestC)
    {
        double factor = coldestC < -40 ? 1 + (SlopePerK * (25 - coldestC)) : Bands[Band(coldestC)];
        return InTable(technology) ? factor : Math.Max(factor, Largest);
    }

    /// <summary>Whether the table speaks of such cells.</summary>
    public static bool InTable(Technology technology) =>
        technology is not (Technology.CadmiumTelluride or Technology.Cigs or Technology.AmorphousSilicon);

    // The bands are 24…20, 19…15 and so on above zero, 4…0, and -1…-5, -6…-10 below it.
    private static int Band(double coldestC) => Math.Clamp((24 - (int)Math.Floor(Math.Min(coldestC, 24))) / 5, 0, Bands.Length - 1);
}

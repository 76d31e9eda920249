using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Tests.Search;

/// <summary>Panels for testing the search, scaled from the published 54-cell 200 W panel of Villalva, Gazoli and Filho (2009).</summary>
internal static class SearchPanels
{
    /// <summary>A kind of panel under given irradiances (W/m², cells at 25 °C), one a moment.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="count">How many.</param>
    /// <param name="cells">Cells in series.</param>
    /// <param name="iscA">Short-circuit current, A.</param>
    /// <param name="irradiances">One a moment.</param>
    /// <param name="bypassed">Whether its two groups have bypass diodes.</param>
    /// <param name="shadeOfFirstGroup">Share of light kept off its first group.</param>
    public static SearchStock Stock(string name, int count, int cells, double iscA, double[] irradiances, bool bypassed = true, double shadeOfFirstGroup = 0)
    {
        DiodeParameters standard = Cells(cells, iscA, 1000);
        double vocV = standard.IdealityV * Math.Log((standard.LightCurrentA / standard.SaturationCurrentA) + 1);
        ImmutableArray<PanelAtWork> atWork =
        [
            .. irradiances.Select(g => new PanelAtWork(
                [Cells(cells, iscA, g * (1 - shadeOfFirstGroup)).OneOf(2), Cells(cells, iscA, g).OneOf(2)],
                bypassed ? BypassDiode.Schottky(iscA) : BypassDiode.None)),
        ];
        return new SearchStock(name, count, atWork, vocV * 1.12, vocV * 1.11, 1000, iscA, vocV * iscA * 0.76);
    }

    private static DiodeParameters Cells(int cells, double iscA, double irradiance)
    {
        double scale = cells / 54.0;
        double strength = iscA / 8.21;
        return new DiodeParameters(
            8.2271404 * strength * irradiance / 1000,
            4.372225e-10 * strength,
            0.3351 * scale / strength,
            strength / (160.5 * scale),
            1.3921 * scale);
    }
}

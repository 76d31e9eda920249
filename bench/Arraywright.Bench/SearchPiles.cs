using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Bench;

/// <summary>Made-up piles for measuring the search: panels of 30 to 72 cells, 4.5 to 11 A, all different, under 16 conditions.</summary>
internal static class SearchPiles
{
    private const double KelvinAt25C = 298.15;

    /// <summary>Irradiance (W/m²), cell temperature (°C) and weight: a spread of a temperate year, no source.</summary>
    private static readonly (double G, double C, double Weight)[] Moments =
    [
        (60, 5, 5), (120, 10, 8), (200, 12, 9), (280, 18, 9), (350, 22, 8), (430, 27, 8), (500, 30, 8), (570, 34, 7),
        (640, 38, 7), (700, 41, 6), (760, 45, 6), (820, 48, 5), (880, 51, 5), (930, 54, 4), (980, 58, 3), (1050, 62, 2),
    ];

    /// <summary>A problem of different panels, numbered by a fixed sequence.</summary>
    /// <param name="kinds">Kinds.</param>
    /// <param name="each">Panels of each kind.</param>
    /// <param name="leastCells">Cells of the smallest.</param>
    /// <param name="mostCells">Cells of the largest.</param>
    /// <param name="inputs">The inputs.</param>
    public static SearchProblem Of(int kinds, int each, int leastCells, int mostCells, params SearchInput[] inputs)
    {
        var stocks = ImmutableArray.CreateBuilder<SearchStock>();
        for (int i = 0; i < kinds; i++)
        {
            // Two irrational steps spread sizes and currents without a pattern.
            double size = i * 0.6180339887498949 % 1;
            double strength = i * 0.7548776662466927 % 1;
            int cells = leastCells + (int)(size * (mostCells - leastCells + 0.999));
            stocks.Add(Stock($"p{i}", each, cells, 4.5 + (6.5 * strength)));
        }

        return new SearchProblem
        {
            Stocks = stocks.ToImmutable(),
            Inputs = [.. inputs],
            Weights = [.. Moments.Select(moment => moment.Weight)],
            StringOhm = 0.01,
            ContactOhm = 0.0005,
        };
    }

    private static SearchStock Stock(string name, int count, int cells, double iscA)
    {
        ImmutableArray<PanelAtWork> atWork = [.. Moments.Select(moment => At(cells, iscA, moment.G, moment.C))];
        DiodeParameters standard = At(cells, iscA, 1000, 25).Groups[0];
        double vocV = Groups(cells) * standard.IdealityV * Math.Log((standard.LightCurrentA / standard.SaturationCurrentA) + 1);
        return new SearchStock(name, count, atWork, vocV * 1.12, vocV * 1.11, 1000, iscA, vocV * iscA * 0.76);
    }

    private static int Groups(int cells) => cells <= 40 ? 2 : 3;

    /// <summary>Scaled from a published 54-cell, 200 W panel: IL 8.2271404 A, I0 4.372225e-10 A, Rs 0.3351 Ω, Gsh 1/160.5 S, a 1.3921 V.</summary>
    private static PanelAtWork At(int cells, double iscA, double irradiance, double cellC)
    {
        double kelvin = cellC + 273.15;
        double scale = cells / 54.0;
        double strength = iscA / 8.21;
        double grown = Math.Pow(kelvin / KelvinAt25C, 3) * Exponential.Of(1.121 / 8.617e-5 * ((1 / KelvinAt25C) - (1 / kelvin)));
        var whole = new DiodeParameters(
            8.2271404 * strength * irradiance / 1000 * (1 + (0.0005 * (cellC - 25))),
            4.372225e-10 * strength * grown,
            0.3351 * scale / strength,
            strength / (160.5 * scale) * irradiance / 1000,
            1.3921 * scale * kelvin / KelvinAt25C);
        return new PanelAtWork([.. Enumerable.Repeat(whole.OneOf(Groups(cells)), Groups(cells))], BypassDiode.Schottky(iscA));
    }
}

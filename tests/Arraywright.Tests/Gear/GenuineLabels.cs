using Arraywright.Gear;

namespace Arraywright.Tests.Gear;

/// <summary>Labels as they are printed on panels of many kinds. Generic figures from memory of datasheets and rating plates of each class, no one product.</summary>
public static class GenuineLabels
{
    /// <summary>Name, technology, W, Voc, Isc, Vmp, Imp, cells, %/K of Voc, Isc and power (0: the label is silent), fuse A, system V.</summary>
    public static TheoryData<PanelLabel> All =>
    [
        // Small and portable, crystalline.
        Label("mono-5w", Technology.CrystallineSilicon, 5, 21.6, 0.32, 17.5, 0.29, 36, 0, 0, 0, 0, 0),
        Label("poly-10w", Technology.Multicrystalline, 10, 21.6, 0.62, 17.5, 0.57, 36, -0.36, 0.06, -0.45, 0, 600),
        Label("trickle-5w-9v", null, 5, 10.8, 0.61, 9, 0.56, 18, 0, 0, 0, 0, 0),
        Label("mono-20w", Technology.CrystallineSilicon, 20, 22.3, 1.21, 18.2, 1.1, 36, -0.34, 0.05, -0.43, 0, 50),
        Label("poly-50w", Technology.Multicrystalline, 50, 22.0, 3.05, 18.0, 2.78, 36, -0.33, 0.06, -0.42, 10, 600),
        Label("old-mono-75w", Technology.Multicrystalline, 75, 21.7, 4.8, 17.0, 4.4, 36, -0.356, 0.065, -0.5, 10, 600),
        Label("rigid-100w", Technology.MonoPerc, 100, 22.5, 5.81, 18.6, 5.38, 36, -0.30, 0.05, -0.38, 15, 600),
        Label("flexible-100w", Technology.BackContact, 100, 21.4, 6.1, 17.7, 5.65, 32, -0.27, 0.05, -0.35, 10, 600),
        Label("folding-120w", null, 120, 22.9, 6.72, 18.9, 6.35, 0, 0, 0, 0, 0, 0),
        Label("folding-200w", Technology.MonoPerc, 200, 24.5, 10.4, 20.4, 9.8, 36, 0, 0, 0, 0, 0),
        Label("folding-400w-48v", null, 400, 48, 11, 40, 10, 0, 0, 0, 0, 0, 0),

        // Framed, crystalline, by decade.
        Label("poly-200w", Technology.Multicrystalline, 200, 32.9, 8.21, 26.3, 7.61, 54, -0.374, 0.039, 0, 15, 600),
        Label("poly-250w", Technology.Multicrystalline, 250, 37.6, 8.81, 30.4, 8.24, 60, -0.32, 0.05, -0.43, 15, 1000),
        Label("poly-330w", Technology.Multicrystalline, 330, 45.8, 9.26, 37.4, 8.83, 72, -0.31, 0.05, -0.40, 15, 1000),
        Label("mono-perc-300w", Technology.MonoPerc, 300, 39.8, 9.72, 32.6, 9.2, 60, -0.29, 0.05, -0.39, 20, 1000),
        Label("half-cut-perc-375w", Technology.MonoPerc, 375, 41.1, 11.6, 34.4, 10.9, 60, -0.27, 0.05, -0.35, 20, 1500),
        Label("half-cut-perc-550w", Technology.MonoPerc, 550, 49.9, 13.99, 41.96, 13.11, 72, -0.27, 0.045, -0.35, 25, 1500),
        Label("shingled-400w", Technology.MonoPerc, 400, 45.6, 11.1, 38.0, 10.53, 68, -0.27, 0.05, -0.34, 20, 1500),
        Label("large-cell-600w", Technology.MonoPerc, 600, 41.7, 18.42, 34.6, 17.34, 60, -0.25, 0.04, -0.34, 30, 1500),
        Label("topcon-430w", Technology.TopCon, 430, 38.8, 14.0, 32.3, 13.32, 54, -0.25, 0.045, -0.29, 30, 1500),
        Label("topcon-580w", Technology.TopCon, 580, 51.5, 14.3, 43.2, 13.43, 72, -0.25, 0.046, -0.29, 30, 1500),
        Label("topcon-700w", Technology.TopCon, 700, 48.2, 18.4, 40.3, 17.37, 66, -0.24, 0.04, -0.29, 35, 1500),
        Label("heterojunction-240w", Technology.Heterojunction, 240, 52.4, 5.85, 43.7, 5.51, 72, -0.25, 0.03, -0.30, 15, 600),
        Label("heterojunction-700w", Technology.Heterojunction, 700, 49.9, 17.5, 41.9, 16.71, 66, -0.22, 0.04, -0.24, 35, 1500),
        Label("back-contact-327w", Technology.BackContact, 327, 64.9, 6.46, 54.7, 5.98, 96, -0.272, 0.054, -0.35, 20, 1000),
        Label("back-contact-440w", Technology.BackContact, 440, 39.1, 14.1, 33.0, 13.34, 54, -0.22, 0.05, -0.26, 25, 1500),

        // Thin film.
        Label("cdte-75w", Technology.CadmiumTelluride, 75, 89.6, 1.23, 68.2, 1.1, 116, -0.25, 0.04, -0.25, 2, 1000),
        Label("cdte-115w", Technology.CadmiumTelluride, 115, 87.6, 1.83, 69.3, 1.66, 108, -0.28, 0.04, -0.28, 4, 1500),
        Label("cdte-450w", Technology.CadmiumTelluride, 450, 220.4, 2.57, 186.2, 2.42, 264, -0.28, 0.04, -0.32, 5, 1500),
        Label("cigs-150w", Technology.Cigs, 150, 108, 2.2, 81.5, 1.85, 172, -0.30, 0.01, -0.31, 4, 1000),
        Label("cigs-flexible-90w", Technology.Cigs, 90, 23.0, 5.6, 17.5, 5.14, 36, -0.35, 0.01, -0.43, 10, 600),
        Label("amorphous-40w", Technology.AmorphousSilicon, 40, 62.2, 1.14, 44.8, 0.9, 72, -0.31, 0.08, -0.21, 3, 600),
        Label("amorphous-triple-136w", Technology.AmorphousSilicon, 136, 46.2, 5.1, 33.0, 4.13, 22, -0.38, 0.10, -0.21, 8, 600),
        Label("amorphous-tandem-128w", Technology.AmorphousSilicon, 128, 59.8, 3.45, 45.4, 2.82, 45, -0.30, 0.07, -0.24, 5, 1000),
    ];

    /// <summary>The label of <paramref name="name"/>.</summary>
    public static PanelLabel Named(string name) => All.Select(row => row.Data).Single(label => label.Name == name);

    private static PanelLabel Label(
        string name, Technology? technology, double powerW, double vocV, double iscA, double vmpV, double impA, int cells,
        double vocPercentPerK, double iscPercentPerK, double powerPercentPerK, double fuseA, double systemV) => new()
        {
            Name = name,
            Technology = technology,
            PowerW = powerW,
            OpenCircuitV = vocV,
            ShortCircuitA = iscA,
            MaximumPowerV = vmpV,
            MaximumPowerA = impA,
            Cells = cells == 0 ? null : cells,
            OpenCircuitPerK = Stated(vocPercentPerK / 100),
            ShortCircuitPerK = Stated(iscPercentPerK / 100),
            PowerPerK = Stated(powerPercentPerK / 100),
            MaxSeriesFuseA = Stated(fuseA),
            MaxSystemVoltageV = Stated(systemV),
        };

    private static double? Stated(double figure) => figure == 0 ? null : figure;
}

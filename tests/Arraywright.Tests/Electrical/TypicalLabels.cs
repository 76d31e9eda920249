using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Tests.Electrical;

/// <summary>
/// Labels as panels of each kind and size typically carry them, 5 W to 700 W. From memory of the trade's datasheets, rounded, of no particular maker:
/// they show the range, they are no reference.
/// </summary>
internal static class TypicalLabels
{
    /// <summary>Name; Isc A, Voc V, Vmp V, Imp A; Voc and Isc coefficient, %/K; cells; technology.</summary>
    public static readonly TheoryData<string, double, double, double, double, double, double, int, Technology> All = new()
    {
        { "5 W multicrystalline", 0.31, 21.8, 17.6, 0.285, -0.34, 0.06, 36, Technology.Multicrystalline },
        { "10 W multicrystalline", 0.62, 21.6, 17.5, 0.57, -0.34, 0.06, 36, Technology.Multicrystalline },
        { "20 W multicrystalline", 1.23, 21.7, 17.6, 1.14, -0.33, 0.05, 36, Technology.Multicrystalline },
        { "30 W mono", 1.78, 22.0, 18.0, 1.67, -0.32, 0.05, 36, Technology.CrystallineSilicon },
        { "50 W mono", 2.96, 22.1, 18.1, 2.77, -0.32, 0.05, 36, Technology.CrystallineSilicon },
        { "60 W flexible", 3.48, 22.4, 18.5, 3.25, -0.30, 0.05, 36, Technology.MonoPerc },
        { "75 W of the nineties", 4.80, 21.7, 17.0, 4.40, -0.36, 0.06, 36, Technology.CrystallineSilicon },
        { "80 W mono", 4.80, 22.0, 17.9, 4.47, -0.32, 0.05, 36, Technology.CrystallineSilicon },
        { "100 W mono", 5.75, 22.5, 18.6, 5.38, -0.29, 0.05, 36, Technology.MonoPerc },
        { "100 W shingled", 5.36, 23.9, 19.8, 5.05, -0.29, 0.05, 36, Technology.MonoPerc },
        { "100 W back-contact flexible", 5.95, 21.4, 17.8, 5.62, -0.25, 0.05, 32, Technology.BackContact },
        { "120 W of the nineties", 7.70, 21.5, 16.9, 7.10, -0.37, 0.06, 36, Technology.Multicrystalline },
        { "120 W folding", 6.50, 23.8, 19.8, 6.06, -0.29, 0.05, 36, Technology.MonoPerc },
        { "160 W folding", 9.40, 22.6, 18.4, 8.70, -0.29, 0.05, 36, Technology.MonoPerc },
        { "175 W mono", 9.45, 23.4, 19.6, 8.93, -0.28, 0.05, 36, Technology.MonoPerc },
        { "200 W mono", 10.2, 24.3, 20.4, 9.80, -0.28, 0.05, 36, Technology.MonoPerc },
        { "200 W multicrystalline, 54 cells", 8.21, 32.9, 26.3, 7.61, -0.374, 0.039, 54, Technology.Multicrystalline },
        { "220 W TOPCon folding", 11.6, 25.4, 21.2, 10.9, -0.25, 0.045, 36, Technology.TopCon },
        { "250 W multicrystalline", 8.83, 37.4, 30.1, 8.31, -0.33, 0.06, 60, Technology.Multicrystalline },
        { "275 W mono", 9.30, 38.4, 31.4, 8.76, -0.31, 0.05, 60, Technology.CrystallineSilicon },
        { "305 W PERC", 9.78, 40.1, 32.9, 9.28, -0.29, 0.05, 60, Technology.MonoPerc },
        { "330 W multicrystalline, 72 cells", 9.24, 46.2, 37.8, 8.74, -0.32, 0.05, 72, Technology.Multicrystalline },
        { "340 W half-cut PERC", 10.5, 41.1, 34.1, 9.98, -0.28, 0.05, 60, Technology.MonoPerc },
        { "350 W back contact, 96 cells", 6.50, 68.2, 57.3, 6.11, -0.25, 0.045, 96, Technology.BackContact },
        { "370 W half-cut PERC", 11.4, 41.3, 34.4, 10.76, -0.28, 0.05, 60, Technology.MonoPerc },
        { "395 W shingled", 9.78, 51.5, 42.9, 9.21, -0.27, 0.045, 75, Technology.MonoPerc },
        { "400 W half-cut PERC", 13.8, 37.1, 31.0, 12.9, -0.275, 0.045, 54, Technology.MonoPerc },
        { "410 W half-cut PERC", 13.9, 37.3, 31.3, 13.1, -0.27, 0.045, 54, Technology.MonoPerc },
        { "430 W TOPCon", 13.9, 38.9, 32.6, 13.2, -0.25, 0.045, 54, Technology.TopCon },
        { "440 W TOPCon", 14.1, 39.6, 33.0, 13.34, -0.25, 0.046, 54, Technology.TopCon },
        { "440 W heterojunction", 13.6, 40.6, 33.9, 12.98, -0.24, 0.04, 54, Technology.Heterojunction },
        { "450 W half-cut PERC, 72 cells", 11.6, 49.3, 41.5, 10.85, -0.27, 0.048, 72, Technology.MonoPerc },
        { "545 W half-cut PERC", 13.9, 49.7, 41.8, 13.04, -0.275, 0.045, 72, Technology.MonoPerc },
        { "580 W TOPCon", 14.2, 52.0, 43.3, 13.4, -0.25, 0.045, 72, Technology.TopCon },
        { "600 W PERC, large cells", 18.4, 41.7, 34.6, 17.34, -0.25, 0.04, 60, Technology.MonoPerc },
        { "670 W PERC, large cells", 18.6, 46.1, 38.2, 17.55, -0.25, 0.04, 66, Technology.MonoPerc },
        { "700 W heterojunction, large cells", 17.4, 50.1, 42.2, 16.6, -0.24, 0.04, 66, Technology.Heterojunction },
        { "78 W CdTe", 1.22, 90.5, 69.9, 1.11, -0.25, 0.04, 116, Technology.CadmiumTelluride },
        { "117 W CdTe", 1.83, 88.0, 70.0, 1.67, -0.28, 0.04, 146, Technology.CadmiumTelluride },
        { "450 W CdTe", 2.57, 221, 186, 2.43, -0.28, 0.04, 264, Technology.CadmiumTelluride },
        { "90 W CIGS flexible", 6.0, 22.5, 17.4, 5.2, -0.30, 0.02, 36, Technology.Cigs },
        { "170 W CIGS", 2.20, 112, 87.5, 1.95, -0.31, 0.01, 170, Technology.Cigs },
        { "5 W amorphous", 0.40, 23.8, 17.5, 0.29, -0.32, 0.08, 28, Technology.AmorphousSilicon },
        { "60 W amorphous", 1.19, 92.0, 67.0, 0.90, -0.31, 0.08, 108, Technology.AmorphousSilicon },
        { "136 W amorphous, three junctions", 5.10, 46.2, 33.0, 4.13, -0.38, 0.10, 22, Technology.AmorphousSilicon },
        { "128 W amorphous and microcrystalline", 3.45, 59.8, 45.4, 2.82, -0.30, 0.07, 45, Technology.AmorphousSilicon },
    };

    public static LabelPoints Points(
        double iscA, double vocV, double vmpV, double impA, double vocPercentPerK, double iscPercentPerK, int cells, Technology technology) =>
        new(iscA, vocV, vmpV, impA, vocPercentPerK / 100 * vocV, iscPercentPerK / 100 * iscA, cells, technology);
}

namespace Arraywright.Reference.Tests.Parts;

/// <summary>
/// Conductor tables typed by hand a second time, from the project's reference pack (values.md §2): NFPA 70 Tables 310.16, 310.17, 310.15(B)(1),
/// chapter 9 Table 8; IEC 60228 Table 3; EN 50618 Table A.3; IEC 60364-5-52 Table B.52.17. 0 stands for a dash.
/// </summary>
internal static class CopperTables
{
    /// <summary>AWG; 310.16 at 60, 75 and 90 °C; 310.17 at 90 °C.</summary>
    public static TheoryData<string, double, double, double, double> Ampacity => new()
    {
        { "18 AWG", 0, 0, 14, 18 }, { "16 AWG", 0, 0, 18, 24 }, { "14 AWG", 15, 20, 25, 35 }, { "12 AWG", 20, 25, 30, 40 }, { "10 AWG", 30, 35, 40, 55 },
        { "8 AWG", 40, 50, 55, 80 }, { "6 AWG", 55, 65, 75, 105 }, { "4 AWG", 70, 85, 95, 140 }, { "3 AWG", 85, 100, 115, 165 }, { "2 AWG", 95, 115, 130, 190 },
        { "1 AWG", 110, 130, 145, 220 }, { "1/0 AWG", 125, 150, 170, 260 }, { "2/0 AWG", 145, 175, 195, 300 }, { "3/0 AWG", 165, 200, 225, 350 }, { "4/0 AWG", 195, 230, 260, 405 },
    };

    /// <summary>AWG; mm²; ohm per 1000 ft at 75 °C, uncoated and coated.</summary>
    public static TheoryData<string, double, double, double> Gauge => new()
    {
        { "18 AWG", 0.8230, 7.95, 8.45 }, { "16 AWG", 1.3087, 4.99, 5.29 }, { "14 AWG", 2.0809, 3.14, 3.26 }, { "12 AWG", 3.3088, 1.98, 2.05 }, { "10 AWG", 5.2612, 1.24, 1.29 },
        { "8 AWG", 8.3656, 0.778, 0.809 }, { "6 AWG", 13.302, 0.491, 0.510 }, { "4 AWG", 21.151, 0.308, 0.321 }, { "3 AWG", 26.671, 0.245, 0.254 }, { "2 AWG", 33.631, 0.194, 0.201 },
        { "1 AWG", 42.408, 0.154, 0.160 }, { "1/0 AWG", 53.475, 0.122, 0.127 }, { "2/0 AWG", 67.431, 0.0967, 0.101 }, { "3/0 AWG", 85.029, 0.0766, 0.0797 }, { "4/0 AWG", 107.22, 0.0608, 0.0626 },
    };

    /// <summary>mm²; ohm/km at 20 °C of class 5, tinned.</summary>
    public static TheoryData<double, double> Class5 => new()
    {
        { 0.5, 40.1 }, { 0.75, 26.7 }, { 1, 20.0 }, { 1.5, 13.7 }, { 2.5, 8.21 }, { 4, 5.09 }, { 6, 3.39 }, { 10, 1.95 }, { 16, 1.24 }, { 25, 0.795 }, { 35, 0.565 }, { 50, 0.393 },
    };

    /// <summary>mm²; EN 50618: free in air, on a surface, two touching on a surface.</summary>
    public static TheoryData<double, double, double, double> SolarCable => new()
    {
        { 1.5, 30, 29, 24 }, { 2.5, 41, 39, 33 }, { 4, 55, 52, 44 }, { 6, 70, 67, 57 }, { 10, 98, 93, 79 }, { 16, 132, 125, 107 }, { 25, 176, 167, 142 }, { 35, 218, 207, 176 }, { 50, 276, 262, 221 },
    };

    /// <summary>Hot edge of the band, °C; factors for 60, 75 and 90 °C.</summary>
    public static TheoryData<double, double, double, double> Ambient => new()
    {
        { 10, 1.29, 1.20, 1.15 }, { 15, 1.22, 1.15, 1.12 }, { 20, 1.15, 1.11, 1.08 }, { 25, 1.08, 1.05, 1.04 }, { 30, 1.00, 1.00, 1.00 }, { 35, 0.91, 0.94, 0.96 },
        { 40, 0.82, 0.88, 0.91 }, { 45, 0.71, 0.82, 0.87 }, { 50, 0.58, 0.75, 0.82 }, { 55, 0.41, 0.67, 0.76 }, { 60, 0, 0.58, 0.71 }, { 65, 0, 0.47, 0.65 },
        { 70, 0, 0.33, 0.58 }, { 75, 0, 0, 0.50 }, { 80, 0, 0, 0.41 }, { 85, 0, 0, 0.29 },
    };
}

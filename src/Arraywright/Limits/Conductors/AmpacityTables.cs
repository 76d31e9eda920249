using Arraywright.Gear;

namespace Arraywright.Limits.Conductors;

/// <summary>Current that copper conductors carry, by size, as published.</summary>
internal static class AmpacityTables
{
    /// <summary>Columns of amps a size.</summary>
    internal enum Column
    {
        /// <summary>NFPA 70 Table 310.16, 60 °C: at most three current-carrying conductors in raceway, cable or earth, 30 °C.</summary>
        Us60,

        /// <summary>The same, 75 °C.</summary>
        Us75,

        /// <summary>The same, 90 °C.</summary>
        Us90,

        /// <summary>NFPA 70 Table 310.17, 90 °C: single conductor in free air, 30 °C.</summary>
        UsFreeAir90,

        /// <summary>EN 50618:2014 Table A.3: single cable free in air, 60 °C.</summary>
        IecFreeAir,

        /// <summary>The same: single cable on a surface.</summary>
        IecSurface,

        /// <summary>The same: two loaded cables touching, on a surface.</summary>
        IecPair,

        /// <summary>IEC 60364-5-52, XLPE, two loaded, reference method B1, in conduit, 30 °C; from memory.</summary>
        IecConduit,

        /// <summary>IEC 60364-5-52, XLPE, two loaded, reference method C, on a surface, 30 °C; from memory.</summary>
        IecFixed,
    }

    /// <summary>First metric size of the tables: 1.5 mm².</summary>
    private const int FirstMetric = 3;

    private static ReadOnlySpan<double> Amps(Column column) => column switch
    {
        Column.Us60 => [0, 0, 15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195],
        Column.Us75 => [0, 0, 20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230],
        Column.Us90 => [14, 18, 25, 30, 40, 55, 75, 95, 115, 130, 145, 170, 195, 225, 260],
        Column.UsFreeAir90 => [18, 24, 35, 40, 55, 80, 105, 140, 165, 190, 220, 260, 300, 350, 405],
        Column.IecFreeAir => [30, 41, 55, 70, 98, 132, 176, 218, 276],
        Column.IecSurface => [29, 39, 52, 67, 93, 125, 167, 207, 262],
        Column.IecPair => [24, 33, 44, 57, 79, 107, 142, 176, 221],
        Column.IecConduit => [23, 31, 42, 54, 75, 100, 133, 164, 198],
        _ => [24, 33, 45, 58, 80, 107, 138, 171, 209],
    };

    /// <summary>Amps of the thickest size of the column's table that is no thicker than an area; 0 where the table has none.</summary>
    public static double OfA(Column column, double areaMm2)
    {
        ReadOnlySpan<double> amps = Amps(column);
        bool gauge = column <= Column.UsFreeAir90;
        double foundA = 0;
        for (int i = 0; i < amps.Length; i++)
        {
            ConductorSize size = gauge ? ConductorSize.Gauges[i] : ConductorSize.Metric[i + FirstMetric];
            foundA = size.AreaMm2 <= areaMm2 * 1.005 ? amps[i] : foundA;
        }

        return foundA;
    }

    /// <summary>The table a column stands in.</summary>
    public static string Table(Column column) => column switch
    {
        Column.Us60 or Column.Us75 or Column.Us90 => "NEC Table 310.16",
        Column.UsFreeAir90 => "NEC Table 310.17",
        Column.IecFreeAir => "EN 50618 Table A.3, single in free air",
        Column.IecSurface => "EN 50618 Table A.3, single on a surface",
        Column.IecPair => "EN 50618 Table A.3, two touching on a surface",
        Column.IecConduit => "IEC 60364-5-52 method B1, from memory",
        _ => "IEC 60364-5-52 method C, from memory",
    };
}

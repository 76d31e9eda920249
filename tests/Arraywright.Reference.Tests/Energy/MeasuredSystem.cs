using System.Globalization;
using Arraywright.Reference.Tests.Climate;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>One quarter of an hour of the array in Nevada.</summary>
/// <param name="Local">Its stamp, standard time.</param>
/// <param name="PlaneWPerM2">Irradiance in the plane.</param>
/// <param name="PowerW">Power of the system.</param>
/// <param name="ModuleC">At a module.</param>
/// <param name="AirC">Air.</param>
internal sealed record MeasuredQuarter(DateTime Local, double PlaneWPerM2, double PowerW, double ModuleC, double AirC)
{
    /// <summary>Quarter of the day, 0 to 95.</summary>
    public int Slot => (4 * Local.Hour) + (Local.Minute / 15);

    public DateTime Hour => Local.AddMinutes(-Local.Minute);
}

/// <summary>
/// shared/measured: a grid-tied array in Nevada in 2016, means of 15 minutes (R data-analysis package PVplr 0.1.2, MIT; README.md there). Not stated: modules,
/// tilt, azimuth, wind, whether power is direct or alternating current. A week in February is missing.
/// </summary>
internal static class MeasuredSystem
{
    public static List<MeasuredQuarter> Quarters() =>
        [.. File.ReadLines(SharedFiles.PathOrSkip("measured/system_nevada_2016_15min.csv")).Skip(1).Select(line => line.Split(',')).Select(field => new MeasuredQuarter(
            DateTime.Parse(field[0], CultureInfo.InvariantCulture), Number(field[1]), Number(field[2]), Number(field[3]), Number(field[4])))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Runtime.CompilerServices;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>One station of shared/climate/climate_stations.csv (New et al. 2002 at station places).</summary>
internal sealed record Station(
    string Name, double LatitudeDeg, double LongitudeDeg, double ElevationM, double[] MeanAirC, double[] DailyRangeK, double[] SunshinePercent, double[] HorizontalKWhPerM2Day)
{
    public double ColdestMonthMinC => MeanAirC.Zip(DailyRangeK, (mean, range) => mean - (range / 2)).Min();
}

/// <summary>Files in the folder "shared" beside the repository, which a clone need not have.</summary>
internal static class SharedFiles
{
    /// <summary>Path of a file or folder in "shared"; skips the running test, saying so, where there is none.</summary>
    public static string PathOrSkip(string relative, [CallerFilePath] string source = "")
    {
        for (string? folder = Path.GetDirectoryName(source); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            string path = Path.Combine(folder, "shared", relative);
            if (Path.Exists(path))
            {
                return path;
            }
        }

        Assert.Skip($"../shared/{relative} is not beside this clone.");
        return "";
    }
}

internal static class StationTable
{
    /// <summary>Every station with a known height.</summary>
    public static List<Station> Read()
    {
        List<Station> stations = [];
        foreach (string line in File.ReadLines(SharedFiles.PathOrSkip("climate/climate_stations.csv")).Skip(1))
        {
            string[] field = line.Split(',');

            // A name may hold commas; all that follows the country code is plain.
            int latitude = field.Length - 52;
            if (field[latitude + 2].Length > 0)
            {
                stations.Add(new Station(
                    field[1],
                    Number(field[latitude]),
                    Number(field[latitude + 1]),
                    Number(field[latitude + 2]),
                    Months(field, latitude + 4),
                    Months(field, latitude + 16),
                    Months(field, latitude + 28),
                    Months(field, latitude + 40)));
            }
        }

        return stations;
    }

    private static double[] Months(string[] field, int first) => [.. field[first..(first + 12)].Select(Number)];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

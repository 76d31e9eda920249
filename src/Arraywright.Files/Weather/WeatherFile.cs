using System.Text;
using System.Text.Unicode;
using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Opens weather files of any known format, told apart by what is in them.</summary>
public static class WeatherFile
{
    /// <summary>Far above any year of minutes, bytes.</summary>
    private const long MostBytes = 200L << 20;

    /// <summary>Reads the weather file that a plan names; its path is taken from the folder of the plan.</summary>
    /// <param name="planPath">Path of the plan; "-" for standard input, then the folder is the current one.</param>
    /// <param name="place">The plan's place, with its weather file.</param>
    public static WeatherReading LoadFor(string planPath, Place place)
    {
        string folder = planPath == "-" ? "." : Path.GetDirectoryName(planPath) ?? ".";
        return Load(Path.Combine(folder, place.Weather ?? ""), place);
    }

    /// <summary>Reads a weather file; what cannot be opened is a fault, never an exception.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="planPlace">The plan's place, which the file must be near, and which serves tables that name none; null where there is no plan.</param>
    public static WeatherReading Load(string path, Place? planPlace = null)
    {
        WeatherReading Cannot(string found, string expected) => WeatherReading.Refused([new Fault(path, 1, 1, found, expected)]);
        if (Directory.Exists(path))
        {
            return Cannot("a folder", "a weather file");
        }

        try
        {
            FileInfo file = new(path);
            return !file.Exists ? Cannot("no such file", "a weather file; its path is taken from the folder of the plan")
                : file.Length > MostBytes ? Cannot($"{file.Length >> 20} MiB", $"at most {MostBytes >> 20} MiB")
                : ReadBytes(File.ReadAllBytes(path), Path.GetFileName(path), planPlace);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Cannot($"\"{error.Message}\"", "a file that may be read");
        }
    }

    /// <summary>Reads the bytes of a weather file. UTF-8 or Latin-1: names of places have accents.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="planPlace">The plan's place, which the file must be near, and which serves tables that name none; null where there is no plan.</param>
    public static WeatherReading ReadBytes(byte[] bytes, string file, Place? planPlace = null)
    {
        ReadOnlySpan<byte> start = bytes.AsSpan().TrimStart(" \t\r\n"u8);
        if (start.StartsWith("{"u8))
        {
            return NasaPowerReader.IsClimatology(bytes) ? FromClimate(bytes, file, planPlace) : NasaPowerReader.ReadHourly(bytes, file, planPlace);
        }

        if (bytes.AsSpan(0, Math.Min(bytes.Length, 4096)).Contains((byte)0))
        {
            return WeatherReading.Refused([new Fault(file, 1, 1, "a zero byte", "weather as plain text in UTF-8", "this is a binary file, or text in UTF-16: save it again as UTF-8")]);
        }

        string text = (Utf8.IsValid(bytes) ? Encoding.UTF8 : Encoding.Latin1).GetString(bytes);
        return text.AsSpan().TrimStart('\uFEFF').TrimStart().StartsWith("LOCATION", StringComparison.OrdinalIgnoreCase) || Path.GetExtension(file).Equals(".epw", StringComparison.OrdinalIgnoreCase)
            ? EpwReader.Read(text, file, planPlace)
            : WeatherCsvReader.Read(text, file, planPlace);
    }

    private static WeatherReading FromClimate(byte[] json, string file, Place? planPlace)
    {
        ClimateReading reading = NasaPowerReader.ReadClimatology(json, file);
        if (reading.Climate is not { } climate)
        {
            return WeatherReading.Refused(reading.Faults);
        }

        if (PlanPlace.TooFar(reading.Place, planPlace, file, 1) is { } far)
        {
            return WeatherReading.Refused([far]);
        }

        Place place = planPlace ?? new Place(reading.Place.LatitudeDeg, reading.Place.LongitudeDeg, reading.Place.ElevationM, null, null);
        WeatherYear made = SyntheticYear.Of(climate, place, $"a year made from the monthly means of NASA POWER in {file}; hours of the place would be better");
        WeatherYear year = new(made.Place, made.Steps, made.StepH, made.UtcOffsetH, made.Source, [.. PlanPlace.Remarks(reading.Place, planPlace)])
        {
            // A made year has no cold spell: what a real one's coldest hour would be stands in, so that the rule of the coldest month holds for it.
            ColdestKnownC = climate.Coldest.MeanDailyMinC - (DesignTemperatures.BelowColdestMonthK - DesignTemperatures.BelowWeatherFileK),
        };
        return new WeatherReading(year, []);
    }
}

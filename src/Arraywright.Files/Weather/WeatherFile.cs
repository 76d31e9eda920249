using System.Text;

namespace Arraywright.Files.Weather;

/// <summary>Opens weather files.</summary>
public static class WeatherFile
{
    /// <summary>Far above any year of minutes, bytes.</summary>
    private const long MostBytes = 200L << 20;

    /// <summary>Reads a weather file; what cannot be opened is a fault, never an exception.</summary>
    /// <param name="path">Where it is.</param>
    public static WeatherReading Load(string path)
    {
        Fault Cannot(string found, string expected) => new(path, 1, 1, found, expected);
        if (Directory.Exists(path))
        {
            return WeatherReading.Refused([Cannot("a folder", "a weather file")]);
        }

        FileInfo file = new(path);
        if (!file.Exists)
        {
            return WeatherReading.Refused([Cannot("no such file", "a weather file; its path is taken from the folder of the plan")]);
        }

        if (file.Length > MostBytes)
        {
            return WeatherReading.Refused([Cannot($"{file.Length >> 20} MiB", $"at most {MostBytes >> 20} MiB")]);
        }

        try
        {
            return EpwReader.Read(File.ReadAllText(path, Encoding.Latin1), Path.GetFileName(path));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return WeatherReading.Refused([Cannot($"\"{error.Message}\"", "a file that may be read")]);
        }
    }
}

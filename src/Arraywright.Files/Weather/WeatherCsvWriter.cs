using System.Globalization;
using System.Text;
using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Writes weather as the plain table that <see cref="WeatherCsvReader"/> reads.</summary>
public static class WeatherCsvWriter
{
    /// <summary>The text of a file: a tenth of each unit, line feeds.</summary>
    public static string Write(WeatherYear year)
    {
        StringBuilder text = new(48 * year.Steps.Length);
        CultureInfo plain = CultureInfo.InvariantCulture;
        text.Append(plain, $"# source: {year.Source.ReplaceLineEndings(" ")}\n");
        text.Append(plain, $"# latitude: {year.Place.LatitudeDeg}\n# longitude: {year.Place.LongitudeDeg}\n# elevation: {year.Place.ElevationM} m\n");
        text.Append(plain, $"# utc offset: {year.UtcOffsetH} h\n# coldest: {year.ColdestAirC:0.0} C\n");
        foreach (string repair in year.Repairs)
        {
            text.Append(plain, $"# mended: {repair}\n");
        }

        text.Append("time,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s\n");
        foreach (WeatherStep step in year.Steps)
        {
            text.Append(plain, $"{step.Ends:yyyy-MM-ddTHH:mm},{step.GlobalWPerM2:0.#},{step.BeamNormalWPerM2:0.#},{step.DiffuseWPerM2:0.#},{step.AirC:0.#},{step.WindMPerS:0.#}\n");
        }

        return text.ToString();
    }
}

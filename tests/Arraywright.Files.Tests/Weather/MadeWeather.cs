using System.Globalization;
using System.Text;

namespace Arraywright.Files.Tests.Weather;

/// <summary>A plain made-up year at 54.6 N: a half sine of sun from 6 to 18 h, stronger in summer. For readers; no weather is like it.</summary>
internal static class MadeWeather
{
    public const string Remarks = "# source: made up for tests\n# latitude: 54.6\n# longitude: -3.1\n# elevation: 210 m\n# utc offset: 0 h\n";

    /// <summary>Hours of a year: when each begins and the sun in it, W/m².</summary>
    public static IEnumerable<(DateTime Begins, double SunWPerM2)> Hours(int year = 2021)
    {
        for (DateTime begins = new(year, 1, 1); begins.Year == year; begins = begins.AddHours(1))
        {
            yield return (begins, Sun(begins));
        }
    }

    public static double Sun(DateTime begins)
    {
        double strength = 400 - (300 * Math.Cos(2 * Math.PI * (begins.DayOfYear + 10) / 365));
        return Math.Round(Math.Max(0, strength * Math.Sin(Math.PI * (begins.Hour - 5.5) / 12)));
    }

    /// <summary>The same as a table, rows without line ends.</summary>
    public static List<string> CsvRows(int year = 2021) =>
        [.. Hours(year).Select(hour => string.Create(CultureInfo.InvariantCulture, $"{hour.Begins.AddHours(1):yyyy-MM-ddTHH:mm},{hour.SunWPerM2},{hour.SunWPerM2 / 2},{hour.SunWPerM2 / 2},10.5,3.5"))];

    public static string Csv(IEnumerable<string> rows, string heading = "time,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s", string remarks = Remarks) =>
        remarks + heading + "\n" + string.Join('\n', rows) + "\n";

    /// <summary>An answer of the service for the year, in universal time at 54.6 N, the given longitude.</summary>
    public static string PowerJson(int year = 2021, double longitudeDeg = -3.1, Func<string, DateTime, double, double>? change = null, string clock = "UTC")
    {
        change ??= (_, _, value) => value;
        double shiftH = clock == "UTC" ? Math.Round(longitudeDeg / 15) : 0;
        (string Name, Func<DateTime, double> Of)[] series =
        [
            ("ALLSKY_SFC_SW_DWN", begins => Sun(begins.AddHours(shiftH))),
            ("ALLSKY_SFC_SW_DNI", begins => Sun(begins.AddHours(shiftH)) / 2),
            ("ALLSKY_SFC_SW_DIFF", begins => Sun(begins.AddHours(shiftH)) / 2),
            ("T2M", _ => 10.5),
            ("WS10M", _ => 3.5),
        ];
        StringBuilder json = new();
        json.Append(CultureInfo.InvariantCulture, $"{{\"type\":\"Feature\",\"geometry\":{{\"type\":\"Point\",\"coordinates\":[{longitudeDeg},54.6,210.5]}},\"properties\":{{\"parameter\":{{");
        json.AppendJoin(',', series.Select(one => $"\"{one.Name}\":{{{string.Join(',', Hours(year).Select(hour => string.Create(CultureInfo.InvariantCulture, $"\"{hour.Begins:yyyyMMddHH}\":{change(one.Name, hour.Begins, one.Of(hour.Begins))}")))}}}"));
        json.Append(CultureInfo.InvariantCulture, $"}}}},\"header\":{{\"title\":\"hourly\",\"fill_value\":-999.0,\"time_standard\":\"{clock}\",\"start\":\"{year}0101\",\"end\":\"{year}1231\"}},\"messages\":[],\"parameters\":{{\"T2M\":{{\"units\":\"C\",\"longname\":\"Temperature at 2 Meters\"}}}}}}");
        return json.ToString();
    }
}

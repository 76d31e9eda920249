using System.Globalization;
using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Reads hourly weather in the EPW format, the open format of the building-energy trade: eight header lines, then a row a step.</summary>
/// <remarks>Tolerates what real files do: missing-value codes, a leap day, records within the hour, months of different years, either line end.</remarks>
public static class EpwReader
{
    private const int HeaderLines = 8;
    private const int LastField = 21;

    /// <summary>The weather in the text of a file.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="file">Its name, for faults.</param>
    public static WeatherReading Read(string text, string file)
    {
        List<Fault> headerFaults = [];
        ReadOnlySpan<char> rest = text;
        (WeatherPlace place, double utcOffsetH, string name)? location = null;
        int perHour = 1;
        int line = 0;
        while (line < HeaderLines && !rest.IsEmpty)
        {
            ReadOnlySpan<char> header = NextLine(ref rest);
            line++;
            if (header.StartsWith("LOCATION", StringComparison.OrdinalIgnoreCase))
            {
                location = Location(header, file, line, headerFaults);
            }
            else if (header.StartsWith("DATA PERIODS", StringComparison.OrdinalIgnoreCase))
            {
                perHour = PerHour(header);
                break;
            }
        }

        if (location is not { } found)
        {
            headerFaults.Add(new Fault(file, 1, 1, "no line LOCATION", "LOCATION, then city, state, country, source, number, latitude, longitude, time zone, elevation"));
            return WeatherReading.Refused(headerFaults);
        }

        if (headerFaults.Count > 0)
        {
            return WeatherReading.Refused(headerFaults);
        }

        RawWeather raw = new(file, found.place, found.utcOffsetH, 1.0 / perHour, $"hourly weather file {file}, {found.name}");
        while (!rest.IsEmpty && !raw.IsFull)
        {
            ReadOnlySpan<char> row = NextLine(ref rest).Trim();
            line++;
            if (!row.IsEmpty)
            {
                AddRow(raw, row, line, perHour);
            }
        }

        return raw.Finished();
    }

    private static (WeatherPlace Place, double UtcOffsetH, string Name)? Location(ReadOnlySpan<char> header, string file, int line, List<Fault> faults)
    {
        string[] fields = header.ToString().Split(',');
        double Number(int field, string what, double low, double high)
        {
            string text = field < fields.Length ? fields[field].Trim() : "";
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= low && value <= high)
            {
                return value;
            }

            faults.Add(new Fault(file, line, 1, $"{what} \"{text}\"", $"{what} from {low} to {high}"));
            return 0;
        }

        WeatherPlace place = new(Number(6, "latitude", -90, 90), Number(7, "longitude", -180, 180), Number(9, "elevation", -500, 9000));
        return (place, Number(8, "time zone", -12, 14), string.Join(", ", fields.Skip(1).Take(3).Select(field => field.Trim()).Where(field => field.Length > 1)));
    }

    private static int PerHour(ReadOnlySpan<char> header)
    {
        string[] fields = header.ToString().Split(',');
        return fields.Length > 2 && int.TryParse(fields[2].Trim(), CultureInfo.InvariantCulture, out int count) && count is > 0 and <= 60 && 60 % count == 0 ? count : 1;
    }

    private static void AddRow(RawWeather raw, ReadOnlySpan<char> row, int line, int perHour)
    {
        Span<Range> fields = stackalloc Range[LastField + 2];
        int count = row.Split(fields, ',');
        if (count <= LastField)
        {
            raw.Refuse(line, 1, $"{count} fields", $"at least {LastField + 1}, wind speed being the {LastField + 1}th", "the file may be cut off here");
            return;
        }

        if (!Whole(row[fields[0]], out int year) || !Whole(row[fields[1]], out int month) || !Whole(row[fields[2]], out int day)
            || !Whole(row[fields[3]], out int hour) || !Whole(row[fields[4]], out int minute)
            || year is < 1800 or > 2200 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) || hour is < 1 or > 24 || minute is < 0 or > 60)
        {
            raw.Refuse(line, 1, $"the time \"{row[..Math.Min(row.Length, 20)]}\"", "year, month, day, hour 1 to 24, minute");
            return;
        }

        double minutes = perHour == 1 || minute == 0 ? 60 : minute;
        DateTime ends = new DateTime(year, month, day, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour - 1).AddMinutes(minutes);
        if (!Number(row[fields[6]], 99.9, out double? air) || !Number(row[fields[13]], 9999, out double? global) || !Number(row[fields[14]], 9999, out double? beam)
            || !Number(row[fields[15]], 9999, out double? diffuse) || !Number(row[fields[21]], 999, out double? wind))
        {
            raw.Refuse(line, 1, "a field that is no number", "numbers for temperature (7), irradiance (14, 15, 16) and wind (22)");
            return;
        }

        raw.Add(new RawStep(line, ends, global, beam, diffuse, air, wind));
    }

    private static bool Whole(ReadOnlySpan<char> text, out int value) => int.TryParse(text.Trim(), NumberStyles.Integer, CultureInfo.InvariantCulture, out value);

    /// <summary>A figure; null from the code on that stands for missing.</summary>
    private static bool Number(ReadOnlySpan<char> text, double missingFrom, out double? value)
    {
        bool isNumber = double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number);
        value = isNumber && number < missingFrom ? number : null;

        // A temperature in kelvin is above the code for missing too: it is kept, to be told of.
        value ??= isNumber && missingFrom == 99.9 && number > missingFrom + 1 ? number : null;
        return isNumber;
    }

    private static ReadOnlySpan<char> NextLine(ref ReadOnlySpan<char> rest)
    {
        int end = rest.IndexOf('\n');
        ReadOnlySpan<char> line = end < 0 ? rest : rest[..end];
        rest = end < 0 ? [] : rest[(end + 1)..];
        return line.TrimEnd('\r').TrimStart('\uFEFF');
    }
}

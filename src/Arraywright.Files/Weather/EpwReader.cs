using System.Globalization;
using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Reads hourly weather in the EPW format, the open format of the building-energy trade: eight header lines, then a row a step.</summary>
/// <remarks>Tolerates what real files do: missing-value codes, a leap day, records within the hour, months of different years, either line end.</remarks>
public static class EpwReader
{
    private const int LastField = 21;

    /// <summary>The weather in the text of a file.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="planPlace">The plan's place, which the file must be near; null where there is no plan.</param>
    public static WeatherReading Read(string text, string file, Place? planPlace = null)
    {
        List<Fault> faults = [];
        LineReader lines = new(text);
        (WeatherPlace Place, double UtcOffsetH, string Name)? location = null;
        int placeLine = 1;
        int told = 1;
        while (lines.Next() && !BeginsWithYear(lines.Current))
        {
            ReadOnlySpan<char> header = lines.Current.Trim();
            if (header.StartsWith("LOCATION", StringComparison.OrdinalIgnoreCase))
            {
                (location, placeLine) = (Location(header, file, lines.Line, faults), lines.Line);
            }
            else if (header.StartsWith("DATA PERIODS", StringComparison.OrdinalIgnoreCase))
            {
                told = PerHour(header);
            }
        }

        if (location is not { } found)
        {
            faults.Add(new Fault(file, 1, 1, "no line LOCATION", "LOCATION, then city, state, country, source, number, latitude, longitude, time zone, elevation"));
        }
        else if (faults.Count == 0)
        {
            int perHour = told == 1 && RowsOfHour(lines) is > 1 and <= 60 and int seen && 60 % seen == 0 ? seen : told;
            RawWeather raw = new(file, found.Place, found.UtcOffsetH, 60 / perHour, $"weather file {file}, {found.Name}") { PlaceLine = placeLine, PlannedAt = planPlace };
            if (perHour != told)
            {
                raw.Tell($"The header tells of {told} rows an hour; there are {perHour}, and so they were read.");
            }

            AddRows(raw, lines, perHour);
            return raw.Finished();
        }

        return WeatherReading.Refused(faults);
    }

    /// <summary>Place and zone are the last four fields: names of cities have commas of their own.</summary>
    private static (WeatherPlace Place, double UtcOffsetH, string Name)? Location(ReadOnlySpan<char> header, string file, int line, List<Fault> faults)
    {
        string[] fields = header.TrimEnd(", \t").ToString().Split(',');
        int first = Math.Max(6, fields.Length - 4);
        double Number(int field, string what, double low, double high)
        {
            string text = first + field < fields.Length ? fields[first + field].Trim() : "";
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= low && value <= high)
            {
                return value;
            }

            faults.Add(new Fault(file, line, 1, $"{what} \"{text}\"", $"{what} from {low} to {high}"));
            return 0;
        }

        WeatherPlace place = new(Number(0, "latitude", -90, 90), Number(1, "longitude", -180, 180), Number(3, "elevation", -500, 9000));
        return (place, Number(2, "time zone", -12, 14), string.Join(", ", fields.Skip(1).Take(3).Select(field => field.Trim()).Where(field => field.Length > 1)));
    }

    private static int PerHour(ReadOnlySpan<char> header)
    {
        string[] fields = header.ToString().Split(',');
        return fields.Length > 2 && int.TryParse(fields[2].Trim(), CultureInfo.InvariantCulture, out int count) && count is > 0 and <= 60 && 60 % count == 0 ? count : 1;
    }

    /// <summary>Whether a line is a row and no header: headers have more or fewer lines than eight in some files.</summary>
    private static bool BeginsWithYear(ReadOnlySpan<char> line)
    {
        line = line.TrimStart(' ');
        int comma = line.IndexOf(',');
        return comma is >= 1 and <= 4 && !line[..comma].ContainsAnyExceptInRange('0', '9');
    }

    /// <summary>How many rows from here on share year, month, day and hour, each with another minute.</summary>
    private static int RowsOfHour(LineReader lines)
    {
        (string hour, string minute) = Time(lines.Current);
        int count = 1;
        while (count <= 60 && lines.Next() && Time(lines.Current) is var next && next.Hour == hour && next.Minute != minute)
        {
            minute = next.Minute;
            count++;
        }

        return count;

        static (string Hour, string Minute) Time(ReadOnlySpan<char> row)
        {
            string[] fields = row.ToString().Split(',', 6);
            return fields.Length > 5 ? (string.Join(',', fields, 0, 4), fields[4]) : ("", "");
        }
    }

    /// <summary>Adds the row that the reader is at, and all after it. Old systems end a file with the character 26.</summary>
    private static void AddRows(RawWeather raw, LineReader lines, int perHour)
    {
        do
        {
            ReadOnlySpan<char> row = lines.Current.Trim().TrimEnd('\u001A');
            if (!row.IsEmpty)
            {
                AddRow(raw, row, lines.Line, perHour);
            }
        }
        while (lines.Next() && !raw.IsFull);
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
        if (!Number(row[fields[6]], 99.9, 101, out double? air) || !Number(row[fields[13]], 9999, double.MaxValue, out double? global)
            || !Number(row[fields[14]], 9999, double.MaxValue, out double? beam) || !Number(row[fields[15]], 9999, double.MaxValue, out double? diffuse)
            || !Number(row[fields[21]], 999, double.MaxValue, out double? wind))
        {
            raw.Refuse(line, 1, "a field that is no number", "numbers for temperature (7), irradiance (14, 15, 16) and wind (22)");
            return;
        }

        raw.Add(new RawStep(line, ends, global, beam, diffuse, air, wind));
    }

    private static bool Whole(ReadOnlySpan<char> text, out int value) => int.TryParse(text.Trim(), NumberStyles.Integer, CultureInfo.InvariantCulture, out value);

    /// <summary>A figure; null where it stands for missing: the format's code, or −999 and its like. Air above its code is in kelvin, and kept, to be told of.</summary>
    private static bool Number(ReadOnlySpan<char> text, double missingFrom, double missingTo, out double? value)
    {
        bool isNumber = double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number);
        value = !isNumber || RawWeather.IsFill(number) || (number >= missingFrom && number <= missingTo) ? null : number;
        return isNumber;
    }
}

using System.Globalization;
using Arraywright.Climate;
using Arraywright.Files.Text;

namespace Arraywright.Files.Weather;

/// <summary>Reads weather as a plain table: remarks that begin with #, a heading with names and units, a row a step.</summary>
/// <remarks>
/// The remarks <c># latitude: 54.6</c>, <c># longitude:</c>, <c># elevation: 210 m</c>, <c># utc offset: 0 h</c>, <c># coldest: -9 C</c> and <c># source:</c> tell what the
/// table itself cannot; the place of the plan stands in where they are silent. Times are the ends of the steps; a column "time begins" has their beginnings.
/// Times of different zones (daylight saving) and universal time are moved to the standard time of the place.
/// </remarks>
public static class WeatherCsvReader
{
    /// <summary>The weather in the text of a file.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="planPlace">The plan's place, for a file that names none; null where there is no plan.</param>
    public static WeatherReading Read(string text, string file, Place? planPlace = null)
    {
        FaultList faults = new(file, "a weather table");
        LineReader lines = new(text);
        WeatherRemarks remarks = WeatherRemarks.Read(ref lines, faults);
        string heading = lines.Current.ToString();
        char separator = heading.Contains(',') ? ',' : heading.Contains(';') ? ';' : '\t';
        List<string> unused = [];
        if (heading.Length == 0)
        {
            faults.Add(1, 1, "no heading", "a heading such as \"time,ghi W/m2,air C\"", "the file is empty");
        }

        ColumnUse[]? uses = faults.Count > 0 ? null : WeatherColumns.Read(heading, separator, lines.Line, faults, unused);
        WeatherPlace? place = remarks.PlaceOr(planPlace, faults);
        if (uses is null || place is not { } there)
        {
            return WeatherReading.Refused(faults.InFileOrder());
        }

        List<TimedRow> rows = [];
        while (lines.Next() && !faults.IsFull)
        {
            ReadOnlySpan<char> row = lines.Current.Trim();
            if (!row.IsEmpty && row[0] != '#' && Row(row, separator, uses, lines.Line, faults) is { } read)
            {
                rows.Add(read);
            }
        }

        if (faults.Count > 0)
        {
            return WeatherReading.Refused(faults.InFileOrder());
        }

        RawWeather raw = OnOneClock(rows, uses, there, remarks, file, planPlace);
        remarks.Mended.ForEach(raw.Tell);
        foreach (string name in unused)
        {
            raw.Tell($"The column {Quoted.Text(name)} is not used.");
        }

        return raw.Finished();
    }

    /// <summary>All rows on the standard time of the place, and the step that most of them have.</summary>
    private static RawWeather OnOneClock(List<TimedRow> rows, ColumnUse[] uses, WeatherPlace place, WeatherRemarks remarks, string file, Place? planPlace)
    {
        int step = CommonStep(rows);
        bool isZoned = rows.Exists(row => row.ZoneH is not null);
        double written = isZoned ? rows.Min(row => row.ZoneH ?? double.PositiveInfinity) : 0;
        double usual = Math.Round(place.LongitudeDeg / 15);
        double offsetH = remarks.UtcOffsetH ?? (isZoned && written != 0 ? written : usual);
        string source = remarks.Source is { } told ? $"{told} (file {file})" : $"weather table {file}";
        RawWeather raw = new(file, place, offsetH, step, source) { ColdestKnownC = remarks.ColdestC, PlaceLine = remarks.PlaceLine, PlannedAt = planPlace };
        if (!isZoned && remarks.UtcOffsetH is null)
        {
            raw.Tell($"Neither the times nor a remark \"# utc offset:\" tell the zone: UTC{offsetH:+0;-0;+0}, the hour of the longitude, was taken.");
        }

        bool begins = Array.Exists(uses, use => use.Column == WeatherColumn.TimeBegins);
        int moved = 0, yearHere = rows.Count > 0 ? rows[0].Time.Year : 0;
        bool oneYear = rows.TrueForAll(row => row.Time.AddMinutes(begins ? 0 : -1).Year == yearHere);
        foreach (TimedRow row in rows)
        {
            double shiftH = row.ZoneH is { } zone ? offsetH - zone : 0;
            moved += shiftH != 0 ? 1 : 0;
            DateTime ends = row.Time.AddMinutes((shiftH * 60) + (begins ? step : 0));
            raw.Add(row.Step with { Ends = shiftH != 0 && oneYear ? WeatherTime.InYear(ends, yearHere, step) : ends });
        }

        raw.Tell(moved, $"times moved to the standard time UTC{offsetH:+0.##;-0.##;+0}, hours that leave the year joined to its other end");
        return raw;
    }

    private static int CommonStep(List<TimedRow> rows)
    {
        Dictionary<int, int> counts = [];
        for (int i = 1; i < rows.Count; i++)
        {
            int minutes = (int)Math.Clamp((rows[i].Time - rows[i - 1].Time).TotalMinutes, -1, 61);
            counts[minutes] = counts.GetValueOrDefault(minutes) + 1;
        }

        int step = counts.Where(pair => pair.Key is > 0 and <= 60 && 60 % pair.Key == 0).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).Select(pair => pair.Key).FirstOrDefault();
        return step == 0 ? 60 : step;
    }

    private static TimedRow? Row(ReadOnlySpan<char> row, char separator, ColumnUse[] uses, int line, FaultList faults)
    {
        DateTime time = default;
        double? zoneH = null, global = null, beam = null, diffuse = null, air = null, wind = null;
        int at = 0, column = 0;
        for (; column < uses.Length && at <= row.Length; column++)
        {
            int length = row[at..].IndexOf(separator);
            ReadOnlySpan<char> field = length < 0 ? row[at..] : row.Slice(at, length);
            ColumnUse use = uses[column];
            if (use.Column is WeatherColumn.TimeEnds or WeatherColumn.TimeBegins)
            {
                if (!WeatherTime.TryRead(field, out time, out zoneH))
                {
                    faults.Add(line, at + 1, $"the time {Quoted.Text(field.ToString())}", "a time such as 2023-01-01T01:00");
                    return null;
                }
            }
            else if (use.Column != WeatherColumn.Unused)
            {
                if (!Figure(field, use, out double? value))
                {
                    bool comma = field.Contains(',');
                    faults.Add(line, at + 1, Quoted.Text(field.ToString()), "a number, or nothing where it is missing", comma ? "write a decimal point, not a comma" : null);
                    return null;
                }

                switch (use.Column)
                {
                    case WeatherColumn.Global: global = value; break;
                    case WeatherColumn.Beam: beam = value; break;
                    case WeatherColumn.Diffuse: diffuse = value; break;
                    case WeatherColumn.Air: air = value; break;
                    default: wind = value; break;
                }
            }

            at += length < 0 ? row.Length + 1 : length + 1;
        }

        if (column < uses.Length)
        {
            faults.Add(line, 1, $"{column} fields", $"{uses.Length}, as the heading has", "the file may be cut off here");
            return null;
        }

        return new TimedRow(time, zoneH, new RawStep(line, time, global, beam, diffuse, air, wind));
    }

    /// <summary>A figure in the reader's units; null for an empty field and for −999 and its like.</summary>
    private static bool Figure(ReadOnlySpan<char> field, ColumnUse use, out double? value)
    {
        value = null;
        field = field.Trim(" \"");
        if (field.IsEmpty || field.Equals("NaN", StringComparison.OrdinalIgnoreCase) || field.Equals("NA", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        if (!double.TryParse(field, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
        {
            return false;
        }

        value = RawWeather.IsFill(number) ? null : (number * use.Factor) + use.Offset;
        return true;
    }

    private readonly record struct TimedRow(DateTime Time, double? ZoneH, RawStep Step);
}

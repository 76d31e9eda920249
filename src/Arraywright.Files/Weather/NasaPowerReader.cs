using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;
using Arraywright.Climate;
using Arraywright.Files.Text;
using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Reads what the open service NASA POWER (Prediction Of Worldwide Energy Resources, NASA Langley) answers as JSON: one year of hours, or a climatology of months.</summary>
/// <remarks>Its stamps are the beginnings of the hours, in universal time or in the solar time of the longitude's whole hour; both become the standard time of the longitude.</remarks>
public static class NasaPowerReader
{
    /// <summary>What is asked for: global, beam and diffuse sun, air at 2 m, wind at 10 m.</summary>
    public const string HourlyParameters = "ALLSKY_SFC_SW_DWN,ALLSKY_SFC_SW_DNI,ALLSKY_SFC_SW_DIFF,T2M,WS10M";

    /// <summary>Reads the hours of one year.</summary>
    /// <param name="json">The answer.</param>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="planPlace">The plan's place, which the answer must be near; null where there is no plan.</param>
    public static WeatherReading ReadHourly(ReadOnlyMemory<byte> json, string file, Place? planPlace = null) => Parsed<WeatherReading>(
        json,
        file,
        (answer, faults) => Hours(answer, file, planPlace, faults) is { } raw ? raw.Finished() : null,
        WeatherReading.Refused);

    /// <summary>Reads mean months.</summary>
    /// <param name="json">The answer.</param>
    /// <param name="file">Its name, for faults.</param>
    public static ClimateReading ReadClimatology(ReadOnlyMemory<byte> json, string file) => Parsed<ClimateReading>(
        json,
        file,
        (answer, faults) => Months(answer, faults) is { } months ? new ClimateReading(months, answer.Place, []) : null,
        faults => new ClimateReading(null, default, faults));

    /// <summary>Whether an answer holds mean months and not hours.</summary>
    internal static bool IsClimatology(ReadOnlySpan<byte> json) => json.IndexOf("\"JAN\""u8) >= 0;

    private static T Parsed<T>(ReadOnlyMemory<byte> json, string file, Func<PowerAnswer, FaultList, T?> read, Func<IReadOnlyList<Fault>, T> refuse)
        where T : class
    {
        FaultList faults = new(file, "an answer of NASA POWER");
        if (!Utf8.IsValid(json.Span))
        {
            faults.Add(1, 1, "bytes that are not UTF-8", "an answer of NASA POWER as JSON in UTF-8", "the file is damaged: fetch it again");
            return refuse(faults.InFileOrder());
        }

        try
        {
            using var document = JsonDocument.Parse(json);
            T? result = PowerAnswer.Of(document.RootElement, faults) is { } answer ? read(answer, faults) : null;
            return result ?? refuse(faults.InFileOrder());
        }
        catch (JsonException broken)
        {
            faults.Add((int)(broken.LineNumber ?? 0) + 1, (int)(broken.BytePositionInLine ?? 0) + 1, "no JSON from here on", "an answer of NASA POWER as JSON", "the file may be cut off, or be a page of the service that tells of a fault");
            return refuse(faults.InFileOrder());
        }
    }

    private static RawWeather? Hours(PowerAnswer answer, string file, Place? planPlace, FaultList faults)
    {
        Dictionary<string, double>? global = answer.Series("ALLSKY_SFC_SW_DWN", faults, PowerUnit.Sun);
        Dictionary<string, double>? air = answer.Series("T2M", faults, PowerUnit.Air);
        if (global is null || air is null)
        {
            return null;
        }

        Dictionary<string, double> none = [];
        Dictionary<string, double> beam = answer.SeriesOrNull("ALLSKY_SFC_SW_DNI", faults, PowerUnit.Sun) ?? none;
        Dictionary<string, double> diffuse = answer.SeriesOrNull("ALLSKY_SFC_SW_DIFF", faults, PowerUnit.Sun) ?? none;
        Dictionary<string, double> wind = answer.SeriesOrNull("WS10M", faults, PowerUnit.Wind) ?? answer.SeriesOrNull("WS2M", faults, PowerUnit.Wind) ?? none;
        double offsetH = Math.Round(answer.Place.LongitudeDeg / 15);
        RawWeather raw = new(file, answer.Place, offsetH, 60, $"NASA POWER, the hours in {file} (sun from satellites on a grid of 1 degree, air from a weather model)") { PlannedAt = planPlace };
        double shiftH = answer.IsUniversalTime ? offsetH : 0;
        foreach ((string key, _) in global)
        {
            if (!DateTime.TryParseExact(key, "yyyyMMddHH", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime begins))
            {
                faults.Add(1, 1, $"the hour {Quoted.Text(key)}", "year, month, day and hour, such as \"2023010100\"");
                return null;
            }

            DateTime ends = WeatherTime.InYear(begins.AddHours(1 + shiftH), begins.Year, 60);
            raw.Add(new RawStep(1, ends, Figure(global), Figure(beam), Figure(diffuse), Figure(air), Figure(wind)));

            double? Figure(Dictionary<string, double> series) => series.TryGetValue(key, out double value) && value > answer.Fill ? value : null;
        }

        if (shiftH != 0)
        {
            raw.Tell($"Universal time moved to UTC{offsetH:+0;-0}; hours that leave the year joined to its other end.");
        }

        return raw;
    }

    private static MonthlyClimate? Months(PowerAnswer answer, FaultList faults)
    {
        Dictionary<string, double>? sun = answer.Series("ALLSKY_SFC_SW_DWN", faults, PowerUnit.DailySun);
        Dictionary<string, double>? air = answer.Series("T2M", faults, PowerUnit.Air);
        Dictionary<string, double>? range = answer.Series("T2M_RANGE", faults, PowerUnit.Difference);
        var months = ImmutableArray.CreateBuilder<ClimateMonth>(12);
        for (int month = 1; sun is not null && air is not null && range is not null && month <= 12; month++)
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month).ToUpperInvariant();
            if (Figure(sun, 0, 15) is { } kWh && Figure(air, -90, 60) is { } airC && Figure(range, 0, 40) is { } rangeK)
            {
                double outside = ExtraterrestrialDay.HorizontalKWhPerM2(answer.Place.LatitudeDeg, new DateTime(2001, month, 15).DayOfYear);
                double sunshinePercent = outside > 0 ? Math.Clamp(100 * ((kWh / outside) - 0.25) / 0.50, 0, 100) : 0;
                months.Add(new ClimateMonth(month, airC, rangeK, sunshinePercent, kWh));
            }

            double? Figure(Dictionary<string, double> series, double low, double high)
            {
                if (series.TryGetValue(name, out double value) && value >= low && value <= high)
                {
                    return value;
                }

                faults.Add(1, 1, series.ContainsKey(name) ? $"{value} in {name}" : $"no {name}", $"a figure from {low} to {high} for every month");
                return null;
            }
        }

        return months.Count == 12 ? new MonthlyClimate(months.MoveToImmutable()) : null;
    }
}

using System.Text.Json;
using Arraywright.Climate;
using Arraywright.Files.Text;

namespace Arraywright.Files.Weather;

/// <summary>What a series of the service is counted in here.</summary>
internal enum PowerUnit
{
    /// <summary>W/m².</summary>
    Sun,

    /// <summary>kWh/m² a day.</summary>
    DailySun,

    /// <summary>°C.</summary>
    Air,

    /// <summary>K.</summary>
    Difference,

    /// <summary>m/s.</summary>
    Wind,
}

/// <summary>The frame of an answer: where, which clock, which figure is missing, and the series by name.</summary>
internal sealed class PowerAnswer(WeatherPlace place, double fill, bool isUniversalTime, JsonElement parameter, JsonElement? units)
{
    private const double UsualFill = -999;

    public WeatherPlace Place => place;

    /// <summary>Figures up to this are missing.</summary>
    public double Fill => fill;

    public bool IsUniversalTime => isUniversalTime;

    /// <summary>The frame; null, with the reason told, when it is none.</summary>
    public static PowerAnswer? Of(JsonElement root, FaultList faults)
    {
        if (Member(Member(root, "properties"), "parameter") is not { ValueKind: JsonValueKind.Object } parameter)
        {
            faults.Add(1, 1, "no properties.parameter", "an answer of NASA POWER", Message(root) is { } message ? $"the service says {Quoted.Text(message)}" : null);
            return null;
        }

        if (Member(Member(root, "geometry"), "coordinates") is not { ValueKind: JsonValueKind.Array } where || where.GetArrayLength() < 2
            || Number(where[0], -180, 180) is not { } longitudeDeg || Number(where[1], -90, 90) is not { } latitudeDeg)
        {
            faults.Add(1, 1, "no geometry.coordinates", "longitude, latitude and height");
            return null;
        }

        double elevationM = where.GetArrayLength() > 2 ? Number(where[2], -500, 9000) ?? 0 : 0;
        JsonElement? header = Member(root, "header");
        double fill = Number(Member(header, "fill_value"), double.MinValue, -90) ?? UsualFill;
        bool isUniversal = Member(header, "time_standard") is { ValueKind: JsonValueKind.String } clock && clock.GetString() is "UTC" or "GMT";
        return new PowerAnswer(new WeatherPlace(latitudeDeg, longitudeDeg, elevationM), fill, isUniversal, parameter, Member(root, "parameters"));
    }

    /// <summary>A series in the units asked for; null, with the reason told, when it is not there or is none.</summary>
    public Dictionary<string, double>? Series(string name, FaultList faults, PowerUnit unit)
    {
        if (Member(parameter, name) is null)
        {
            faults.Add(1, 1, $"no {name}", $"the series {name}", "ask the service for it");
        }

        return SeriesOrNull(name, faults, unit);
    }

    /// <summary>A series in the units asked for; null when it is not there.</summary>
    public Dictionary<string, double>? SeriesOrNull(string name, FaultList faults, PowerUnit unit)
    {
        if (Member(parameter, name) is not { } series)
        {
            return null;
        }

        if (series.ValueKind != JsonValueKind.Object)
        {
            faults.Add(1, 1, $"{name} that is no group of figures", "a figure for each time");
            return null;
        }

        (double factor, double offset) = Conversion(name, unit);
        Dictionary<string, double> values = new(StringComparer.Ordinal);
        foreach (JsonProperty figure in series.EnumerateObject())
        {
            if (figure.Value.ValueKind != JsonValueKind.Number || !figure.Value.TryGetDouble(out double value) || !double.IsFinite(value))
            {
                faults.Add(1, 1, $"{name} at {Quoted.Text(figure.Name)} that is no number", "a number");
                return null;
            }

            values[figure.Name] = value <= fill ? value : (value * factor) + offset;
        }

        return values;
    }

    /// <summary>From the units that the answer names; those of its renewable-energy community where it names none.</summary>
    private (double Factor, double Offset) Conversion(string name, PowerUnit unit)
    {
        string told = Member(Member(units, name), "units") is { ValueKind: JsonValueKind.String } text ? text.GetString()! : "";
        bool mega = told.Contains("MJ", StringComparison.OrdinalIgnoreCase);
        bool kilo = told.StartsWith("kW", StringComparison.OrdinalIgnoreCase);
        return unit switch
        {
            PowerUnit.Sun => (mega ? 1 / 0.0036 : kilo ? 1000 : 1, 0),
            PowerUnit.DailySun => (mega ? 1 / 3.6 : told.StartsWith('W') ? 0.024 : 1, 0),
            PowerUnit.Air when told == "K" => (1, -273.15),
            _ => (1, 0),
        };
    }

    private static string? Message(JsonElement root)
    {
        foreach (string name in (ReadOnlySpan<string>)["messages", "detail", "message", "errors"])
        {
            JsonElement? member = Member(root, name);
            if (member is { ValueKind: JsonValueKind.Array } list && list.GetArrayLength() > 0)
            {
                member = list[0];
            }

            if (member is { ValueKind: JsonValueKind.String } text)
            {
                return text.GetString();
            }
        }

        return null;
    }

    private static JsonElement? Member(JsonElement? parent, string name) =>
        parent is { ValueKind: JsonValueKind.Object } group && group.TryGetProperty(name, out JsonElement member) ? member : null;

    private static double? Number(JsonElement? element, double low, double high) =>
        element is { ValueKind: JsonValueKind.Number } number && number.TryGetDouble(out double value) && value >= low && value <= high ? value : null;
}

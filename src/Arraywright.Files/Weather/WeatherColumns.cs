using Arraywright.Files.Keys;
using Arraywright.Files.Text;

namespace Arraywright.Files.Weather;

/// <summary>What a column of a weather table holds.</summary>
internal enum WeatherColumn
{
    Unused,
    TimeEnds,
    TimeBegins,
    Global,
    Beam,
    Diffuse,
    Air,
    Wind,
}

/// <summary>One column: what it holds and how its figures become W/m², °C or m/s: value × factor + offset.</summary>
internal readonly record struct ColumnUse(WeatherColumn Column, double Factor, double Offset);

/// <summary>Reads the heading of a weather table: a name and a unit for each column, in any order.</summary>
internal static class WeatherColumns
{
    private static readonly Dictionary<string, WeatherColumn> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["time"] = WeatherColumn.TimeEnds,
        ["time ends"] = WeatherColumn.TimeEnds,
        ["time begins"] = WeatherColumn.TimeBegins,
        ["ghi"] = WeatherColumn.Global,
        ["global"] = WeatherColumn.Global,
        ["dni"] = WeatherColumn.Beam,
        ["beam"] = WeatherColumn.Beam,
        ["dhi"] = WeatherColumn.Diffuse,
        ["diffuse"] = WeatherColumn.Diffuse,
        ["air"] = WeatherColumn.Air,
        ["temperature"] = WeatherColumn.Air,
        ["wind"] = WeatherColumn.Wind,
    };

    private static readonly Dictionary<string, (double Factor, double Offset)> SunUnits = new(StringComparer.OrdinalIgnoreCase)
    {
        ["W/m2"] = (1, 0),
        ["W/m²"] = (1, 0),
        ["kW/m2"] = (1000, 0),
        ["kW/m²"] = (1000, 0),
    };

    private static readonly Dictionary<string, (double Factor, double Offset)> AirUnits = new(StringComparer.OrdinalIgnoreCase)
    {
        ["C"] = (1, 0),
        ["°C"] = (1, 0),
        ["K"] = (1, -273.15),
        ["F"] = (5 / 9.0, -160 / 9.0),
        ["°F"] = (5 / 9.0, -160 / 9.0),
    };

    private static readonly Dictionary<string, (double Factor, double Offset)> WindUnits = new(StringComparer.OrdinalIgnoreCase)
    {
        ["m/s"] = (1, 0),
        ["km/h"] = (1 / 3.6, 0),
        ["mph"] = (0.44704, 0),
    };

    /// <summary>The use of each column; null, with the reasons told, when the heading cannot be used.</summary>
    public static ColumnUse[]? Read(string heading, char separator, int line, FaultList faults, List<string> unused)
    {
        string[] fields = heading.Split(separator);
        ColumnUse[] uses = new ColumnUse[fields.Length];
        int before = faults.Count, column = 1;
        for (int i = 0; i < fields.Length; i++)
        {
            uses[i] = Use(fields[i].Trim().Trim('"').Trim(), line, column, faults, unused);
            if (uses[i].Column != WeatherColumn.Unused && uses.AsSpan(0, i).ToArray().Any(use => use.Column == uses[i].Column))
            {
                faults.Add(line, column, $"the column {Quoted.Text(fields[i].Trim())} twice", "each column once");
            }

            column += fields[i].Length + 1;
        }

        Need(WeatherColumn.Air, "air C");
        if (!Has(WeatherColumn.TimeEnds) && !Has(WeatherColumn.TimeBegins))
        {
            Missing("time");
        }

        if (!Has(WeatherColumn.Global) && !(Has(WeatherColumn.Beam) && Has(WeatherColumn.Diffuse)))
        {
            Missing("ghi W/m2");
        }

        return faults.Count > before ? null : uses;

        bool Has(WeatherColumn wanted) => uses.Any(use => use.Column == wanted);

        void Need(WeatherColumn wanted, string name)
        {
            if (!Has(wanted))
            {
                Missing(name);
            }
        }

        void Missing(string name)
        {
            string bare = name.Split(' ')[0];
            string? near = unused.Find(text => Nearest.Of(NameAndUnit(text).Name, [bare]) is not null);
            faults.Add(line, 1, $"no column \"{name}\"", "a heading such as \"time,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s\", the columns in any order", near is null ? null : $"did you mean that by {Quoted.Text(near)}?");
        }
    }

    private static ColumnUse Use(string text, int line, int column, FaultList faults, List<string> unused)
    {
        (string name, string unit) = NameAndUnit(text);
        if (!Names.TryGetValue(name, out WeatherColumn holds))
        {
            if (text.Length > 0)
            {
                unused.Add(text);
            }

            return default;
        }

        Dictionary<string, (double Factor, double Offset)>? units = holds switch
        {
            WeatherColumn.Global or WeatherColumn.Beam or WeatherColumn.Diffuse => SunUnits,
            WeatherColumn.Air => AirUnits,
            WeatherColumn.Wind => WindUnits,
            _ => null,
        };
        if (units is null)
        {
            return new ColumnUse(holds, 1, 0);
        }

        if (!units.TryGetValue(unit, out (double Factor, double Offset) conversion))
        {
            string found = unit.Length == 0 ? $"the column {Quoted.Text(name)} without a unit" : $"the unit {Quoted.Text(unit)}";
            faults.Add(line, column, found, $"one of {string.Join(", ", units.Keys)}", $"write it behind the name: \"{name} {units.Keys.First()}\"");
        }

        return new ColumnUse(holds, conversion.Factor, conversion.Offset);
    }

    /// <summary>"ghi W/m2", "ghi (W/m2)" and "ghi [W/m2]" are alike; "time begins" has no unit.</summary>
    private static (string Name, string Unit) NameAndUnit(string text)
    {
        string plain = text.Replace('_', ' ').Replace("(", " ", StringComparison.Ordinal).Replace("[", " ", StringComparison.Ordinal).Trim(' ', ')', ']');
        int space = plain.LastIndexOf(' ');
        return space < 0 || Names.ContainsKey(plain) ? (plain, "") : (plain[..space].Trim(), plain[(space + 1)..]);
    }
}

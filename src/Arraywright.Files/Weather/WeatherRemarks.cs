using System.Globalization;
using Arraywright.Climate;
using Arraywright.Files.Text;

namespace Arraywright.Files.Weather;

/// <summary>What the remarks above a weather table tell: <c># key: value</c>, one a line. Others are passed over.</summary>
internal sealed record WeatherRemarks
{
    public double? LatitudeDeg { get; private set; }

    /// <summary>The line of the latitude; 1 where there is none.</summary>
    public int PlaceLine { get; private set; } = 1;

    public double? LongitudeDeg { get; private set; }

    public double? ElevationM { get; private set; }

    public double? UtcOffsetH { get; private set; }

    public double? ColdestC { get; private set; }

    public string? Source { get; private set; }

    /// <summary>What was mended when the table was made.</summary>
    public List<string> Mended { get; } = [];

    /// <summary>Reads the remarks and stops at the heading, or at the end.</summary>
    public static WeatherRemarks Read(ref LineReader lines, FaultList faults)
    {
        WeatherRemarks remarks = new();
        while (lines.Next())
        {
            ReadOnlySpan<char> line = lines.Current.Trim();
            if (line.IsEmpty)
            {
                continue;
            }

            if (line[0] != '#')
            {
                return remarks;
            }

            int colon = line.IndexOf(':');
            if (colon > 0)
            {
                remarks.Take(line[1..colon].Trim().ToString(), line[(colon + 1)..].Trim().ToString(), lines.Line, faults);
            }
        }

        return remarks;
    }

    /// <summary>The place of the table, what it leaves out taken from the plan; null, with the reason told, where neither has it.</summary>
    public WeatherPlace? PlaceOr(Place? plan, FaultList faults)
    {
        if (faults.Count > 0)
        {
            return null;
        }

        if ((LatitudeDeg ?? plan?.LatitudeDeg) is not { } latitudeDeg || (LongitudeDeg ?? plan?.LongitudeDeg) is not { } longitudeDeg)
        {
            faults.Add(1, 1, "no place", "remarks above the heading: \"# latitude: 54.6\" and \"# longitude: -3.1\"", "or give the plan a place");
            return null;
        }

        return new WeatherPlace(latitudeDeg, longitudeDeg, ElevationM ?? plan?.ElevationM ?? 0);
    }

    private void Take(string key, string value, int line, FaultList faults)
    {
        switch (key.ToLowerInvariant())
        {
            case "latitude": (LatitudeDeg, PlaceLine) = (Number(value, "", -90, 90), line); break;
            case "longitude": LongitudeDeg = Number(value, "", -180, 180); break;
            case "elevation": ElevationM = Number(value, "m", -500, 9000); break;
            case "utc offset": UtcOffsetH = Number(value, "h", -12, 14); break;
            case "coldest": ColdestC = Number(value, "C", -90, 60); break;
            case "mended": Mended.Add(value); break;
            case "source": Source = value.Length > 0 ? value : null; break;
        }

        double? Number(string text, string unit, double low, double high)
        {
            string bare = unit.Length > 0 && text.EndsWith(unit, StringComparison.Ordinal) ? text[..^unit.Length].TrimEnd(' ', '°') : text;
            if (double.TryParse(bare, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number >= low && number <= high)
            {
                return number;
            }

            faults.Add(line, 1, $"{key} {Quoted.Text(text)}", $"{key} from {low} to {high}{(unit.Length > 0 ? " " + unit : "")}");
            return null;
        }
    }
}

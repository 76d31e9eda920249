using System.Globalization;
using System.Text.Json;
using Arraywright.Growing;

namespace Arraywright.Files;

/// <summary>Writes how panels should face.</summary>
internal static class TiltJson
{
    public static void Write(Utf8JsonWriter json, TiltResult result)
    {
        json.WriteString("weather_source", result.WeatherSource);
        json.WriteStartArray("spans");
        foreach (BestFacing span in result.Spans)
        {
            json.WriteStartObject();
            json.WriteString("span", span.Span);
            WriteFacing(json, "best", span.Best);
            WriteFacing(json, "as_planned", span.Own);
            json.Figure("loss_percent", 100 * span.LossShare);
            WriteFacing(json, "best_tilt_as_it_faces", span.BestTilt);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("by_tilt");
        foreach (Facing facing in result.ByTilt)
        {
            json.WriteStartObject();
            json.Figure("tilt_deg", facing.TiltDeg);
            json.Figure("delivered_kwh", facing.DeliveredKWh);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Figure("within_1_percent_from_deg", result.NearlyBest?.LeastDeg);
        json.Figure("within_1_percent_to_deg", result.NearlyBest?.MostDeg);
        WriteTwo(json, result.Two);
        DesignJson.WriteWirings(json, result.Design);
    }

    private static void WriteFacing(Utf8JsonWriter json, string name, Facing? facing)
    {
        if (facing is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Figure("tilt_deg", facing.TiltDeg);
        json.Figure("azimuth_deg", facing.AzimuthDeg);
        json.Figure("delivered_kwh", facing.DeliveredKWh);
        json.WriteEndObject();
    }

    private static void WriteTwo(Utf8JsonWriter json, TwoTilts? two)
    {
        if (two is null)
        {
            json.WriteNull("two_tilts");
            return;
        }

        json.WriteStartObject("two_tilts");
        json.Figure("flat_deg", two.FlatDeg);
        json.WriteString("flat_from", Day(two.FlatFrom));
        json.Figure("steep_deg", two.SteepDeg);
        json.WriteString("steep_from", Day(two.SteepFrom));
        json.Figure("delivered_kwh", two.DeliveredKWh);
        json.Figure("two_weeks_off_percent", 100 * two.TwoWeeksOffShare);
        json.WriteEndObject();
    }

    private static string Day(DateOnly date) => date.ToString("MM-dd", CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Text;
using System.Text.Json;
using Arraywright.Electrical;
using Arraywright.Growing;

namespace Arraywright.Files;

/// <summary>Writes what growing would bring: the body of the JSON, and the curves as comma-separated text.</summary>
public static class GrowthJson
{
    internal static void Write(Utf8JsonWriter json, GrowthResult result)
    {
        json.WriteString("weather_source", result.WeatherSource);
        json.Figure("worth_percent", 100 * result.Options.WorthShare);
        json.WriteString("currency", result.Plan.Currency);
        json.Figure("stated_kwh", result.StatedKWh);
        json.WriteString("best", result.Best?.Kind.Panel.Name);
        json.WriteStartArray("kinds");
        foreach (GrowthCurve curve in result.Curves)
        {
            json.WriteStartObject();
            json.WriteString("panel", curve.Kind.Panel.Name);
            json.WriteBoolean("owned", curve.IsOwned);
            json.WriteBoolean("label_in_doubt", curve.IsInDoubt);
            json.Figure("price", curve.Kind.Panel.Price);
            json.WriteNumber("worth_more", curve.Worth.More);
            json.Figure("first_adds_kwh", curve.Worth.FirstKWh);
            json.Figure("next_adds_kwh", curve.Worth.NextKWh);
            json.Figure("cost_per_yearly_kwh", curve.CostPerYearlyKWh);
            json.WriteStartArray("points");
            foreach (GrowthPoint point in curve.Points)
            {
                WritePoint(json, point);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("ideal");
        foreach (IdealPanel ideal in result.Ideals)
        {
            WriteIdeal(json, ideal);
        }

        json.WriteEndArray();
    }

    /// <summary>Every point of every curve as comma-separated text with a header that names the units.</summary>
    public static string Csv(GrowthResult result)
    {
        StringBuilder text = new("panel,more,verdict,delivered_kwh,gain_kwh,clipped_percent,stored_kwh,cost_per_yearly_kwh,wirings\n");
        foreach (GrowthCurve curve in result.Curves)
        {
            foreach (GrowthPoint point in curve.Points)
            {
                string wirings = string.Join("; ", point.Design.Assignments.Select(one => $"{one.Input}: {(one.Wiring is null ? "-" : WiringText.Print(one.Wiring))}"));
                text.Append(CultureInfo.InvariantCulture, $"{curve.Kind.Panel.Name},{point.More},{DesignJson.Word(point.Verdict)},{point.DeliveredKWh:0.###},{point.GainKWh:0.###},{100 * point.ClippedShare:0.##},{point.StoredKWh:0.###},{point.CostPerYearlyKWh:0.####},{wirings}\n");
            }
        }

        return text.ToString();
    }

    private static void WritePoint(Utf8JsonWriter json, GrowthPoint point)
    {
        json.WriteStartObject();
        json.WriteNumber("more", point.More);
        json.WriteString("verdict", DesignJson.Word(point.Verdict));
        json.Figure("delivered_kwh", point.DeliveredKWh);
        json.Figure("gain_kwh", point.GainKWh);
        json.Figure("clipped_percent", 100 * point.ClippedShare);
        json.Figure("stored_kwh", point.StoredKWh);
        json.Figure("cost_per_yearly_kwh", point.CostPerYearlyKWh);
        json.Figure("if_asked_kwh", point.IfAsked?.DeliveredKWh);
        DesignJson.WriteWirings(json, point.Design);
        json.WriteEndObject();
    }

    private static void WriteIdeal(Utf8JsonWriter json, IdealPanel ideal)
    {
        json.WriteStartObject();
        json.WriteString("input", ideal.Input);
        json.Figure("full_w", ideal.FullW);
        json.Figure("reach_w", ideal.ReachW);
        json.WriteString("held_by", ideal.HeldBy);
        json.WriteStartArray("labels");
        foreach (IdealLabel label in ideal.Labels)
        {
            json.WriteStartObject();
            json.WriteNumber("in_string", label.InString);
            json.WriteNumber("strings", label.Strings);
            json.Figure("voc_least_v", label.LeastOpenCircuitV);
            json.Figure("voc_most_v", label.MostOpenCircuitV);
            json.Figure("vmp_least_v", label.LeastMaximumPowerV);
            json.Figure("vmp_most_v", label.MostMaximumPowerV);
            json.Figure("isc_most_a", label.MostShortCircuitA);
            json.Figure("power_least_w", label.LeastPowerW);
            json.Figure("power_most_w", label.MostPowerW);
            json.WriteBoolean("possible", label.IsPossible);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("nearest");
        foreach (KindFit fit in ideal.Kinds)
        {
            json.WriteStartObject();
            json.WriteString("panel", fit.Panel);
            json.WriteNumber("in_string", fit.InString);
            json.WriteNumber("strings", fit.Strings);
            json.Figure("power_w", fit.TakenW);
            json.Figure("used_percent", 100 * fit.UsedShare);
            json.WriteStartArray("obstacles");
            foreach (KindObstacle obstacle in fit.Obstacles)
            {
                json.WriteStartObject();
                json.WriteNumber("in_string", obstacle.InString);
                json.WriteNumber("strings", obstacle.Strings);
                json.WriteString("rule", obstacle.Finding.Rule);
                json.WriteString("level", DesignJson.Word(obstacle.Finding.Level));
                json.Figure("value", obstacle.Finding.Value);
                json.Figure("limit", obstacle.Finding.Limit);
                json.WriteString("unit", obstacle.Finding.Unit);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}

using System.Globalization;
using System.Text;
using System.Text.Json;
using Arraywright.Energy;
using Arraywright.Planning;
using Arraywright.Sky;

namespace Arraywright.Files;

/// <summary>Writes the energy of a year or a day: the body of the JSON, and months or steps as comma-separated text.</summary>
public static class EnergyJson
{
    internal static void Write(Utf8JsonWriter json, YearResult result)
    {
        Body(json, result.Energy, result.WeatherSource, result.Design);
        json.WriteStartArray("months");
        foreach (EnergySpan month in result.Energy.Spans)
        {
            json.WriteStartObject();
            json.WriteString("name", month.Name);
            json.Figure("delivered_kwh", month.DeliveredKWh);
            json.Figure("clipped_kwh", month.ClippedKWh);
            json.Figure("stored_kwh", month.LevelsKWh[(int)Stage.BatteryFull]);
            json.Figure("plane_kwh_m2", month.PlaneKWhPerM2);
            json.Figure("load_kwh", month.LoadKWh);
            json.Figure("served_kwh", month.ServedKWh);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal static void Write(Utf8JsonWriter json, DayResult result)
    {
        json.WriteString("date", result.Date.ToString("MM-dd", CultureInfo.InvariantCulture));
        json.Figure("sunrise_hour", result.Daylight == Daylight.RisesAndSets ? result.SunriseHour : null);
        json.Figure("sunset_hour", result.Daylight == Daylight.RisesAndSets ? result.SunsetHour : null);
        Body(json, result.Energy, result.WeatherSource, result.Design);
        json.WriteStartArray("steps");
        foreach (EnergyMoment step in result.Energy.Moments)
        {
            json.WriteStartObject();
            json.Figure("ends_at_hour", step.EndsAtHour);
            json.Figure("plane_w_m2", step.PlaneWPerM2);
            json.Figure("cell_c", step.CellC);
            json.Figure("unlimited_power_w", step.UnlimitedW);
            json.Figure("power_w", step.TakenW);
            json.WriteString("limited_by", DesignJson.Word(step.LimitedBy));
            json.Figure("charge_percent", 100 * step.StateOfCharge);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Body(Utf8JsonWriter json, EnergyResult energy, string weatherSource, Design design)
    {
        json.WriteString("weather_source", weatherSource);
        json.Figure("delivered_kwh", energy.Total.DeliveredKWh);
        json.Figure("clipped_kwh", energy.Total.ClippedKWh);
        json.Figure("within_hour_kwh", energy.WithinStepKWh);
        json.Figure("stored_kwh", energy.Total.LevelsKWh[(int)Stage.BatteryFull]);
        json.Figure("plane_kwh_m2", energy.Total.PlaneKWhPerM2);
        json.WriteStartArray("losses");
        foreach (EnergyStep step in energy.Losses)
        {
            json.WriteStartObject();
            json.WriteString("stage", step.Stage);
            json.Figure("kwh", step.KWh);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("hours_limited");
        json.Figure("current", energy.HoursLimited.Current);
        json.Figure("power", energy.HoursLimited.Power);
        json.Figure("voltage", energy.HoursLimited.Voltage);
        json.Figure("off", energy.HoursLimited.Off);
        json.WriteEndObject();
        WriteBattery(json, energy.Battery);
        DesignJson.WriteWirings(json, design);
    }

    /// <summary>The months as comma-separated text with a header that names the units.</summary>
    public static string Csv(YearResult result)
    {
        StringBuilder text = new("month,delivered_kwh,clipped_kwh,stored_kwh,plane_kwh_m2,load_kwh,served_kwh\n");
        foreach (EnergySpan month in result.Energy.Spans)
        {
            text.Append(CultureInfo.InvariantCulture, $"{month.Name},{month.DeliveredKWh:0.###},{month.ClippedKWh:0.###},{month.LevelsKWh[(int)Stage.BatteryFull]:0.###},{month.PlaneKWhPerM2:0.###},{month.LoadKWh:0.###},{month.ServedKWh:0.###}\n");
        }

        return text.ToString();
    }

    /// <summary>The steps of a day as comma-separated text with a header that names the units.</summary>
    public static string Csv(DayResult result)
    {
        StringBuilder text = new("ends_at_hour,plane_w_m2,cell_c,unlimited_power_w,power_w,limited_by,charge_percent\n");
        foreach (EnergyMoment step in result.Energy.Moments)
        {
            text.Append(CultureInfo.InvariantCulture, $"{step.EndsAtHour:0.###},{step.PlaneWPerM2:0.#},{step.CellC:0.#},{step.UnlimitedW:0.#},{step.TakenW:0.#},{DesignJson.Word(step.LimitedBy)},{100 * step.StateOfCharge:0.#}\n");
        }

        return text.ToString();
    }

    private static void WriteBattery(Utf8JsonWriter json, BatteryReport? battery)
    {
        if (battery is null)
        {
            json.WriteNull("battery");
            return;
        }

        json.WriteStartObject("battery");
        json.Figure("turned_away_kwh", battery.TurnedAwayKWh);
        json.Figure("load_kwh", battery.LoadKWh);
        json.Figure("served_kwh", battery.ServedKWh);
        json.WriteNumber("days_load_met", battery.DaysLoadMet);
        json.WriteNumber("days", battery.Days);
        json.Figure("hours_to_full", battery.HoursToFull);
        json.Figure("lowest_charge_percent", 100 * battery.LowestStateOfCharge);
        json.WriteEndObject();
    }
}

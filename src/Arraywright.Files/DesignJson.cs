using System.Text.Json;
using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright.Files;

/// <summary>Designs as JSON.</summary>
internal static class DesignJson
{
    /// <summary>Writes the list of designs, best first.</summary>
    public static void Write(Utf8JsonWriter json, IEnumerable<Design> designs)
    {
        json.WriteStartArray("designs");
        foreach (Design design in designs)
        {
            WriteDesign(json, design);
        }

        json.WriteEndArray();
    }

    /// <summary>The word of a level in the JSON.</summary>
    public static string Word(Level level) => level switch
    {
        Level.Go => "go",
        Level.Ask => "ask",
        _ => "stop",
    };

    /// <summary>The wiring in its notation and the count of its panels; null and 0 where nothing is connected.</summary>
    public static void WriteWiring(Utf8JsonWriter json, Wiring? wiring)
    {
        json.WriteString("wiring", wiring is null ? null : WiringText.Print(wiring));
        json.WriteNumber("panels", wiring?.Panels.Count() ?? 0);
    }

    /// <summary>The operating point with the conditions it stands for.</summary>
    public static void WriteOperating(Utf8JsonWriter json, Assignment assignment)
    {
        OperatingPoint point = assignment.Operating;
        json.WriteStartObject("operating");
        json.Figure("irradiance_w_m2", assignment.Conditions.IrradianceWPerM2);
        json.Figure("cell_c", assignment.Conditions.CellC);
        json.Figure("voltage_v", point.VoltageV);
        json.Figure("current_a", point.CurrentA);
        json.Figure("power_w", point.PowerW);
        json.WriteString("limited_by", Word(point.LimitedBy));
        json.Figure("unlimited_power_w", point.UnlimitedPowerW);
        json.Figure("first_hill_power_w", point.FirstHillPowerW);
        json.WriteEndObject();
    }

    internal static string Word(LimitedBy limit) => limit switch
    {
        LimitedBy.None => "none",
        LimitedBy.Current => "current",
        LimitedBy.Power => "power",
        LimitedBy.Voltage => "voltage",
        LimitedBy.AboveWindow => "above_window",
        _ => "off",
    };

    private static void WriteDesign(Utf8JsonWriter json, Design design)
    {
        json.WriteStartObject();
        json.WriteNumber("rank", design.Rank);
        json.WriteString("verdict", Word(design.Verdict));
        json.WriteStartArray("chosen_for");
        foreach (string reason in design.ChosenFor)
        {
            json.WriteStringValue(reason);
        }

        json.WriteEndArray();
        json.Figure("energy_kwh", design.EnergyKWh);
        json.Figure("peak_power_w", design.PeakPowerW);
        json.Figure("objective_w", design.ObjectiveW);
        json.WriteNumber("unused_panels", design.UnusedPanels.Sum(unused => unused.Count));
        json.WriteStartArray("unused");
        foreach ((string panel, int count) in design.UnusedPanels.Where(unused => unused.Count > 0))
        {
            json.WriteStartObject();
            json.WriteString("panel", panel);
            json.WriteNumber("count", count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("assignments");
        foreach (Assignment assignment in design.Assignments)
        {
            WriteAssignment(json, assignment);
        }

        json.WriteEndArray();
        json.WriteStartArray("losses");
        foreach (LossStep step in design.Losses)
        {
            json.WriteStartObject();
            json.WriteString("stage", step.Stage);
            json.Figure("watts", step.Watts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>The wiring of each input: the array <c>wirings</c>.</summary>
    public static void WriteWirings(Utf8JsonWriter json, Design design)
    {
        json.WriteStartArray("wirings");
        foreach (Assignment assignment in design.Assignments)
        {
            json.WriteStartObject();
            json.WriteString("input", assignment.Input);
            WriteWiring(json, assignment.Wiring);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteAssignment(Utf8JsonWriter json, Assignment assignment)
    {
        json.WriteStartObject();
        json.WriteString("input", assignment.Input);
        json.WriteString("verdict", Word(assignment.Verdict));
        WriteWiring(json, assignment.Wiring);
        json.Figure("voc_stc_v", assignment.VocStcV);
        json.Figure("voc_cold_v", assignment.VocColdV);
        json.Figure("voc_weather_year_v", assignment.VocWeather?.VoltageV);
        json.WriteString("voc_weather_year_source", assignment.VocWeather?.Source);
        json.Figure("isc_stc_a", assignment.IscStcA);
        json.Figure("isc_design_a", assignment.IscDesignA);
        json.OptionalFigures("string_fuses_a", assignment.StringFusesA);
        WriteOperating(json, assignment);
        json.WriteStartArray("findings");
        foreach (Finding finding in assignment.Findings)
        {
            WriteFinding(json, finding);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    internal static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule);
        json.WriteString("title", finding.Title);
        json.WriteString("level", Word(finding.Level));
        json.Figure("value", finding.Value);
        json.Figure("limit", finding.Limit);
        json.WriteString("unit", finding.Unit);
        json.Figure("margin_percent", finding.MarginPercent);
        json.WriteString("working", finding.Working);
        json.WriteString("source", finding.Source);
        json.WriteString("note", finding.Note);
        json.WriteEndObject();
    }
}

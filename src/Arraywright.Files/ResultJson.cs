using System.Text;
using System.Text.Json;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Growing;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Planning;

namespace Arraywright.Files;

/// <summary>Writes results as JSON: <c>format</c> 1, names in snake_case with their units, the same bytes for the same result.</summary>
/// <remarks>A figure that is not finite throws <see cref="InvalidOperationException"/> naming its place: JSON has no word for it.</remarks>
public static class ResultJson
{
    /// <summary>Version of the format; raised when a name changes or goes, not when one is added.</summary>
    public const int Format = 1;

    /// <summary>The answer to a plan or a check.</summary>
    /// <param name="result">The answer.</param>
    /// <param name="seconds">Time the search took, by the caller's clock: the one figure that differs from run to run. Null is written for a check.</param>
    public static string Write(PlanResult result, double? seconds = null) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        if (result.Temperatures is { } temperatures)
        {
            WriteCold(json, result.Plan, temperatures);
        }

        DesignJson.Write(json, result.Designs);
        if (result.Search is { } search)
        {
            json.WriteStartObject("search");
            json.WriteString("family", search.Family);
            json.Figure("considered", search.Considered);
            json.Figure("feasible", search.Feasible);
            json.Figure("bound", search.BoundW);
            json.Figure("gap_percent", Gap(search.GapPercent));
            json.WriteBoolean("proved", search.Proved);
            if (search.Exact is { } exact)
            {
                json.WriteNumber("moments", exact.Moments);
                json.WriteBoolean("moments_proved", exact.MomentsProved);
                json.Figure("moments_gap_percent", Gap(exact.MomentsGapPercent));
                json.Figure("likely_gap_percent", Gap(exact.LikelyGapPercent));
                json.WriteNumber("resolved", exact.Resolved);
                json.WriteNumber("looked_at", exact.LookedAt);
                json.Figure("disagreement_percent", Gap(exact.DisagreementPercent));
            }

            if (search.StoppedEarly)
            {
                json.WriteBoolean("stopped_early", true);
            }

            json.Figure("seconds", seconds);
            json.WriteEndObject();
        }
    });

    /// <summary>The curve of a wiring.</summary>
    public static string Write(CurveResult result) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        json.WriteString("input", result.Input.Name);
        DesignJson.WriteWiring(json, result.Assignment.Wiring);
        json.Figures("voltage_v", result.VoltageV);
        json.Figures("current_a", result.CurrentA);
        json.Figures("power_w", result.PowerW);
        json.WritePropertyName("maximum_power");
        json.Point(result.MaximumPower);
        DesignJson.WriteOperating(json, result.Assignment);
        json.WriteStartArray("local_maxima");
        foreach (CurvePoint hill in result.LocalMaxima)
        {
            json.Point(hill);
        }

        json.WriteEndArray();
    });

    /// <summary>A year of a wiring.</summary>
    public static string Write(YearResult result) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        EnergyJson.Write(json, result);
    });

    /// <summary>A day of a wiring.</summary>
    public static string Write(DayResult result) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        EnergyJson.Write(json, result);
    });

    /// <summary>What growing would bring.</summary>
    public static string Write(GrowthResult result) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        GrowthJson.Write(json, result);
    });

    /// <summary>The parts of a wiring.</summary>
    public static string Write(PartsList list) => Document(json =>
    {
        Head(json, list.Plan, list.Verdict, list.Assumed, list.Cautions);
        PartsJson.Write(json, list);
    });

    /// <summary>A report that was written, with the verdict in it.</summary>
    /// <param name="result">The answer it is of.</param>
    /// <param name="verdict">Its verdict, that of the parts counted in.</param>
    /// <param name="file">Where it was written.</param>
    public static string WriteReport(PlanResult result, Level verdict, string file) => Document(json =>
    {
        Head(json, result.Plan, verdict, result.Assumed, result.Cautions);
        json.WriteString("file", file);
    });

    /// <summary>How panels should face.</summary>
    public static string Write(TiltResult result) => Document(json =>
    {
        Head(json, result.Plan, result.Verdict, result.Assumed, result.Cautions);
        TiltJson.Write(json, result);
    });

    /// <summary>The letters to makers, with the verdict they belong to.</summary>
    public static string Write(AskResult result) => Document(json =>
    {
        PlanResult plan = result.Result;
        Head(json, plan.Plan, plan.Verdict, plan.Assumed, plan.Cautions);
        json.WriteStartArray("letters");
        foreach (InputLetter letter in result.Letters)
        {
            json.WriteStartObject();
            json.WriteString("input", letter.Input);
            json.WriteString("text", letter.Text);
            json.WriteString("where_the_answer_goes", letter.WhereTheAnswerGoes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    /// <summary>All that is known of the cold, so that nobody need search the sentences for it.</summary>
    /// <summary>The small difference of two large figures, to the places that mean something: the last ones differ from machine to machine.</summary>
    private static double Gap(double percent) => double.IsFinite(percent) ? Math.Round(percent, 9) : percent;

    private static void WriteCold(Utf8JsonWriter json, Plan plan, DesignTemperatures temperatures)
    {
        json.WriteStartObject("cold");
        json.Figure("air_c", temperatures.ColdestAirC);
        json.Figure("plan_c", plan.Place?.ColdestC);
        json.Figure("weather_file_c", temperatures.ColdestByFileC);
        json.Figure("climate_c", temperatures.ColdestByClimateC);
        json.WriteString("weather_source", plan.WeatherYear?.Source);
        json.Figure("weather_file_coldest_hour_c", plan.WeatherYear?.ColdestAirC);
        json.Figure("daylight_air_c", temperatures.ColdestDaylightAirC);
        json.Figure("daylight_cell_c", temperatures.ColdestDaylightCellC);
        json.WriteString("daylight_source", temperatures.DaylightSource);
        json.WriteEndObject();
    }

    internal static string Document(Action<Utf8JsonWriter> write)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, JsonFigures.Options))
        {
            json.WriteStartObject();
            json.WriteNumber("format", Format);
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length)) + "\n";
    }

    internal static void Write(Utf8JsonWriter json, Assumption assumption)
    {
        json.WriteStartObject();
        json.WriteString("what", assumption.What);
        json.WriteString("value", assumption.Value);
        json.WriteString("why", assumption.Why);
        json.WriteEndObject();
    }

    private static void Head(Utf8JsonWriter json, Plan plan, Level verdict, IEnumerable<Assumption> assumed, IEnumerable<string> cautions)
    {
        json.WriteString("plan", plan.Name);
        json.WriteString("verdict", DesignJson.Word(verdict));
        json.WriteStartArray("assumed");
        foreach (Assumption assumption in assumed)
        {
            Write(json, assumption);
        }

        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (string caution in cautions)
        {
            json.WriteStringValue(caution);
        }

        json.WriteEndArray();
        json.WriteStartArray("doubts");
        foreach (LabelDoubt doubt in plan.Doubts)
        {
            json.WriteStartObject();
            json.WriteString("panel", doubt.Panel);
            json.WriteString("field", doubt.Field);
            json.WriteString("message", doubt.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}

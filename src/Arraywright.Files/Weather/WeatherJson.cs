using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>What fetched weather is, as JSON.</summary>
public static class WeatherJson
{
    /// <summary>Writes it.</summary>
    /// <param name="plan">The plan it was fetched for.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="file">Where it was saved.</param>
    /// <param name="line">What the plan's <c>weather</c> has to be for it.</param>
    public static string Write(Plan plan, WeatherYear weather, string file, string line) => ResultJson.Document(json =>
    {
        json.WriteString("plan", plan.Name);
        json.WriteString("file", file);
        json.WriteString("weather", line);
        json.WriteString("weather_source", weather.Source);
        json.Figure("step_h", weather.StepH);
        json.Figure("global_kwh_m2", weather.GlobalKWhPerM2);
        json.Figure("coldest_air_c", weather.ColdestAirC);
        json.WriteStartArray("assumed");
        foreach (Assumption assumption in weather.Assumptions)
        {
            ResultJson.Write(json, assumption);
        }

        json.WriteEndArray();
    });
}

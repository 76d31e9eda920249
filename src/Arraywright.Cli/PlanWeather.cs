using Arraywright.Climate;
using Arraywright.Files;
using Arraywright.Files.Weather;

namespace Arraywright.Cli;

/// <summary>The weather that a plan is run through.</summary>
internal static class PlanWeather
{
    /// <summary>The plan with the weather of the file it names; null, with the faults told, where that cannot be read.</summary>
    public static Plan? WithFile(Host host, Plan plan, string planPath)
    {
        if (plan.Place is not { Weather: not null } place)
        {
            return plan;
        }

        WeatherReading reading = WeatherFile.LoadFor(planPath, place);
        foreach (Fault fault in reading.Faults)
        {
            host.Error.WriteLine(fault.ToString());
        }

        return reading.Year is { } weather ? plan with { WeatherYear = weather } : null;
    }

    /// <summary>The weather of the plan's file, or the built-in one; null, with the reason told, where there is neither.</summary>
    public static WeatherYear? Find(Host host, Plan plan, string planPath)
    {
        WeatherYear? weather = plan.WeatherYear ?? SyntheticYear.For(plan);
        if (weather is null)
        {
            host.Error.WriteLine($"arraywright: {planPath}: {(plan.Place is null ? "the plan names no place" : "the built-in climate does not know this place, it is over open sea")}; expected \"place:\" with a latitude and a longitude on land, or with a weather file");
        }

        return weather;
    }
}

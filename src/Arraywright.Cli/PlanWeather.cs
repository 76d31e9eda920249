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
}

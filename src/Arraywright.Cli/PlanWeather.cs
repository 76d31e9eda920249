using Arraywright.Climate;
using Arraywright.Files;
using Arraywright.Files.Weather;
using Arraywright.Planning;

namespace Arraywright.Cli;

/// <summary>The weather that a plan is run through.</summary>
internal static class PlanWeather
{
    /// <summary>The weather a plan names, or the built-in one; null, with the reason told, where there is neither.</summary>
    public static WeatherYear? Find(Host host, Plan plan, string planPath)
    {
        if (plan.Place?.Weather is not { } named)
        {
            WeatherYear? builtIn = YearStudy.BuiltIn(plan);
            if (builtIn is null)
            {
                host.Error.WriteLine($"arraywright: {planPath}: {(plan.Place is null ? "the plan names no place" : "the built-in climate does not know this place, it is over open sea")}; expected \"place:\" with a latitude and a longitude on land, or with a weather file");
            }

            return builtIn;
        }

        string folder = planPath == "-" ? "." : Path.GetDirectoryName(planPath) ?? ".";
        WeatherReading reading = WeatherFile.Load(Path.Combine(folder, named));
        foreach (Fault fault in reading.Faults)
        {
            host.Error.WriteLine(fault.ToString());
        }

        return reading.Year;
    }
}

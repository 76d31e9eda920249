using System.CommandLine;
using System.Globalization;
using Arraywright.Files;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What a wiring delivers through one day.</summary>
internal static class DayVerb
{
    public static Command Create(Host host)
    {
        Command command = new("day", "Runs the stated or best wiring through one day: hour by hour, and where the rest goes.");
        Option<DateOnly?> date = DateOption.Create("the day: month and day, with or without a year before them", required: true);
        Option<bool> clear = new("--clear") { Description = "a clear sky at that day's temperatures, in place of the weather's sun" };
        command.Add(date);
        command.Add(clear);
        RunVerb<DayResult> verb = new(command, "hours")
        {
            Csv = EnergyJson.Csv,
            Chart = DayPlot.Of,
            Json = ResultJson.Write,
            Screen = (result, writer, style, isShort) =>
            {
                DayScreen screen = new(writer, style);
                (isShort ? (Action<DayResult>)screen.WriteShort : screen.Write)(result);
            },
        };
        command.SetAction(parse => verb.Run(host, parse, (plan, weather, energy, bar, stop) =>
        {
            DateOnly day = parse.GetRequiredValue(date)!.Value;
            if (DayStudy.Has(weather, day))
            {
                return DayStudy.Run(plan, weather, day, parse.GetValue(clear), energy, bar, stop);
            }

            host.Error.WriteLine($"arraywright: the weather has no {day.ToString("MMMM d", CultureInfo.InvariantCulture)}; expected a day of its year");
            return null;
        }));
        return command;
    }
}

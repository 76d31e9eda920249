using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
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
        Option<DateOnly?> date = ValueOption.Create(AskedOptions.Date);
        date.Required = true;
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
        command.SetAction(parse => verb.Run(host, parse, (plan, energy, bar, stop) =>
            Questions.Day(plan, parse.GetRequiredValue(date)!.Value, parse.GetValue(clear), energy, bar, stop)));
        return command;
    }
}

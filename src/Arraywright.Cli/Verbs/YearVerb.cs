using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What a wiring delivers through a year.</summary>
internal static class YearVerb
{
    public static Command Create(Host host)
    {
        Command command = new("year", "Runs the stated or best wiring through a year: what it brings, and where the rest goes.");
        RunVerb<YearResult> verb = new(command, "months")
        {
            Csv = EnergyJson.Csv,
            Chart = YearPlot.Of,
            Json = ResultJson.Write,
            Screen = (result, writer, style, isShort) =>
            {
                YearScreen screen = new(writer, style);
                (isShort ? (Action<YearResult>)screen.WriteShort : screen.Write)(result);
            },
        };
        command.SetAction(parse => verb.Run(host, parse, Questions.Year));
        return command;
    }
}

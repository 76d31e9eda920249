using System.CommandLine;
using Arraywright.Energy;
using Arraywright.Files;
using Arraywright.Growing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>How the panels should face.</summary>
internal static class TiltVerb
{
    public static Command Create(Host host)
    {
        Command command = new("tilt", "Finds the best tilt and direction for the stated or best wiring, and what a second tilt in the year would add.");
        Option<DateOnly?> date = DateOption.Create("also the best for the days about this one: month and day, with or without a year before them", required: false);
        command.Add(date);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            if (!TiltStudy.Turns(plan))
            {
                host.Error.WriteLine($"arraywright: {options.Path(parse)}: every panel has a tilt or direction of its own, so there is nothing to turn together; expected a panel without \"tilt:\" and \"azimuth:\" among \"panels:\"");
                return ExitCode.WrongInput;
            }

            if (PlanWeather.Find(host, plan, options.Path(parse)) is not { } weather)
            {
                return ExitCode.WrongInput;
            }

            Manners manners = options.Manners(parse);
            (TiltResult result, _) = Work.UnderBar(host, manners, (bar, stop) => TiltStudy.Run(plan, weather, parse.GetValue(date), EnergyOptions.Default, bar, stop));
            Print(host, result, manners);
            return ExitCode.For(result.Verdict);
        }));
        return command;
    }

    private static void Print(Host host, TiltResult result, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result));
            return;
        }

        Work.Print(host, writer =>
        {
            TiltScreen screen = new(writer, host.Style(manners.NoColor));
            (manners.Quiet ? (Action<TiltResult>)screen.WriteShort : screen.Write)(result);
        });
    }
}

using System.CommandLine;
using Arraywright.Energy;
using Arraywright.Files;
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
        Option<bool> hourly = new("--no-spread") { Description = "take each hour at its mean, without its bright and clouded minutes" };
        Option<string> csv = new("--csv") { Description = "a file for the months as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(hourly);
        command.Add(csv);
        StepOption step = new(command);
        PictureOption chart = new(command);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            if (PlanWeather.Find(host, plan, options.Path(parse)) is not { } weather)
            {
                return ExitCode.WrongInput;
            }

            if (step.Refuses(host, parse, weather))
            {
                return ExitCode.WrongInput;
            }

            Manners manners = options.Manners(parse);
            EnergyOptions energy = new() { SpreadWithinStep = !parse.GetValue(hourly), StepH = step.Hours(parse) };
            (YearResult result, _) = Work.UnderBar(host, manners, (bar, stop) => YearStudy.Run(plan, weather, energy, bar, stop));
            if (parse.GetValue(csv) is { } path && Work.Save(host, path, EnergyJson.Csv(result), replace: true) is not ExitCode.Done and int refused)
            {
                return refused;
            }

            if (chart.Save(host, parse, () => YearPlot.Of(result)) is not ExitCode.Done and int unsaved)
            {
                return unsaved;
            }

            Print(host, result, manners);
            return ExitCode.For(result.Verdict);
        }));
        return command;
    }

    private static void Print(Host host, YearResult result, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result));
            return;
        }

        Work.Print(host, writer =>
        {
            YearScreen screen = new(writer, host.Style(manners.NoColor));
            (manners.Quiet ? (Action<YearResult>)screen.WriteShort : screen.Write)(result);
        });
    }
}

using System.CommandLine;
using System.Globalization;
using Arraywright.Energy;
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
        Option<bool> hourly = new("--no-spread") { Description = "take each hour at its mean, without its bright and clouded minutes" };
        Option<string> csv = new("--csv") { Description = "a file for the hours as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(date);
        command.Add(clear);
        command.Add(hourly);
        command.Add(csv);
        StepOption step = new(command);
        PictureOption chart = new(command);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            DateOnly day = parse.GetRequiredValue(date)!.Value;
            if (PlanWeather.Find(host, plan, options.Path(parse)) is not { } weather)
            {
                return ExitCode.WrongInput;
            }

            if (!DayStudy.Has(weather, day))
            {
                host.Error.WriteLine($"arraywright: the weather has no {day.ToString("MMMM d", CultureInfo.InvariantCulture)}; expected a day of its year");
                return ExitCode.WrongInput;
            }

            if (step.Refuses(host, parse, weather))
            {
                return ExitCode.WrongInput;
            }

            Manners manners = options.Manners(parse);
            EnergyOptions energy = new() { SpreadWithinStep = !parse.GetValue(hourly), StepH = step.Hours(parse) };
            (DayResult result, _) = Work.UnderBar(host, manners, (bar, stop) => DayStudy.Run(plan, weather, day, parse.GetValue(clear), energy, bar, stop));
            if (parse.GetValue(csv) is { } path && Work.Save(host, path, EnergyJson.Csv(result), replace: true) is not ExitCode.Done and int refused)
            {
                return refused;
            }

            if (chart.Save(host, parse, () => DayPlot.Of(result)) is not ExitCode.Done and int unsaved)
            {
                return unsaved;
            }

            Print(host, result, manners);
            return ExitCode.For(result.Verdict);
        }));
        return command;
    }

    private static void Print(Host host, DayResult result, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result));
            return;
        }

        Work.Print(host, writer =>
        {
            DayScreen screen = new(writer, host.Style(manners.NoColor));
            (manners.Quiet ? (Action<DayResult>)screen.WriteShort : screen.Write)(result);
        });
    }
}

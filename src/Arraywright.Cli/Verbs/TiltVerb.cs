using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Growing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>How the panels should face.</summary>
internal static class TiltVerb
{
    public static Command Create(Host host)
    {
        Command command = new("tilt", "Finds the best tilt and direction for the stated or best wiring, and what a second tilt in the year would add.");
        Option<DateOnly?> date = ValueOption.Create(AskedOptions.Date, "also the best for the days about this one: month and day, with or without a year before them");
        command.Add(date);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            return Work.Ask(
                host,
                manners,
                options.Path(parse),
                (bar, stop) => Questions.Tilt(plan, parse.GetValue(date), bar, stop),
                result =>
                {
                    Print(host, result, manners);
                    return ExitCode.For(result.Verdict);
                });
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

using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The current-voltage and power-voltage curve.</summary>
internal static class CurveVerb
{
    public static Command Create(Host host)
    {
        Command command = new("curve", "Shows amps and watts over volts, and what the input takes.");
        InputOption input = new(command);
        PictureOption chart = new(command);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            return Work.Ask(
                host,
                manners,
                options.Path(parse),
                (bar, stop) => Questions.Curve(plan, input.Name(parse), options.Planner(parse), bar, stop),
                result => chart.Save(host, parse, () => CurvePlot.Of(result)) is not ExitCode.Done and int refused ? refused : Print(host, result, manners));
        }));
        return command;
    }

    private static int Print(Host host, CurveResult result, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result));
        }
        else
        {
            Work.Print(host, writer =>
            {
                CurveScreen screen = new(writer, host.Style(manners.NoColor));
                (manners.Quiet ? (Action<CurveResult>)screen.WriteShort : screen.Write)(result);
            });
        }

        return ExitCode.For(result.Verdict);
    }
}

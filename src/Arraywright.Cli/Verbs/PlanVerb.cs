using System.CommandLine;
using Arraywright.Files;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The main job.</summary>
internal static class PlanVerb
{
    public static Command Create(Host host)
    {
        Command command = new("plan", "Finds, proves and ranks the wirings of the panels at hand.");
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            (PlanResult result, double seconds) = Work.BestUnderBar(host, manners, (bar, stop) => Planner.Answer(plan, options.Planner(parse), bar, stop));
            return Work.Ended(host, Print(host, result, manners, seconds));
        }));
        return command;
    }

    /// <summary>Prints the answer to a plan or a check.</summary>
    public static int Print(Host host, PlanResult result, Manners manners, double? seconds)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result, seconds));
        }
        else
        {
            Work.Print(host, writer =>
            {
                PlanScreen screen = new(writer, host.Style(manners.NoColor));
                (manners.Quiet ? (Action<PlanResult>)screen.WriteVerdict : screen.Write)(result);
            });
        }

        return ExitCode.For(result.Verdict);
    }
}

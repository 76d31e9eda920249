using System.CommandLine;
using Arraywright.Files.Asking;

namespace Arraywright.Cli.Verbs;

/// <summary>Judges the stated wiring.</summary>
internal static class CheckVerb
{
    public static Command Create(Host host)
    {
        Command command = new("check", "Judges the wiring that the plan states.");
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            return Work.Ask(
                host,
                manners,
                options.Path(parse),
                (_, _) => Questions.Check(plan, options.Planner(parse)),
                result => PlanVerb.Print(host, result, manners, null));
        }));
        return command;
    }
}

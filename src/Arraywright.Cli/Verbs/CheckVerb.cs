using Arraywright.Planning;
using System.CommandLine;

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
            if (plan.Inputs.All(input => input.StatedWiring is null))
            {
                host.Error.WriteLine($"arraywright: {options.Path(parse)}: no input states a wiring; expected \"wiring:\" at an input, such as \"wiring: a + b\"; to let the tool find one: arraywright plan");
                return ExitCode.WrongInput;
            }

            return PlanVerb.Print(host, Planner.Check(plan, options.Planner(parse)), options.Manners(parse), null);
        }));
        return command;
    }
}

using Arraywright.Planning;
using System.CommandLine;
using Arraywright.Electrical;
using Arraywright.Files;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The wiring as a netlist for circuit simulators.</summary>
internal static class NetlistVerb
{
    private const int SweepSteps = 500;

    public static Command Create(Host host)
    {
        Command command = new("netlist", "Writes the wiring as a SPICE netlist, for a second opinion.");
        Option<string> output = new("--output", "-o") { Description = "a file to write instead of standard output; one that is there is replaced", HelpName = "FILE" };
        command.Add(output);
        InputOption input = new(command);
        PlanOptions options = new PlanOptions().WithPlan(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            if (!input.Names(plan, parse, host))
            {
                return ExitCode.WrongInput;
            }

            (CurveResult curve, _) = Work.UnderBar(host, default, (bar, stop) => CurveStudy.Run(plan, input.Name(parse), options.Planner(parse), bar, stop));
            Assignment assignment = curve.Assignment;
            string title = $"{plan.Name}: {assignment.Input}: {WiringText.Print(assignment.Wiring!)}, {MeterTable.At(assignment.Conditions)}";
            string netlist = Netlist.Write(title, curve.Circuit, curve.VoltageV[^1], SweepSteps);
            if (parse.GetValue(output) is { } path)
            {
                return Work.Save(host, path, netlist, replace: true);
            }

            host.Print(netlist);
            return ExitCode.Done;
        }));
        return command;
    }
}

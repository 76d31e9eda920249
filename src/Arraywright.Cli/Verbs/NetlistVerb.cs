using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The wiring as a netlist for circuit simulators.</summary>
internal static class NetlistVerb
{
    public static Command Create(Host host)
    {
        Command command = new("netlist", "Writes the wiring as a SPICE netlist, for a second opinion.");
        Option<string> output = new("--output", "-o") { Description = "a file to write instead of standard output; one that is there is replaced", HelpName = "FILE" };
        command.Add(output);
        InputOption input = new(command);
        PlanOptions options = new PlanOptions().WithPlan(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan => Work.Ask(
            host,
            default,
            options.Path(parse),
            (bar, stop) => Questions.Curve(plan, input.Name(parse), options.Planner(parse), bar, stop),
            curve => Write(host, Netlist.Write(CurveTitle.Of(curve), curve.Circuit, curve.VoltageV[^1], Netlist.UsualSteps), parse.GetValue(output)))));
        return command;
    }

    private static int Write(Host host, string netlist, string? path)
    {
        if (path is not null)
        {
            return Work.Save(host, path, netlist, replace: true);
        }

        host.Print(netlist);
        return ExitCode.Done;
    }
}

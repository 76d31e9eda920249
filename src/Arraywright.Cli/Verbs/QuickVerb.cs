using System.CommandLine;
using Arraywright.Files;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The same answer from one line, with no plan file.</summary>
internal static class QuickVerb
{
    public static Command Create(Host host)
    {
        Command command = new("quick", "May I connect these to that? One line, no plan file.");
        Argument<string[]> panels = new("PANELS")
        {
            Description = "a count and a label, as often as there are kinds: 4x \"22.9V 6.72A 18.9V 6.35A\" is four panels of Voc, Isc, Vmp, Imp",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string[]> onto = new("--onto") { Description = "an input: most volts, and amps and watts where printed; again for another", HelpName = "\"50V 10A 400W\"" };
        Option<string> save = new("--save") { Description = "a file for the plan this stands for; one that is there is not touched", HelpName = "FILE" };
        command.Validators.Add(result =>
        {
            if (result.GetResult(onto) is null)
            {
                result.AddError("quick needs --onto, the input that the panels are to go on, such as --onto \"50V 10A 400W\"");
            }
        });
        command.Add(panels);
        command.Add(onto);
        command.Add(save);
        PlanOptions options = new PlanOptions().WithManners(command).WithConditions(command);
        command.SetAction(parse =>
        {
            host.WatchForInterrupt();
            return Work.With(host, QuickPlan.Read(parse.GetRequiredValue(panels), parse.GetRequiredValue(onto)), plan =>
            {
                Manners manners = options.Manners(parse);
                if (parse.GetValue(save) is { } path && Work.Save(host, path, PlanWriter.Write(plan), replace: false) is not ExitCode.Done and int refused)
                {
                    return refused;
                }

                (PlanResult result, double seconds) = Work.BestUnderBar(host, manners, (bar, stop) => Planner.Answer(plan, options.Planner(parse), bar, stop));
                if (manners.Json || manners.Quiet)
                {
                    return Work.Ended(host, PlanVerb.Print(host, result, manners, seconds));
                }

                Work.Print(host, writer => new QuickScreen(writer, host.Style(manners.NoColor)).Write(result));
                return Work.Ended(host, ExitCode.For(result.Verdict));
            });
        });
        return command;
    }
}

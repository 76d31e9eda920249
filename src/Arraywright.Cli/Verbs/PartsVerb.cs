using System.CommandLine;
using Arraywright.Files;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Drawing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What to buy, and how strong each piece must be.</summary>
internal static class PartsVerb
{
    public static Command Create(Host host)
    {
        Command command = new("parts", "Sizes cable, connectors, fuses and switch of the stated or best wiring, and writes the shopping list.");
        Option<string> csv = new("--csv") { Description = "a file for the shopping list as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(csv);
        PictureOption diagram = new(command, "--diagram", "wiring diagram");
        PictureOption arrangement = new(command, "--arrangement", "drawing of the panels and their plugs");
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            (PartsList list, _) = Work.UnderBar(host, manners, (bar, stop) => PartsStudy.Run(plan, options.Planner(parse), bar, stop));
            if (parse.GetValue(csv) is { } path && Work.Save(host, path, PartsJson.Csv(list), replace: true) is not ExitCode.Done and int refused)
            {
                return refused;
            }

            Lazy<DrawingSheet> sheet = new(() => DrawingSheet.Of(list, ReadingStudy.Of(list.Plan, list.Design, options.Planner(parse))));
            if (diagram.Save(host, parse, () => sheet.Value.Diagram()) is not ExitCode.Done and int undrawn)
            {
                return undrawn;
            }

            if (arrangement.Save(host, parse, () => sheet.Value.Arrangement()) is not ExitCode.Done and int unlaid)
            {
                return unlaid;
            }

            Print(host, list, manners);
            return ExitCode.For(list.Verdict);
        }));
        return command;
    }

    private static void Print(Host host, PartsList list, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(list));
            return;
        }

        Work.Print(host, writer =>
        {
            PartsScreen screen = new(writer, host.Style(manners.NoColor));
            (manners.Quiet ? (Action<PartsList>)screen.WriteShort : screen.Write)(list);
        });
    }
}

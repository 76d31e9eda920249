using System.CommandLine;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Growing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What more panels would bring.</summary>
internal static class GrowVerb
{
    public static Command Create(Host host)
    {
        Command command = new("grow", "Adds panels one at a time: what each brings in a year, where it stops paying, which kind to buy.");
        Option<string> of = new("--of") { Description = "only this kind, at hand or a candidate", HelpName = "NAME" };
        Option<int?> most = ValueOption.Create(AskedOptions.Most);
        Option<double?> worth = ValueOption.Create(AskedOptions.Worth);
        Option<string> csv = new("--csv") { Description = "a file for the curves as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(of);
        command.Add(most);
        command.Add(worth);
        command.Add(csv);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            GrowthOptions asked = new() { Of = parse.GetValue(of), Most = parse.GetValue(most), WorthShare = parse.GetValue(worth) ?? GrowthOptions.Default.WorthShare };
            Manners manners = options.Manners(parse);
            return Work.Ask(
                host,
                manners,
                options.Path(parse),
                (bar, stop) => Questions.Grow(plan, asked, bar, stop),
                result =>
                {
                    if (parse.GetValue(csv) is { } path && Work.Save(host, path, GrowthJson.Csv(result), replace: true) is not ExitCode.Done and int refused)
                    {
                        return refused;
                    }

                    Print(host, result, manners);
                    return ExitCode.For(result.Verdict);
                });
        }));
        return command;
    }

    private static void Print(Host host, GrowthResult result, Manners manners)
    {
        if (manners.Json)
        {
            host.Print(ResultJson.Write(result));
            return;
        }

        Work.Print(host, writer =>
        {
            GrowthScreen screen = new(writer, host.Style(manners.NoColor));
            (manners.Quiet ? (Action<GrowthResult>)screen.WriteShort : screen.Write)(result);
        });
    }
}

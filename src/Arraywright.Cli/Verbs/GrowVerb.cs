using System.CommandLine;
using System.Globalization;
using Arraywright.Files;
using Arraywright.Files.Keys;
using Arraywright.Growing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What more panels would bring.</summary>
internal static class GrowVerb
{
    private const int MostOfAll = 100;

    public static Command Create(Host host)
    {
        Command command = new("grow", "Adds panels one at a time: what each brings in a year, where it stops paying, which kind to buy.");
        Option<string> of = new("--of") { Description = "only this kind, at hand or a candidate", HelpName = "NAME" };
        Option<int?> most = Most();
        Option<double?> worth = Worth();
        Option<string> csv = new("--csv") { Description = "a file for the curves as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(of);
        command.Add(most);
        command.Add(worth);
        command.Add(csv);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            GrowthOptions asked = new() { Of = parse.GetValue(of), Most = parse.GetValue(most), WorthShare = parse.GetValue(worth) ?? GrowthOptions.Default.WorthShare };
            if (!Names(host, plan, asked) || PlanWeather.Find(host, plan, options.Path(parse)) is not { } weather)
            {
                return ExitCode.WrongInput;
            }

            Manners manners = options.Manners(parse);
            (GrowthResult result, _) = Work.UnderBar(host, manners, (bar, stop) => GrowthStudy.Run(plan, weather, asked, bar, stop));
            if (parse.GetValue(csv) is { } path && Work.Save(host, path, GrowthJson.Csv(result), replace: true) is not ExitCode.Done and int refused)
            {
                return refused;
            }

            Print(host, result, manners);
            return ExitCode.For(result.Verdict);
        }));
        return command;
    }

    private static bool Names(Host host, Plan plan, GrowthOptions asked)
    {
        if (!GrowthStudy.Kinds(plan, asked).IsEmpty)
        {
            return true;
        }

        string[] names = [.. plan.Panels.Concat(plan.Candidates).Select(stock => stock.Panel.Name)];
        string near = Nearest.Of(asked.Of!, names) is { } meant ? $"did you mean \"{meant}\"?" : $"the plan has {string.Join(", ", names)}";
        host.Error.WriteLine($"arraywright: --of: the plan has no panel \"{asked.Of}\"; {near}");
        return false;
    }

    private static Option<int?> Most() => new("--most")
    {
        Description = $"look at exactly so many more, 1 to {MostOfAll} (else until no string more is worth it, at most {GrowthOptions.UsualMost})",
        HelpName = "N",
        CustomParser = result =>
        {
            string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int most) && most is >= 1 and <= MostOfAll)
            {
                return most;
            }

            result.AddError($"--most: found \"{text}\"; expected a whole number from 1 to {MostOfAll}");
            return null;
        },
    };

    private static Option<double?> Worth() => new("--worth")
    {
        Description = "a panel is worth it while it adds this share of what the first of its kind adds, 1 % to 100 % (else 25 %)",
        HelpName = "PERCENT",
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(token => token.Value));
            string number = text.TrimEnd('%').TrimEnd();
            if (double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent) && percent is >= 1 and <= 100)
            {
                return percent / 100;
            }

            result.AddError($"--worth: found \"{text}\"; expected a share from 1 % to 100 %, such as 25%");
            return null;
        },
    };

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

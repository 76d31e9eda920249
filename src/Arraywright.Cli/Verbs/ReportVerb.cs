using System.CommandLine;
using System.Globalization;
using System.Text;
using Arraywright.Files;
using Arraywright.Presentation.Report;
using Arraywright.Presentation.Terminal;
using Arraywright.Print;

namespace Arraywright.Cli.Verbs;

/// <summary>One file to keep, print and hand over.</summary>
internal static class ReportVerb
{
    private const string Page = ".html";
    private const string Print = ".pdf";

    public static Command Create(Host host)
    {
        Command command = new("report", "Writes one file to keep, print and hand over: verdict, drawing, working, yield, order of connection.");
        Option<string> output = Output();
        Option<DateOnly?> date = Date();
        PlanOptions options = new PlanOptions().WithPlan(command);
        command.Add(output);
        command.Add(date);
        options.WithManners(command).WithConditions(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            string path = parse.GetRequiredValue(output);
            (ReportSubject subject, _) = Work.UnderBar(host, manners, (bar, stop) => ReportSubject.Run(plan, options.Planner(parse), parse.GetValue(date), bar, stop));
            if (Save(host, path, ReportBuilder.Of(subject)) is not ExitCode.Done and int refused)
            {
                return refused;
            }

            if (manners.Json)
            {
                host.Print(ResultJson.WriteReport(subject.Result, subject.Verdict, path));
            }
            else
            {
                Work.Print(host, writer => PlanScreen.WriteVerdict(writer, subject.Verdict, subject.Sentence, host.Style(manners.NoColor)));
            }

            return ExitCode.For(subject.Verdict);
        }));
        return command;
    }

    private static Option<string> Output()
    {
        Option<string> output = new("--output", "-o") { Description = "the file to write, .html or .pdf; one that is there is replaced", HelpName = "FILE", Required = true };
        output.Validators.Add(result =>
        {
            string path = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (!Ends(path, Page) && !Ends(path, Print))
            {
                result.AddError($"--output: found \"{path}\"; expected a file whose name ends in {Page} or {Print}");
            }
        });
        return output;
    }

    private static Option<DateOnly?> Date() => new("--date")
    {
        Description = "a date to print on it; without one there is none",
        HelpName = "YYYY-MM-DD",
        CustomParser = result =>
        {
            string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
            {
                return date;
            }

            result.AddError($"--date: found \"{text}\"; expected a date such as 2026-06-21");
            return null;
        },
    };

    private static int Save(Host host, string path, ReportDocument report)
    {
        if (Ends(path, Page))
        {
            return Work.Save(host, path, Encoding.UTF8.GetBytes(HtmlReport.Of(report)), replace: true);
        }

        PdfFile print = PdfReport.Of(report);
        int saved = Work.Save(host, path, print.Bytes, replace: true);
        if (saved == ExitCode.Done && !print.IsEverySignKnown)
        {
            host.Error.WriteLine($"arraywright: \"{path}\" has Latin, Greek and Cyrillic letters only; its first page says what stands for the others, and a report that ends in {Page} keeps them");
        }

        return saved;
    }

    private static bool Ends(string path, string extension) => string.Equals(Path.GetExtension(path), extension, StringComparison.OrdinalIgnoreCase);
}

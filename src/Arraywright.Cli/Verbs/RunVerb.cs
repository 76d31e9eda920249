using System.CommandLine;
using Arraywright.Files.Asking;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>What the verbs share that run a wiring through weather: their options, and how the result is saved and printed.</summary>
/// <typeparam name="T">The result.</typeparam>
internal sealed class RunVerb<T>
    where T : RunResult
{
    private readonly Option<bool> _hourly = new("--no-spread") { Description = "take each hour at its mean, without its bright and clouded minutes" };
    private readonly Option<string> _csv;
    private readonly Option<int?> _step = ValueOption.Create(AskedOptions.Step);
    private readonly PictureOption _chart;
    private readonly PlanOptions _options;

    /// <summary>Adds the options.</summary>
    /// <param name="command">The verb, with the options of its own.</param>
    /// <param name="rows">What the rows of its table are: "months".</param>
    public RunVerb(Command command, string rows)
    {
        _csv = new("--csv") { Description = $"a file for the {rows} as comma-separated text; one that is there is replaced", HelpName = "FILE" };
        command.Add(_hourly);
        command.Add(_csv);
        command.Add(_step);
        _chart = new PictureOption(command);
        _options = new PlanOptions().WithPlan(command).WithManners(command);
    }

    /// <summary>The result as comma-separated text.</summary>
    public required Func<T, string> Csv { get; init; }

    /// <summary>Its chart.</summary>
    public required Func<T, Chart> Chart { get; init; }

    /// <summary>The result as JSON.</summary>
    public required Func<T, string> Json { get; init; }

    /// <summary>Writes it for a person, or its answer alone.</summary>
    public required Action<T, TextWriter, TerminalStyle, bool> Screen { get; init; }

    /// <summary>Reads, runs, saves, prints.</summary>
    /// <param name="host">The outside.</param>
    /// <param name="parse">The command line.</param>
    /// <param name="run">Runs the plan through its weather.</param>
    public int Run(Host host, ParseResult parse, Func<Plan, EnergyQuestion, IProgress<double>, CancellationToken, Asked<T>> run) => Work.WithPlan(host, _options.Path(parse), plan =>
    {
        Manners manners = _options.Manners(parse);
        EnergyQuestion energy = new(parse.GetValue(_step), parse.GetValue(_hourly));
        return Work.Ask(host, manners, _options.Path(parse), (bar, stop) => run(plan, energy, bar, stop), result => Told(host, parse, manners, result));
    });

    private int Told(Host host, ParseResult parse, Manners manners, T result)
    {
        if (parse.GetValue(_csv) is { } path && Work.Save(host, path, Csv(result), replace: true) is not ExitCode.Done and int refused)
        {
            return refused;
        }

        if (_chart.Save(host, parse, () => Chart(result)) is not ExitCode.Done and int unsaved)
        {
            return unsaved;
        }

        if (manners.Json)
        {
            host.Print(Json(result));
        }
        else
        {
            Work.Print(host, writer => Screen(result, writer, host.Style(manners.NoColor), manners.Quiet));
        }

        return ExitCode.For(result.Verdict);
    }
}

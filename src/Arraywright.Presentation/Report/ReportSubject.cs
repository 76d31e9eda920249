using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Parts.Connecting;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report;

/// <summary>Everything that a report is about.</summary>
public sealed record ReportSubject
{
    /// <summary>The answer; its first design is the one reported.</summary>
    public required PlanResult Result { get; init; }

    /// <summary>The year of that design; null where there is no weather to run it through.</summary>
    public required YearResult? Year { get; init; }

    /// <summary>The curve of each connected input.</summary>
    public required ImmutableArray<CurveResult> Curves { get; init; }

    /// <summary>What meters show at each part of each input's array, in plan order.</summary>
    public required ImmutableArray<ArrayReading?> Readings { get; init; }

    /// <summary>Everything between the panels and the units.</summary>
    public required PartsList Parts { get; init; }

    /// <summary>How it is connected.</summary>
    public required ConnectionOrder Order { get; init; }

    /// <summary>The program and its version.</summary>
    public required string Program { get; init; }

    /// <summary>The date to print on it; null for none.</summary>
    public required DateOnly? Date { get; init; }

    /// <summary>The worst that is said of the wiring, its labels and its parts.</summary>
    public Level Verdict => Parts.Verdict;

    /// <summary>The verdict in one sentence: the wiring's own, or what is against the parts where that is worse.</summary>
    public string Sentence => Verdict > Result.Verdict ? PartsScreen.Sentence(Parts) : VerdictSentence.Of(Result);

    /// <summary>The worst that is said of one input's wiring, its labels and its parts: beside a stopped input another may keep every rule.</summary>
    public Level VerdictOf(Assignment assignment) => Parts.Plan.Doubted(Parts.Inputs
        .Where(input => input.Input == assignment.Input)
        .SelectMany(input => input.Pieces)
        .SelectMany(piece => piece.Findings)
        .Select(finding => finding.Level)
        .Append(assignment.Verdict)
        .Max());

    /// <summary>The connected inputs whose own verdict is the whole's, in plan order; empty where only the whole is judged so.</summary>
    public IEnumerable<string> Against => Connected.Where(assignment => VerdictOf(assignment) == Verdict).Select(assignment => assignment.Input);

    /// <summary>The inputs that something is connected to.</summary>
    public IEnumerable<Assignment> Connected => Design.Assignments.Where(assignment => assignment.Wiring is not null);

    /// <summary>The design reported.</summary>
    public Design Design => Result.Designs[0];

    /// <summary>The stated wiring, or the best where none is stated, with its year where there is weather for one.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">The conditions its operating points are of.</param>
    /// <param name="date">The date to print on it; null for none.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends it early.</param>
    public static ReportSubject Run(Plan plan, PlannerOptions options, DateOnly? date, IProgress<double>? progress, CancellationToken cancellation)
    {
        PlanResult result = plan.Inputs.Any(planned => planned.StatedWiring is not null)
            ? Planner.Check(plan, options)
            : Planner.Answer(plan, options, progress, cancellation);
        return Of(result, plan.WeatherYear ?? SyntheticYear.For(plan), options, date, cancellation);
    }

    /// <summary>Works out what a report says beside the answer itself.</summary>
    /// <param name="result">The answer.</param>
    /// <param name="weather">The weather of its year; null where there is none.</param>
    /// <param name="options">The conditions its operating points are of.</param>
    /// <param name="date">The date to print on it; null for none.</param>
    /// <param name="cancellation">Ends it early.</param>
    private static ReportSubject Of(PlanResult result, WeatherYear? weather, PlannerOptions options, DateOnly? date, CancellationToken cancellation)
    {
        PartsList parts = PartsStudy.Of(result, options, cancellation);
        (Plan plan, Design design) = (result.Plan, result.Designs[0]);
        return new ReportSubject
        {
            Result = result,
            Year = weather is null ? null : YearStudy.Of(plan, design, weather, EnergyOptions.Default),
            Curves = CurveStudy.Of(result, options),
            Readings = ReadingStudy.Of(plan, design, options),
            Parts = parts,
            Order = ConnectionPlanner.Of(parts, options.Conditions),
            Program = ProgramVersion.Line,
            Date = date,
        };
    }
}

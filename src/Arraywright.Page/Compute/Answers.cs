using System.Diagnostics;
using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Files;
using Arraywright.Files.Drafts;
using Arraywright.Growing;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Report;

namespace Arraywright.Page.Compute;

/// <summary>Reads the plan of a question, runs the study it asks for, and hands on what it says.</summary>
internal static class Answers
{
    /// <summary>One person works at one place: typing a label leaves its sun as it is.</summary>
    private static readonly SunMemory Kept = new(2);

    /// <summary>Where the best comes no later than this, the wiring of before is not judged first: that would only keep it waiting.</summary>
    private static readonly TimeSpan WorthWaiting = TimeSpan.FromMilliseconds(200);

    /// <summary>How long the best of the last plan was looked for.</summary>
    private static TimeSpan _bestTook;

    /// <summary>Weather files given so far.</summary>
    public static WeatherShelf Weather { get; } = new();

    /// <summary>Answers a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <returns>The replies, each worked out when it is asked for; or the name of the weather file to be given first.</returns>
    public static (IEnumerable<Reply> Replies, string? Lacking) To(Question question, IProgress<double> progress)
    {
        PlanReading reading = PlanFile.Read(question.Text, "plan");
        if (reading.Plan is not { } named)
        {
            return ([Refused(reading.Faults)], null);
        }

        if (Weather.Lacking(named) is { } file)
        {
            return ([], file);
        }

        (Plan? plan, IReadOnlyList<Fault> faults) = Weather.With(named);
        return (plan is null ? [Refused(faults)] : Answer(plan, question, progress), null);
    }

    private static Reply Refused(IEnumerable<Fault> faults) => new() { Refusal = string.Join('\n', faults) };

    private static IEnumerable<Reply> Answer(Plan plan, Question question, IProgress<double> progress)
    {
        PlannerOptions options = new(new StatedConditions(question.IrradianceWPerM2, null, question.AirC, null)) { Memory = Kept };
        return question.Kind switch
        {
            QuestionKind.Plan => Best(plan, question, options, progress),
            QuestionKind.Check => [Check(plan, options)],
            _ => Studied(plan, question, options, progress),
        };
    }

    private static Reply Check(Plan plan, PlannerOptions options) => plan.Inputs.All(input => input.StatedWiring is null)
        ? new Reply { Refusal = "No panel is connected to any input yet." }
        : new Reply { Answer = AnswerMaker.Of(Planner.Check(plan, options), AnswerStage.Whole) };

    private static IEnumerable<Reply> Best(Plan plan, Question question, PlannerOptions options, IProgress<double> progress)
    {
        Telling telling = new(question.Before, options);
        if (_bestTook > WorthWaiting && AsBefore(plan, question) is { } before)
        {
            foreach (Reply reply in telling.Tell(Planner.Check(before, options), AnswerStage.Before))
            {
                yield return reply;
            }
        }

        Stopwatch watch = Stopwatch.StartNew();
        foreach ((PlanResult result, bool isWhole) in Planner.Steps(plan, options, progress, CancellationToken.None))
        {
            if (watch.IsRunning)
            {
                watch.Stop();
                _bestTook = watch.Elapsed;
            }

            foreach (Reply reply in telling.Tell(result, isWhole ? AnswerStage.Whole : AnswerStage.Best))
            {
                yield return reply;
            }
        }
    }

    /// <summary>The plan with the wirings on the screen stated, to be judged without their year; null where there are none, or the plan lacks the panels for them now.</summary>
    private static Plan? AsBefore(Plan plan, Question question) =>
        question.Before.Any(wiring => wiring is not null) && PlanDraft.Stating(question.Text, question.Before) is { } text && PlanFile.Read(text, "plan").Plan is { } before
            ? before with { Goal = Goal.Peak, WeatherYear = plan.WeatherYear }
            : null;

    private static IEnumerable<Reply> Studied(Plan plan, Question question, PlannerOptions options, IProgress<double> progress)
    {
        yield return Study(plan, question, options, progress) is { } sheet ? new Reply { Sheet = sheet } : new Reply { Refusal = NoWeather(plan) };
    }

    /// <returns>Null where it needs weather and there is none.</returns>
    private static Sheet? Study(Plan plan, Question question, PlannerOptions options, IProgress<double> progress)
    {
        switch (question.Kind)
        {
            case QuestionKind.Parts:
                return PartsSheet.Of(PartsStudy.Run(plan, options, progress, CancellationToken.None), options);
            case QuestionKind.Ask:
                return AskSheet.Of(Planner.Ask(plan, options, progress, CancellationToken.None));
            case QuestionKind.Netlist:
                return NetlistSheet.Of(CurveStudy.RunAll(plan, options, progress, CancellationToken.None));
            case QuestionKind.Report:
                return ReportSheet.Of(ReportSubject.Run(plan, options, question.Date, progress, CancellationToken.None));
        }

        if ((plan.WeatherYear ?? SyntheticYear.For(plan)) is not { } weather)
        {
            return null;
        }

        return question.Kind switch
        {
            QuestionKind.Year => EnergySheets.Of(YearStudy.Run(plan, weather, EnergyOptions.Default, progress, CancellationToken.None)),
            QuestionKind.Day => EnergySheets.Of(DayStudy.Run(plan, weather, question.Date ?? new DateOnly(2023, 6, 21), question.IsClear, EnergyOptions.Default, progress, CancellationToken.None)),
            QuestionKind.Tilt => TiltStudy.Turns(plan)
                ? GrowingSheets.Of(TiltStudy.Run(plan, weather, question.Date, EnergyOptions.Default, progress, CancellationToken.None))
                : new Sheet("", [Block.Of(BlockKind.Paragraph, "Every panel has a tilt or direction of its own, so there is nothing to turn together.")]),
            QuestionKind.Grow => GrowingSheets.Of(GrowthStudy.Run(plan, weather, GrowthOptions.Default, progress, CancellationToken.None)),
            _ => new Sheet("", []),
        };
    }

    private static string NoWeather(Plan plan) => plan.Place is null
        ? "The plan names no place yet: a year, a day and a tilt need one."
        : "The built-in climate does not know this place: it is over open sea.";
}

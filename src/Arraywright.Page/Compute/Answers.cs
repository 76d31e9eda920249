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
    private static readonly TimeSpan WorthWaiting = TimeSpan.FromMilliseconds(100);

    /// <summary>How long the best of the last plan was looked for.</summary>
    private static TimeSpan _bestTook;

    /// <summary>Weather files given so far.</summary>
    public static WeatherShelf Weather { get; } = new();

    /// <summary>Answers a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="send">Takes each reply as it is ready.</param>
    /// <returns>Name of the weather file to be given first, and nothing answered then; null once it is answered.</returns>
    public static string? To(Question question, IProgress<double> progress, Action<Reply> send)
    {
        PlanReading reading = PlanFile.Read(question.Text, "plan");
        if (reading.Plan is not { } named)
        {
            send(new Reply { Refusal = string.Join('\n', reading.Faults) });
            return null;
        }

        if (Weather.Lacking(named) is { } file)
        {
            return file;
        }

        (Plan? plan, IReadOnlyList<Fault> faults) = Weather.With(named);
        if (plan is null)
        {
            send(new Reply { Refusal = string.Join('\n', faults) });
            return null;
        }

        Answer(plan, question, progress, send);
        return null;
    }

    private static void Answer(Plan plan, Question question, IProgress<double> progress, Action<Reply> send)
    {
        PlannerOptions options = new(new StatedConditions(question.IrradianceWPerM2, null, question.AirC, null)) { Memory = Kept };
        if (question.Kind is QuestionKind.Plan or QuestionKind.Check)
        {
            Design(plan, question, options, progress, send);
            return;
        }

        send(Study(plan, question, options, progress) is { } sheet ? new Reply { Sheet = sheet } : new Reply { Refusal = NoWeather(plan) });
    }

    private static void Design(Plan plan, Question question, PlannerOptions options, IProgress<double> progress, Action<Reply> send)
    {
        bool isCheck = question.Kind == QuestionKind.Check;
        if (isCheck && plan.Inputs.All(input => input.StatedWiring is null))
        {
            send(new Reply { Refusal = "No panel is connected to any input yet." });
            return;
        }

        Telling telling = new(question.Before, options, send);
        if (isCheck)
        {
            telling.Tell(Planner.Check(plan, options), AnswerStage.Whole);
            return;
        }

        if (_bestTook > WorthWaiting && AsBefore(plan, question) is { } before)
        {
            telling.Tell(Planner.Check(before, options), AnswerStage.Before);
        }

        Stopwatch watch = Stopwatch.StartNew();
        TimeSpan? bestTook = null;
        PlannerOptions early = options with
        {
            Early = best =>
            {
                bestTook = watch.Elapsed;
                telling.Tell(best, AnswerStage.Best);
            },
        };
        PlanResult result = Planner.Answer(plan, early, progress, CancellationToken.None);
        _bestTook = bestTook ?? watch.Elapsed;
        telling.Tell(result, AnswerStage.Whole);
    }

    /// <summary>The plan with the wirings on the screen stated, to be judged without their year; null where there are none, or the plan lacks the panels for them now.</summary>
    private static Plan? AsBefore(Plan plan, Question question) =>
        question.Before.Any(wiring => wiring is not null) && PlanDraft.Stating(question.Text, question.Before) is { } text && PlanFile.Read(text, "plan").Plan is { } before
            ? before with { Goal = Goal.Peak, WeatherYear = plan.WeatherYear }
            : null;

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

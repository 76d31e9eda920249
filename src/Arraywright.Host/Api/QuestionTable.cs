using System.Collections.Immutable;
using System.Diagnostics;
using Arraywright.Files;
using Arraywright.Files.Asking;
using Arraywright.Growing;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Report;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Host.Api;

/// <summary>Every question: routes, options and the OpenAPI document follow from this table.</summary>
internal static class QuestionTable
{
    private static readonly ImmutableArray<QueryOption> Conditions =
    [
        new ValueOption<double>(AskedOptions.Irradiance, "number"),
        new ValueOption<double>(AskedOptions.Cell, "number"),
        new ValueOption<double>(AskedOptions.Air, "number"),
        new ValueOption<double>(AskedOptions.Wind, "number"),
    ];

    private static readonly QueryOption Input = new NameOption("input", "which input, where the plan has several (else the first with a wiring)");
    private static readonly QueryOption Hourly = new FlagOption("no-spread", "take each hour at its mean, without its bright and clouded minutes");
    private static readonly QueryOption Step = new ValueOption<int>(AskedOptions.Step, "integer");

    /// <summary>All of them, in the order of the command's help.</summary>
    public static ImmutableArray<Question> All { get; } =
    [
        new("plan", "Finds, proves and ranks the wirings of the panels at hand.", Conditions, Plan)
        {
            IsLong = true,
            GivesBestSoFar = true,
            Members = AnswerMembers.Plan,
        },
        new("check", "Judges the wiring that the plan states.", Conditions, (plan, query, _) =>
            Text(Questions.Check(plan, query.Planner), result => ResultJson.Write(result)))
        {
            Members = AnswerMembers.Check,
        },
        new("curve", "Shows amps and watts over volts, and what the input takes.", [Input, .. Conditions], (plan, query, stop) =>
            Text(Questions.Curve(plan, query.Name("input"), query.Planner, null, stop), ResultJson.Write))
        {
            Members = AnswerMembers.Curve,
        },
        new("day", "Runs the stated or best wiring through one day, hour by hour.", [new ValueOption<DateOnly>(AskedOptions.Date, "string", IsRequired: true), new FlagOption("clear", "a clear sky at that day's temperatures, in place of the weather's sun"), Hourly, Step], (plan, query, stop) =>
            Text(Questions.Day(plan, query.Value(AskedOptions.Date)!.Value, query.IsSet("clear"), query.Energy, null, stop), ResultJson.Write))
        {
            IsLong = true,
            Members = AnswerMembers.Day,
        },
        new("year", "Runs the stated or best wiring through a year: what it brings, and where the rest goes.", [Hourly, Step], (plan, query, stop) =>
            Text(Questions.Year(plan, query.Energy, null, stop), ResultJson.Write))
        {
            IsLong = true,
            Members = AnswerMembers.Year,
        },
        new("parts", "Sizes cable, connectors, fuses and switch of the stated or best wiring, and writes the shopping list.", Conditions, (plan, query, stop) =>
            ResultJson.Write(PartsStudy.Run(plan, query.Planner, null, stop)))
        {
            IsLong = true,
            Members = AnswerMembers.Parts,
        },
        new("grow", "Adds panels one at a time: what each brings in a year, where it stops paying, which kind to buy.", [new NameOption("of", "only this kind, at hand or a candidate"), new ValueOption<int>(AskedOptions.Most, "integer"), new ValueOption<double>(AskedOptions.Worth, "string")], (plan, query, stop) =>
            Text(Questions.Grow(plan, Growth(query), null, stop), ResultJson.Write))
        {
            IsLong = true,
            Members = AnswerMembers.Grow,
        },
        new("tilt", "Finds the best tilt and direction for the stated or best wiring.", [new ValueOption<DateOnly>(AskedOptions.Date, "string")], (plan, query, stop) =>
            Text(Questions.Tilt(plan, query.Value(AskedOptions.Date), null, stop), ResultJson.Write))
        {
            IsLong = true,
            Members = AnswerMembers.Tilt,
        },
        new("ask", "Writes the letter to the maker of an input.", [], (plan, query, stop) => ResultJson.Write(Planner.Ask(plan, query.Planner, null, stop)))
        {
            IsLong = true,
            Members = AnswerMembers.Ask,
        },
        new("report", "Writes one page to keep, print and hand over: verdict, drawing, working, yield, order of connection.", Conditions, (plan, query, stop) =>
            HtmlReport.Of(ReportBuilder.Of(ReportSubject.Run(plan, query.Planner, date: null, null, stop))))
        {
            IsLong = true,
            AnswerType = "text/html",
        },
        new("netlist", "Writes the wiring as a SPICE netlist, for a second opinion.", [Input, .. Conditions], (plan, query, stop) =>
            Text(Questions.Curve(plan, query.Name("input"), query.Planner, null, stop), curve => Netlist.Write(CurveTitle.Of(curve), curve.Circuit, curve.VoltageV[^1], Netlist.UsualSteps)))
        {
            AnswerType = "text/plain",
        },
        new("quick", "May I connect these to that? Labels in one line, no plan file.", Conditions, Plan)
        {
            GivesBestSoFar = true,
            Read = QuickBody.Read,
            BodyTypes = ["application/json"],
            Members = AnswerMembers.Plan,
        },
    ];

    private static Asked<string> Plan(Plan plan, QueryValues query, CancellationToken stop)
    {
        long began = Stopwatch.GetTimestamp();
        PlanResult result = Planner.Answer(plan, query.Planner, null, stop);
        return ResultJson.Write(result, Stopwatch.GetElapsedTime(began).TotalSeconds);
    }

    private static GrowthOptions Growth(QueryValues query) => new()
    {
        Of = query.Name("of"),
        Most = query.Value(AskedOptions.Most),
        WorthShare = query.Value(AskedOptions.Worth) ?? GrowthOptions.Default.WorthShare,
    };

    private static Asked<string> Text<T>(Asked<T> asked, Func<T, string> write)
        where T : class => asked.Result is { } result ? write(result) : asked.Refusal!;
}

using Arraywright.Presentation.Report.Sections;

namespace Arraywright.Presentation.Report;

/// <summary>Puts a report together: its sections in the order in which a person who builds it needs them.</summary>
public static class ReportBuilder
{
    /// <summary>The report on a subject.</summary>
    public static ReportDocument Of(ReportSubject subject) => new()
    {
        Title = subject.Result.Plan.Name,
        Subject = "Wiring of solar panels on direct-current inputs: verdict, drawing, working, order of connection",
        Program = subject.Program,
        Date = subject.Date,
        Names = [.. Names(subject.Result.Plan)],
        Sections =
        [
            VerdictSection.Of(subject),
            GivenSection.Of(subject.Result.Plan),
            WiringSection.Of(subject),
            FindingsSection.Of(subject),
            EarningsSection.Of(subject),
            PartsSection.Of(subject.Parts),
            ConnectingSection.Of(subject),
            NeverSection.Of(subject.Order),
            AssumedSection.Of(subject),
            CautionsSection.Of(subject.Parts),
            SourcesSection.Of(subject),
        ],
    };

    private static IEnumerable<ReportName> Names(Plan plan) =>
    [
        .. plan.Panels.Select((stock, index) => new ReportName("panel", index + 1, stock.Panel.Name)),
        .. plan.Inputs.Select((planned, index) => new ReportName("input", index + 1, planned.Input.Name)),
        .. plan.Units.Select((unit, index) => new ReportName("unit", index + 1, unit.Name)),
    ];
}

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
        Sections =
        [
            VerdictSection.Of(subject),
            GivenSection.Of(subject.Result.Plan),
            WiringSection.Of(subject),
            FindingsSection.Of(subject),
            EarningsSection.Of(subject),
            PartsSection.Of(subject.Parts),
            ConnectingSection.Of(subject.Order),
            NeverSection.Of(subject.Order),
            AssumedSection.Of(subject),
            CautionsSection.Of(subject.Parts),
            SourcesSection.Of(subject),
        ],
    };
}

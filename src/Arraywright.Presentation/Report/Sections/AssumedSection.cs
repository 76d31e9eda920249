using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What the plan left out and what was taken instead.</summary>
internal static class AssumedSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        Assumption[] assumed = [.. AssumedGroups.Of(subject.Parts.Assumed.Concat(subject.Year?.Assumed ?? []).Distinct(), subject.Result.Plan.Panels)];
        return new ReportSection("assumed", "What was assumed", assumed.Length == 0
            ? [new ReportBlock.Paragraph("Nothing: the plan states everything that was needed.")]
            : [new ReportBlock.Bullets([.. assumed.Select(one => new ReportItem($"{one.What}: {one.Value}.", AssumedList.Sentence(one.Why)))])]);
    }
}

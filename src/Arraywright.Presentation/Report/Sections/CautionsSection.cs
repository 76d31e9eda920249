using Arraywright.Parts;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What to have in mind before touching anything.</summary>
internal static class CautionsSection
{
    public static ReportSection Of(PartsList parts) => new(
        "cautions",
        "Before you touch a lead",
        [new ReportBlock.Bullets([.. parts.Cautions.Select(caution => new ReportItem("", caution))])]);
}

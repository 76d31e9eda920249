using Arraywright.Parts.Connecting;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What must not be done.</summary>
internal static class NeverSection
{
    public static ReportSection Of(ConnectionOrder order) => new(
        "never",
        "What must never be done",
        [new ReportBlock.Bullets([.. order.Never.Select(one => new ReportItem($"Never {one.What}:", one.Why))])]);
}

using Arraywright.Gear;

namespace Arraywright.Tests.Gear;

public sealed class PanelReaderTests
{
    public static TheoryData<PanelLabel> Genuine => GenuineLabels.All;

    [Theory]
    [MemberData(nameof(Genuine))]
    public void A_genuine_label_gives_a_panel_without_doubt(PanelLabel label)
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
        Assert.Equal([], doubts);
        Assert.NotNull(panel);
    }

    [Theory]
    [MemberData(nameof(Genuine))]
    public void A_genuine_label_with_power_voc_and_isc_only_splits_its_power_within_five_percent(PanelLabel label)
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label with { MaximumPowerV = null, MaximumPowerA = null });
        Assert.Equal([], doubts);
        Assert.NotNull(panel);
        Assert.InRange(panel.MaximumPowerV.Value / label.MaximumPowerV!.Value, 0.95, 1.05);
    }
}

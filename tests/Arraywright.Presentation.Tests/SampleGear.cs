using Arraywright.Gear;

namespace Arraywright.Presentation.Tests;

/// <summary>Panels and inputs of the hill farm, made by hand.</summary>
internal static class SampleGear
{
    public static Panel Shed120 { get; } = new()
    {
        Name = "shed-120",
        PowerW = Sourced.Given(120.0),
        OpenCircuitV = 22.9,
        ShortCircuitA = 6.72,
        MaximumPowerV = Sourced.Given(18.9),
        MaximumPowerA = Sourced.Given(6.35),
        OpenCircuitPerK = Sourced.Given(-0.0029),
        ShortCircuitPerK = Sourced.Given(0.0005),
        Cells = Sourced.Given(36),
        BypassDiodes = Sourced.Given(2),
        MaxSeriesFuseA = 15,
        MaxSystemVoltageV = 600,
        ToleranceFraction = Sourced.Given(0.03),
        Technology = Sourced.Assumed(Technology.CrystallineSilicon, "not stated"),
    };

    public static Panel Dairy60 { get; } = Shed120 with
    {
        Name = "dairy-60",
        PowerW = Sourced.Given(60.0),
        OpenCircuitV = 22.4,
        ShortCircuitA = 3.55,
        MaximumPowerV = Sourced.Given(18.4),
        MaximumPowerA = Sourced.Given(3.26),
        MaxSeriesFuseA = 10,
    };

    public static DcInput StoreA { get; } = new()
    {
        Name = "store-a",
        MaxVoltageV = 50,
        StartVoltageV = 12,
        TrackingMinV = 12,
        TrackingMaxV = 45,
        MaxCurrent = new Limit(10, new Evidence(EvidenceKind.Manual, 0, null)),
        MaxShortCircuitCurrent = new Limit(14, new Evidence(EvidenceKind.Maker, 0, "letter of 2026-03-02, \"array short-circuit current\"")),
        MaxPower = new Limit(400, new Evidence(EvidenceKind.Label, 0, null)),
        EfficiencyFraction = 0.95,
    };

    public static DcInput StoreB { get; } = new()
    {
        Name = "store-b",
        MaxVoltageV = 30,
        RatedCurrent = new Limit(8, Evidence.Nothing),
        MaxPower = new Limit(100, Evidence.Nothing),
    };

    public static Plan Plan(DcInput[] inputs, params (Panel Panel, int Count)[] panels) => new()
    {
        Name = "Lambing shed, north field",
        Goal = Goal.Peak,
        Place = new Place(54.6, -3.1, 210, -14, null),
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [.. panels.Select(stock => new PanelStock(stock.Panel, stock.Count, Shade.None, null))],
        Inputs = [.. inputs.Select(input => new PlannedInput(input, null))],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Assumed(1.0, "usual"), Sourced.Assumed(4.0, "usual"), Sourced.Assumed(0.0005, "usual")),
        Assumed = [],
        Doubts = [],
    };
}

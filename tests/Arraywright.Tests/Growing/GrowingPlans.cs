using Arraywright.Gear;

namespace Arraywright.Tests.Growing;

/// <summary>Small plans to grow and to turn.</summary>
internal static class GrowingPlans
{
    public static readonly Place Farm = new(54.6, -3.1, 200, -14, null);

    /// <summary>An input that limits nothing but volts.</summary>
    public static readonly DcInput Open = new()
    {
        Name = "store",
        MaxVoltageV = 60,
        MaxShortCircuitCurrent = new Limit(60, Manual),
        MaxPower = new Limit(5000, Manual),
    };

    public static Evidence Manual => new(EvidenceKind.Manual, 0, null);

    public static PanelStock Stock(string name, int count, double? price = null, double vocV = 22.9, double iscA = 6.72) => new(
        PanelReader.Read(new PanelLabel
        {
            Name = name,
            PowerW = 0.825 * 0.945 * vocV * iscA,
            OpenCircuitV = vocV,
            ShortCircuitA = iscA,
            MaximumPowerV = 0.825 * vocV,
            MaximumPowerA = 0.945 * iscA,
            OpenCircuitPerK = -0.0029,
            ToleranceFraction = 0.03,
            MaxSeriesFuseA = 100,
            Price = price,
        }).Panel!,
        count,
        Shade.None,
        null);

    public static Plan With(DcInput input, Place? place = null, params PanelStock[] stocks) => new()
    {
        Name = "sawmill",
        Goal = Goal.Year,
        Place = place ?? Farm,
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [.. stocks],
        Inputs = [new PlannedInput(input, null)],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
        Currency = "EUR",
        Assumed = [],
        Doubts = [],
    };
}

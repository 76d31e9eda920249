using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Gear;

namespace Arraywright.Tests.Climate;

/// <summary>Small plans that differ only in what the climate looks at.</summary>
internal static class ClimatePlans
{
    public static readonly Mount Rack = new(35, 180, MountKind.OpenRack);

    public static Place Phoenix(double? coldestC = null) => new(33.43, -112.0, 340, coldestC, null);

    public static Place London(double? coldestC = null) => new(51.48, -0.45, 25, coldestC, null);

    public static Plan With(Place? place, Goal goal = Goal.Year, params ImmutableArray<PanelStock> stocks) => new()
    {
        Name = "Lambing shed",
        Goal = goal,
        Place = place,
        Mount = Rack,
        Panels = stocks.IsDefaultOrEmpty ? [Stock("shed-120")] : stocks,
        Inputs = [],
        Units = [],
        Cable = new Cable(Sourced.Given(1.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0)),
        Assumed = [],
        Doubts = [],
    };

    /// <summary>Two hours of a night and, where it is given, one of a morning.</summary>
    public static WeatherYear Cold(double nightC, double? morningC, double elevationM = 340) => new(
        new WeatherPlace(33.43, -112, elevationM),
        [
            new WeatherStep(new DateTime(2021, 1, 5, 4, 0, 0), 0, 0, 0, nightC + 1, 1),
            new WeatherStep(new DateTime(2021, 1, 5, 5, 0, 0), 0, 0, 0, nightC, 1),
            .. morningC is { } airC ? [new WeatherStep(new DateTime(2021, 1, 5, 9, 0, 0), 100, 300, 50, airC, 1)] : Array.Empty<WeatherStep>(),
        ],
        1,
        -7,
        "made up for tests",
        []);

    public static PanelStock Stock(string name, double? noctC = null, MountKind? kind = null, Shade? shade = null) =>
        new(Panel(name, noctC), 2, shade ?? Shade.None, kind is { } own ? new Mount(0, 180, own) : null);

    private static Panel Panel(string name, double? noctC) => new()
    {
        Name = name,
        PowerW = Sourced.Given(120.0),
        OpenCircuitV = 22.9,
        ShortCircuitA = 6.72,
        MaximumPowerV = Sourced.Given(18.9),
        MaximumPowerA = Sourced.Given(6.35),
        OpenCircuitPerK = Sourced.Given(-0.0029),
        ShortCircuitPerK = Sourced.Given(0.0005),
        Cells = Sourced.Given(36),
        BypassDiodes = Sourced.Given(2),
        ToleranceFraction = Sourced.Given(0.03),
        NoctC = noctC,
        Technology = Sourced.Given(Technology.CrystallineSilicon),
    };
}

using System.Collections.Immutable;

namespace Arraywright.Energy;

/// <summary>Where a span's energy goes, in the words of the ladder of watts. The steps add up to the levels.</summary>
internal static class EnergyLadder
{
    private static readonly ImmutableArray<(Stage Stage, string Name)> Steps =
    [
        (Stage.Incidence, "low sun on glass, horizon and dirt"),
        (Stage.WeakSun, "weak sun"),
        (Stage.Heat, "heat"),
        (Stage.Shade, "shade"),
        (Stage.Mismatch, "mismatch"),
        (Stage.Cable, "cable and contacts"),
        (Stage.CurrentLimit, "current limit"),
        (Stage.PowerLimit, "power limit"),
        (Stage.VoltageWindow, "voltage window and start"),
    ];

    private static readonly ImmutableArray<(Stage Stage, string Name)> After =
    [
        (Stage.Conversion, "conversion and own use"),
        (Stage.BatteryFull, "battery full"),
    ];

    /// <summary>The ladder: the label's level, each loss, the level into the unit, what is lost after it, and the level used.</summary>
    public static ImmutableArray<EnergyStep> Of(EnergySpan span)
    {
        var steps = ImmutableArray.CreateBuilder<EnergyStep>();
        double levelKWh = span.LevelsKWh[(int)Stage.Label];
        steps.Add(new EnergyStep("label", levelKWh));
        Fall(Steps);
        steps.Add(new EnergyStep("into the unit", levelKWh));
        Fall(After);
        steps.Add(new EnergyStep("used or stored", levelKWh));
        return steps.ToImmutable();

        void Fall(ImmutableArray<(Stage Stage, string Name)> stages)
        {
            foreach ((Stage stage, string name) in stages)
            {
                double nextKWh = span.LevelsKWh[(int)stage];
                steps.Add(new EnergyStep(name, levelKWh - nextKWh));
                levelKWh = nextKWh;
            }
        }
    }
}

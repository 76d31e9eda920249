using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Files;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>Plans with their stated wirings that years are checked with.</summary>
internal static class ReferencePlans
{
    /// <summary>Two rows of four, no two kinds alike: one kind turned west, one shaded in the morning, one with a shaded group; thin and long cable; all limits near enough to bite.</summary>
    public const string TwoRowsOfFour = """
        plan: two rows of four
        goal: year
        place: { latitude: 54.6, longitude: -3.1, elevation: 210 m, coldest: -14 C }
        mount: { tilt: 40 deg, azimuth: 180 deg, kind: open rack }
        panels:
          - { name: a, count: 3, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, voc_temperature: -0.29 %/K, cells: 36, bypass_diodes: 2 }
          - { name: b, count: 2, power: 100 W, voc: 22.3 V, isc: 5.86 A, vmp: 18.4 V, imp: 5.44 A, azimuth: 240 deg }
          - { name: c, count: 2, power: 95 W, voc: 22.0 V, isc: 5.6 A, vmp: 18.0 V, imp: 5.28 A, bypass_diodes: 2, shade: { groups: [0 %, 45 %] } }
          - { name: d, count: 1, power: 60 W, voc: 21.6 V, isc: 3.74 A, vmp: 17.5 V, imp: 3.43 A, shade: [{ from: 6:00, to: 10:00, fraction: 60 % }] }
        inputs:
          - name: store
            max_voltage: 110 V
            start_voltage: 30 V
            mpp_voltage: 40..100 V
            max_current: 5.5 A
            max_power: 260 W
            wiring: (a + a + b + c) | (a + b + c + d)
        cable: { length: 20 m, size: 2.5 mm2, string_length: 3 m, string_size: 2.5 mm2 }
        """;

    /// <summary>A text as a plan.</summary>
    public static Plan Read(string text)
    {
        PlanReading reading = PlanFile.Read(text, "test");
        Assert.True(reading.Plan is not null, string.Join('\n', reading.Faults));
        return reading.Plan!;
    }

    /// <summary>One of the examples that come with the command.</summary>
    public static Plan Example(string name)
    {
        string? folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder!, "Arraywright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return Read(File.ReadAllText(Path.Combine(folder!, "examples", name + ".yaml")));
    }

    /// <summary>Weather made from the built-in climate of the plan's place.</summary>
    public static WeatherYear BuiltIn(Plan plan) => SyntheticYear.For(plan)!;

    /// <summary>The plan's stated wirings through a series.</summary>
    public static EnergyResult Run(Plan plan, SunSeries series, EnergyOptions options) =>
        EnergyRun.Of(new PlanPhysics(plan), [.. plan.Inputs.Select(planned => planned.StatedWiring)], series, options);

    /// <summary>The circuit of a wiring when each kind of panel sees its own conditions.</summary>
    public static CircuitTree Tree(Plan plan, Wiring wiring, ImmutableArray<Conditions> seen) => new PlanPhysics(plan).Tree(wiring, seen);
}

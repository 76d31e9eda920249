using Arraywright.Electrical;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Electrical;

/// <summary>Readings of parts that were each solved by themselves, held against Kirchhoff's two laws, which nothing put in.</summary>
public sealed class PartReadingProperties
{
    private static readonly Gen<(int Seed, int Panels, double Share)> Cases = Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[1, 12], Gen.Double[0.05, 1.02]);

    [Fact]
    public void Volts_add_up_in_series_and_amps_in_parallel_and_copper_drops_the_rest() => Cases.Sample((seed, panels, share) =>
    {
        (Wiring wiring, CircuitTree tree) = Array(seed, panels);
        Circuit circuit = new(tree);
        double voltageV = share * circuit.OpenCircuitV;
        PartReading whole = PartReading.Of(wiring, tree, voltageV);
        Assert.Equal(voltageV, whole.VoltageV);
        Assert.Equal(circuit.CurrentAt(voltageV), whole.CurrentA);
        Check(wiring, tree, whole, circuit.OpenCircuitV, circuit.ShortCircuitA);
    }, iter: 200);

    [Fact]
    public void Equal_panels_share_volts_and_amps_evenly()
    {
        PanelAtWork panel = RandomArrays.Pile(new Random(7), 1)[0];
        Wiring.Single single = new("0");
        Wiring wiring = Wiring.InParallel(Enumerable.Repeat(Wiring.InSeries([single, single, single]), 2));
        CircuitTree tree = CircuitTree.Of(wiring, _ => panel, WireResistances.None);
        PartReading whole = PartReading.Of(wiring, tree, 30);
        double expectedA = whole.CurrentA / 2;
        Assert.All(whole.Parts, part => Assert.Equal(expectedA, part.CurrentA, 1e-9));
        Assert.All(whole.Parts.SelectMany(part => part.Parts), part => Assert.Equal(10, part.VoltageV, 1e-8));
    }

    private static (Wiring Wiring, CircuitTree Tree) Array(int seed, int panels)
    {
        Random random = new(seed);
        PanelAtWork[] pile = RandomArrays.Pile(random, panels);
        Wiring wiring = RandomArrays.Wiring(random, 0, panels);
        return (wiring, CircuitTree.Of(wiring, name => pile[int.Parse(name)], RandomArrays.Wires(random)));
    }

    private static void Check(Wiring wiring, CircuitTree tree, PartReading reading, double scaleV, double scaleA)
    {
        Assert.Equal(reading.VoltageV + (reading.CurrentA * tree.WireOhm), reading.InnerV, 1e-9 * scaleV);
        switch (wiring, tree)
        {
            case (Wiring.Series series, CircuitTree.Series parts):
                Assert.Equal(reading.InnerV, reading.Parts.Sum(part => part.VoltageV), 1e-7 * scaleV);
                Assert.All(reading.Parts, part => Assert.Equal(reading.CurrentA, part.CurrentA));
                Within(series.Parts, parts.Parts);
                break;
            case (Wiring.Parallel parallel, CircuitTree.Parallel parts):
                Assert.Equal(reading.CurrentA, reading.Parts.Sum(part => part.CurrentA), 1e-7 * scaleA);
                Assert.All(reading.Parts, part => Assert.Equal(reading.InnerV, part.VoltageV));
                Within(parallel.Parts, parts.Parts);
                break;
            default:
                Assert.Empty(reading.Parts);
                break;
        }

        void Within(IReadOnlyList<Wiring> wirings, IReadOnlyList<CircuitTree> trees)
        {
            Assert.Equal(wirings.Count, reading.Parts.Length);
            for (int i = 0; i < wirings.Count; i++)
            {
                Check(wirings[i], trees[i], reading.Parts[i], scaleV, scaleA);
            }
        }
    }
}

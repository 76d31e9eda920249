using Arraywright.Electrical;
using Arraywright.Files;
using Arraywright.Testing;

namespace Arraywright.Reference.Tests.Circuits;

/// <summary>What meters are said to show at each part of an array, against ngspice given that part alone at those volts.</summary>
public sealed class ReadingsAgainstSimulator
{
    private const int Trees = 12;

    [Fact]
    public void Every_part_of_random_arrays_at_work_carries_the_simulators_amps_at_its_volts()
    {
        Simulator.SkipUnlessInstalled();
        Random random = new(20261127);
        int parts = 0;
        double worst = 0;
        for (int index = 0; index < Trees; index++)
        {
            int panels = 2 + (index % 7);
            PanelAtWork[] pile = RandomArrays.Pile(random, panels);
            Wiring wiring = RandomArrays.Wiring(random, 0, panels);
            CircuitTree tree = CircuitTree.Of(wiring, name => pile[int.Parse(name)], RandomArrays.Wires(random));
            Circuit circuit = new(tree);
            foreach ((CircuitTree part, PartReading reading) in All(wiring, tree, PartReading.Of(wiring, tree, circuit.MaximumPower().VoltageV)).Where(one => one.Reading.VoltageV > 0))
            {
                double simulatedA;
                try
                {
                    simulatedA = Simulator.Sweep(Netlist.Write("part", part, reading.VoltageV, 1)).CurrentA[^1];
                }
                catch (SimulatorGaveUpException)
                {
                    continue;
                }

                parts++;
                worst = Math.Max(worst, Math.Abs(simulatedA - reading.CurrentA) / circuit.ShortCircuitA);
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{parts} parts of {Trees} arrays; largest difference {worst:e2} of the array's short-circuit current");
        Assert.InRange(parts, 50, 500);
        Assert.InRange(worst, 0, 1e-5);
    }

    private static IEnumerable<(CircuitTree Part, PartReading Reading)> All(Wiring wiring, CircuitTree tree, PartReading reading) => ((wiring, tree) switch
    {
        (Wiring.Series series, CircuitTree.Series parts) => Within(series.Parts, parts.Parts, reading),
        (Wiring.Parallel parallel, CircuitTree.Parallel parts) => Within(parallel.Parts, parts.Parts, reading),
        _ => [],
    }).Prepend((tree, reading));

    private static IEnumerable<(CircuitTree Part, PartReading Reading)> Within(IReadOnlyList<Wiring> wirings, IReadOnlyList<CircuitTree> trees, PartReading reading) =>
        Enumerable.Range(0, wirings.Count).SelectMany(i => All(wirings[i], trees[i], reading.Parts[i]));
}

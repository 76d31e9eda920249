using Arraywright.Electrical;
using Arraywright.Electrical.Solving;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Electrical;

/// <summary>Laws that hold for every array: 2 to 16 unequal, partly shaded panels in any tree, with cable.</summary>
public sealed class CircuitProperties
{
    private static readonly Gen<(int Seed, int Panels)> Arrays = Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Int[2, 16]);

    private static CircuitTree Tree((int Seed, int Panels) array) => RandomArrays.Tree(new Random(array.Seed), array.Panels);

    [Fact]
    public void Current_is_a_number_and_falls_as_voltage_rises() =>
        Arrays.Sample(array =>
        {
            Circuit circuit = new(Tree(array));
            double before = double.PositiveInfinity;
            for (int i = -4; i <= 44; i++)
            {
                double current = circuit.CurrentAt(circuit.OpenCircuitV * i / 40);
                Assert.True(double.IsFinite(current));
                Assert.True(current < before);
                before = current;
            }
        }, iter: 500);

    [Fact]
    public void Voltage_at_the_current_at_a_voltage_is_that_voltage() =>
        Gen.Select(Arrays, Gen.Double[0, 1]).Sample((array, share) =>
        {
            Circuit circuit = new(Tree(array));
            double voltageV = share * circuit.OpenCircuitV;
            Assert.Equal(voltageV, circuit.VoltageAt(circuit.CurrentAt(voltageV)), 1e-6 * circuit.OpenCircuitV);
        }, iter: 500);

    [Fact]
    public void The_order_of_parts_does_not_matter() =>
        Gen.Select(Arrays, Gen.Int).Sample((array, shuffle) =>
        {
            CircuitTree tree = Tree(array);
            Circuit circuit = new(tree);
            Circuit shuffled = new(Shuffled(tree, new Random(shuffle)));
            for (int i = 0; i <= 10; i++)
            {
                double voltageV = circuit.OpenCircuitV * i / 10;
                Assert.Equal(circuit.CurrentAt(voltageV), shuffled.CurrentAt(voltageV), 1e-8 * circuit.ShortCircuitA);
            }
        }, iter: 300);

    [Fact]
    public void Two_of_the_same_array_in_parallel_give_twice_the_current() =>
        Arrays.Sample(array =>
        {
            CircuitTree tree = Tree(array);
            Circuit one = new(tree);
            Circuit two = new(new CircuitTree.Parallel([tree, tree]));
            for (int i = 0; i <= 10; i++)
            {
                double voltageV = one.OpenCircuitV * i / 10;
                Assert.Equal(2 * one.CurrentAt(voltageV), two.CurrentAt(voltageV), 1e-8 * one.ShortCircuitA);
            }
        }, iter: 300);

    /// <summary>Tellegen's theorem: what the groups deliver is what leaves at the terminals and what the copper turns to heat.</summary>
    [Fact]
    public void Energy_is_conserved() =>
        Gen.Select(Arrays, Gen.Double[0, 1.05]).Sample((array, share) =>
        {
            Network network = new(Tree(array));
            network.StartAtOpenCircuit();
            network.SolveAtCurrent(0);
            network.SolveAtVoltage(share * network.VoltageV);
            (double deliveredW, double heatW) = Balance(network);
            Assert.Equal(deliveredW, (network.VoltageV * network.CurrentA) + heatW, 1e-6 * (1 + Math.Abs(deliveredW)));
        }, iter: 500);

    [Fact]
    public void An_array_never_gives_more_than_its_panels_one_by_one() =>
        Arrays.Sample(array =>
        {
            Random random = new(array.Seed);
            PanelAtWork[] pile = RandomArrays.Pile(random, array.Panels);
            Wiring wiring = RandomArrays.Wiring(random, 0, array.Panels);
            double together = new Circuit(CircuitTree.Of(wiring, name => pile[int.Parse(name)], RandomArrays.Wires(random))).MaximumPower().PowerW;
            double apart = pile.Sum(panel => new Circuit(CircuitTree.Of(new Wiring.Single("x"), _ => panel, WireResistances.None)).MaximumPower().PowerW);
            Assert.InRange(together, 0, apart * (1 + 1e-9));
        }, iter: 300);

    [Fact]
    public void No_sample_of_the_curve_lies_above_the_certified_maximum_and_no_hill_is_missed() =>
        Arrays.Sample(array =>
        {
            Circuit circuit = new(Tree(array));
            double[] currentsA = new double[2001];
            circuit.Sweep(currentsA);
            double[] powersW = [.. currentsA.Select((current, i) => current * circuit.OpenCircuitV * i / 2000)];
            int seen = Enumerable.Range(1, 1999).Count(i => powersW[i] > powersW[i - 1] && powersW[i] >= powersW[i + 1]);
            Assert.InRange(powersW.Max(), 0, circuit.MaximumPower().PowerW * (1 + 1e-9));
            Assert.InRange(seen, 1, circuit.LocalMaxima().Length);
        }, iter: 300);

    [Fact]
    public void What_an_input_takes_obeys_its_limits_and_no_allowed_sample_gives_more() =>
        Gen.Select(Arrays, Gen.Double[0, 0.6], Gen.Double[0.5, 1.1], Gen.Double[0.2, 1.2], Gen.Double[0.3, 1.2]).Sample((array, minShare, maxShare, currentShare, powerShare) =>
        {
            Circuit circuit = new(Tree(array));
            double openV = circuit.OpenCircuitV;
            InputWindow window = new(minShare * openV, Math.Max(minShare + 0.05, maxShare) * openV, 0, currentShare * circuit.ShortCircuitA, powerShare * circuit.MaximumPower().PowerW);
            OperatingPoint taken = circuit.TakenBy(window);

            Assert.Equal(circuit.CurrentAt(taken.VoltageV), taken.CurrentA, 1e-6 * circuit.ShortCircuitA);
            Assert.InRange(taken.CurrentA, 0, window.MaxA * (1 + 1e-9));
            Assert.InRange(taken.PowerW, 0, window.MaxW * (1 + 1e-9));
            Assert.InRange(taken.FirstHillPowerW, 0, taken.PowerW * (1 + 1e-6));
            Assert.Equal(taken.PowerW, circuit.PowerTakenW(window), 1e-6 * taken.PowerW);

            // Where the array gives more than a limit even at the window's upper end, a converter would leave the window to hold it: not counted.
            double endA = circuit.CurrentAt(window.MaxV);
            bool leaves = window.MaxV < openV && (endA > window.MaxA || endA * window.MaxV > window.MaxW);
            Assert.Equal(leaves, taken.LimitedBy == LimitedBy.AboveWindow);
            Assert.InRange(taken.VoltageV, 0, leaves ? openV : Math.Min(window.MaxV, openV) * (1 + 1e-9));
            for (int i = 0; i <= 200 && !leaves; i++)
            {
                double voltageV = window.MinV + ((Math.Min(window.MaxV, openV) - window.MinV) * i / 200);
                double current = circuit.CurrentAt(voltageV);
                if (current <= window.MaxA)
                {
                    Assert.InRange(Math.Min(voltageV * current, window.MaxW), double.NegativeInfinity, taken.PowerW * (1 + 1e-9));
                }
            }
        }, iter: 300);

    private static CircuitTree Shuffled(CircuitTree tree, Random random)
    {
        CircuitTree[] Parts(IEnumerable<CircuitTree> parts)
        {
            CircuitTree[] all = [.. parts.Select(part => Shuffled(part, random))];
            random.Shuffle(all);
            return all;
        }

        return tree switch
        {
            CircuitTree.Series series => series with { Parts = [.. Parts(series.Parts)] },
            CircuitTree.Parallel parallel => parallel with { Parts = [.. Parts(parallel.Parts)] },
            _ => tree,
        };
    }

    private static (double DeliveredW, double HeatW) Balance(Network network)
    {
        Layout layout = network.Layout;
        double deliveredW = 0;
        double heatW = network.WireHeatW();
        network.Leaves.Evaluate();
        for (int leaf = 0; leaf < network.Leaves.Count; leaf++)
        {
            deliveredW += layout.LeafCount[leaf] * layout.Times[layout.LeafParent[leaf]] * network.Leaves.VoltageV[leaf] * network.Leaves.CurrentA[leaf];
        }

        return (deliveredW, heatW);
    }
}

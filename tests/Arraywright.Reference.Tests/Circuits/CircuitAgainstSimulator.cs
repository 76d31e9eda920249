using Arraywright.Electrical;
using Arraywright.Files;
using Arraywright.Testing;

namespace Arraywright.Reference.Tests.Circuits;

/// <summary>The solver against ngspice running the netlist that the command exports: an independent program with its own equations and solver.</summary>
public sealed class CircuitAgainstSimulator
{
    private const int Trees = 200;
    private const int Points = 50;

    [Fact]
    public void Two_hundred_random_arrays_have_the_simulators_currents_and_maximum_power()
    {
        Simulator.SkipUnlessInstalled();
        Random random = new(20260302);
        double worstCurrent = 0;
        double worstPower = 0;
        int givenUp = 0;
        for (int index = 0; index < Trees + givenUp; index++)
        {
            CircuitTree tree = RandomArrays.Tree(random, 2 + (index % 15));
            Circuit circuit = new(tree);
            double scaleA = circuit.ShortCircuitA;
            CurvePoint best = circuit.MaximumPower();
            double[] voltageV;
            double[] currentA;
            double simulatedW;
            try
            {
                (voltageV, currentA) = Simulator.Sweep(Netlist.Write($"array {index}", tree, circuit.OpenCircuitV, Points));
                simulatedW = SimulatedMaximumW(tree, best.VoltageV);
            }
            catch (SimulatorGaveUpException)
            {
                // At these tolerances its iteration sometimes fails where reverse-driven panels without diodes meet; another tree takes its place.
                givenUp++;
                Assert.InRange(givenUp, 0, Trees / 20);
                continue;
            }

            Assert.InRange(voltageV.Length, Points, Points + 1);
            for (int i = 0; i < voltageV.Length; i++)
            {
                // Relative to the current itself; within a thousandth of the short-circuit current of zero, relative to that thousandth.
                double error = Math.Abs(circuit.CurrentAt(voltageV[i]) - currentA[i]) / Math.Max(Math.Abs(currentA[i]), 1e-3 * scaleA);
                worstCurrent = Math.Max(worstCurrent, error);
            }

            worstPower = Math.Max(worstPower, Math.Abs((simulatedW / best.PowerW) - 1));
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{Trees} arrays; largest relative difference: current {worstCurrent:e2}, maximum power {worstPower:e2}; the simulator gave up on {givenUp} more");
        Assert.InRange(worstCurrent, 0, 1e-5);
        Assert.InRange(worstPower, 0, 1e-6);
    }

    /// <summary>The simulator's own maximum near a voltage: a fine sweep around it, refined by the parabola through the best three points.</summary>
    private static double SimulatedMaximumW(CircuitTree tree, double nearV)
    {
        string netlist = Netlist.Write("maximum", tree, nearV, 1);
        string dc = netlist.Split('\n').Single(line => line.StartsWith(".dc", StringComparison.Ordinal));
        (double[] voltageV, double[] currentA) = Simulator.Sweep(netlist.Replace(dc, $".dc Vmeter {0.98 * nearV:R} {1.02 * nearV:R} {0.0005 * nearV:R}"));
        double[] powerW = [.. voltageV.Zip(currentA, (v, i) => v * i)];
        int best = Array.IndexOf(powerW, powerW.Max());
        Assert.InRange(best, 1, powerW.Length - 2);
        double left = powerW[best - 1];
        double middle = powerW[best];
        double right = powerW[best + 1];
        return middle - (0.125 * (right - left) * (right - left) / (left - (2 * middle) + right));
    }

    [Fact]
    public void The_simulator_finds_no_power_above_the_certified_maximum()
    {
        Simulator.SkipUnlessInstalled();
        Random random = new(7);
        for (int index = 0; index < 20; index++)
        {
            CircuitTree tree = RandomArrays.Tree(random, 8);
            Circuit circuit = new(tree);
            (double[] voltageV, double[] currentA) = Simulator.Sweep(Netlist.Write("whole curve", tree, circuit.OpenCircuitV, 2000));
            double highestW = voltageV.Zip(currentA, (v, i) => v * i).Max();
            double certifiedW = circuit.MaximumPower().PowerW;
            Assert.InRange(highestW, certifiedW * (1 - 1e-4), certifiedW * (1 + 1e-6));
        }
    }
}

using Arraywright.Gear;
using Arraywright.Reference.Tests.Circuits;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>What an input takes of an array whose curve is a table of another program: the limits read off the table, with none of our own solver.</summary>
/// <param name="voltageV">Rising voltages from 0 to beyond open circuit.</param>
/// <param name="currentA">Current at each, A.</param>
internal sealed class SimulatedInput(double[] voltageV, double[] currentA)
{
    private const int Points = 4000;

    /// <summary>The curve of a netlist, swept by the simulator.</summary>
    public static SimulatedInput Of(Func<int, string> netlist)
    {
        (double[] voltageV, double[] currentA) = Simulator.Sweep(netlist(Points));
        return new SimulatedInput(voltageV, currentA);
    }

    /// <summary>The highest power anywhere, W.</summary>
    public double MaximumW => Best(0, double.PositiveInfinity);

    /// <summary>Watts that an input takes: nothing where the open-circuit voltage does not start it; else the best point in its window that needs no more than its amps, and no more than its watts.</summary>
    public double TakenW(DcInput input)
    {
        if (OpenCircuitV < Math.Max(input.StartVoltageV ?? 0, input.TrackingMinV ?? 0))
        {
            return 0;
        }

        double lowV = Math.Max(input.TrackingMinV ?? 0, Crossing(input.DrawLimitA ?? double.PositiveInfinity));
        double bestW = Best(lowV, input.TrackingMaxV ?? input.MaxVoltageV);
        return Math.Min(bestW, input.MaxPower?.Figure ?? double.PositiveInfinity);
    }

    private double OpenCircuitV => Crossing(0);

    /// <summary>Voltage from which on the array gives no more than a current; 0 where it never gives more.</summary>
    private double Crossing(double amps)
    {
        int after = Array.FindIndex(currentA, current => current <= amps);
        Assert.True(after >= 0, "The sweep ends before the current has fallen to the limit.");
        return after == 0 ? 0 : voltageV[after - 1] + ((voltageV[after] - voltageV[after - 1]) * (currentA[after - 1] - amps) / (currentA[after - 1] - currentA[after]));
    }

    /// <summary>The highest power between two voltages: at an end, or the summit of the parabola through the best three points.</summary>
    private double Best(double lowV, double highV)
    {
        double bestW = Math.Max(At(lowV), double.IsFinite(highV) ? At(highV) : 0);
        for (int i = 1; i < voltageV.Length - 1; i++)
        {
            (double left, double middle, double right) = (PowerW(i - 1), PowerW(i), PowerW(i + 1));
            if (voltageV[i - 1] >= lowV && voltageV[i + 1] <= highV && middle >= left && middle >= right)
            {
                double bend = left - (2 * middle) + right;
                bestW = Math.Max(bestW, middle - (bend < 0 ? 0.125 * (right - left) * (right - left) / bend : 0));
            }
        }

        return bestW;
    }

    private double PowerW(int point) => voltageV[point] * currentA[point];

    private double At(double v)
    {
        if (v >= voltageV[^1])
        {
            return 0;
        }

        int after = Math.Max(1, Array.FindIndex(voltageV, swept => swept > v));
        double share = (v - voltageV[after - 1]) / (voltageV[after] - voltageV[after - 1]);
        return v * (currentA[after - 1] + (share * (currentA[after] - currentA[after - 1])));
    }
}

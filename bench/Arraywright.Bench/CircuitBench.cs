using System.Diagnostics;
using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Files;

namespace Arraywright.Bench;

/// <summary>The solver beside ngspice on the same netlist: two strings of four unequal panels, 24 bypassed groups.</summary>
internal static class CircuitBench
{
    private const int Points = 2000;
    private const string Simulator = "/usr/bin/ngspice";

    /// <summary>Runs both arrays.</summary>
    /// <remarks>Measures both programs in turn and prints medians and ratios.</remarks>
    public static void Run(TextWriter output)
    {
        Run(output, "panels unequal, 24 groups in 8 kinds", groupSpread: 0);
        Run(output, "every one of 24 groups unequal", groupSpread: 0.01);
    }

    private static void Run(TextWriter output, string title, double groupSpread)
    {
        CircuitTree tree = Array(groupSpread);
        Circuit circuit = new(tree);
        InputWindow window = new(12, 100, 12, 12, 2000);
        double[] currentsA = new double[Points + 1];

        List<double> simulatorUs = [];
        List<double> simulatorProcessUs = [];
        List<double> pointUs = [];
        List<double> allUs = [];
        List<double> curveUs = [];
        string netlist = Netlist.Write("bench", tree, circuit.OpenCircuitV, Points);
        for (int round = 0; round < 15; round++)
        {
            if (File.Exists(Simulator))
            {
                (double analysisUs, double processUs) = Simulate(netlist);
                simulatorUs.Add(analysisUs);
                simulatorProcessUs.Add(processUs);
            }

            pointUs.Add(Time(2000, () => circuit.TakenBy(window)));
            allUs.Add(Time(1000, () => circuit.LocalMaxima()));
            curveUs.Add(Time(100, () => circuit.Sweep(currentsA)));
        }

        circuit.TakenBy(window);
        long before = GC.GetAllocatedBytesForCurrentThread();
        circuit.TakenBy(window);
        circuit.Sweep(currentsA);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        output.WriteLine($"| 2 x 4 array, {title} | median | ngspice's sweep / ours |");
        output.WriteLine("| --- | --- | --- |");
        if (simulatorUs.Count > 0)
        {
            output.WriteLine($"| ngspice, {Points} voltages, its own analysis time | {Median(simulatorUs):0} µs | 1 |");
            output.WriteLine($"| ngspice, whole process | {Median(simulatorProcessUs):0} µs | |");
        }

        Row(output, "operating point under an input's limits", Median(pointUs), simulatorUs);
        Row(output, "every local maximum, certified", Median(allUs), simulatorUs);
        Row(output, $"curve of {Points} voltages", Median(curveUs), simulatorUs);
        output.WriteLine($"| allocated by one operating point and one curve | {allocated} bytes | |");
    }

    private static void Row(TextWriter output, string what, double us, List<double> simulatorUs) =>
        output.WriteLine($"| {what} | {us:0.0} µs | {(simulatorUs.Count == 0 ? "" : (Median(simulatorUs) / us).ToString("0"))} |");

    /// <summary>Unequal in every panel: cells, area and sun around a handbook module of 54 cells.</summary>
    private static CircuitTree Array(double groupSpread)
    {
        PanelAtWork[] panels = [.. Enumerable.Range(0, 8).Select(index => Panel(index, groupSpread))];
        Wiring String(int from) => Wiring.InSeries(Enumerable.Range(from, 4).Select(i => new Wiring.Single(i.ToString(CultureInfo.InvariantCulture))));
        return CircuitTree.Of(Wiring.InParallel([String(0), String(4)]), name => panels[int.Parse(name, CultureInfo.InvariantCulture)], new WireResistances(0.05, 0.01, 0.0005));
    }

    private static PanelAtWork Panel(int index, double groupSpread)
    {
        double area = 0.75 + (0.07 * index);
        double cells = (index % 2 == 0 ? 36 : 60) / 54.0;
        DiodeParameters group = new DiodeParameters(8.227 * area, 4.37e-10 * area, 0.335 * cells / area, area / (160.5 * cells), 1.392 * cells).OneOf(3);
        return new PanelAtWork([.. Enumerable.Range(0, 3).Select(g => group with { LightCurrentA = group.LightCurrentA * (1 - (groupSpread * g)) })], BypassDiode.Schottky(8 * area));
    }

    private static double Time(int times, Action action)
    {
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < times; i++)
        {
            action();
        }

        return Stopwatch.GetElapsedTime(start).TotalMicroseconds / times;
    }

    private static (double AnalysisUs, double ProcessUs) Simulate(string netlist)
    {
        string path = Path.GetTempFileName();
        File.WriteAllText(path, netlist);
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(new ProcessStartInfo(Simulator, ["-b", path]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string text = process.StandardOutput.ReadToEnd() + errors.Result;
        process.WaitForExit();
        double processUs = Stopwatch.GetElapsedTime(start).TotalMicroseconds;
        File.Delete(path);
        string line = text.Split('\n').First(part => part.StartsWith("Total analysis time", StringComparison.Ordinal));
        return (double.Parse(line[(line.IndexOf('=') + 1)..], CultureInfo.InvariantCulture) * 1e6, processUs);
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}

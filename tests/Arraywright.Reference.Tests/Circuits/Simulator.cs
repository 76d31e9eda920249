using System.Diagnostics;
using System.Text;

namespace Arraywright.Reference.Tests.Circuits;

/// <summary>Runs ngspice, a general circuit simulator, on a netlist.</summary>
internal static class Simulator
{
    private static readonly string? Program = new[] { "/usr/bin/ngspice", "/usr/local/bin/ngspice", "/opt/homebrew/bin/ngspice" }.FirstOrDefault(File.Exists);

    public static void SkipUnlessInstalled() => Assert.SkipUnless(Program is not null, "ngspice is not installed: the circuit is not checked against another program.");

    /// <summary>The swept voltages and the currents through Vmeter, in full precision from the simulator's raw file.</summary>
    /// <exception cref="SimulatorGaveUpException">The simulator found no solution at some point.</exception>
    public static (double[] VoltageV, double[] CurrentA) Sweep(string netlist)
    {
        string folder = Directory.CreateTempSubdirectory("arraywright-").FullName;
        try
        {
            string circuit = Path.Combine(folder, "array.cir");
            string raw = Path.Combine(folder, "array.raw");
            File.WriteAllText(circuit, netlist);
            using Process process = Process.Start(new ProcessStartInfo(Program!, ["-b", "-r", raw, circuit])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return File.Exists(raw) && Parse(File.ReadAllBytes(raw)) is { VoltageV.Length: > 0 } swept
                ? swept
                : throw new SimulatorGaveUpException($"The simulator gave up on:\n{netlist}\n{output}\n{errors.Result}");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A raw file: a text header with the number of variables and points and their names, then "Binary:", then doubles.</summary>
    private static (double[] VoltageV, double[] CurrentA) Parse(byte[] raw)
    {
        const string Mark = "Binary:\n";
        int start = raw.AsSpan().IndexOf("Binary:\n"u8) + Mark.Length;
        string[] header = Encoding.ASCII.GetString(raw, 0, start).Split('\n');
        int variables = int.Parse(header.Single(line => line.StartsWith("No. Variables:", StringComparison.Ordinal))[14..]);
        int points = int.Parse(header.Single(line => line.StartsWith("No. Points:", StringComparison.Ordinal))[11..]);
        int firstName = Array.IndexOf(header, "Variables:") + 1;
        int sweep = -1;
        int meter = -1;
        for (int i = 0; i < variables; i++)
        {
            string name = header[firstName + i].Split('\t', StringSplitOptions.RemoveEmptyEntries)[1];
            sweep = name is "v(v-sweep)" or "v-sweep" ? i : sweep;
            meter = name is "i(vmeter)" or "vmeter#branch" ? i : meter;
        }

        Assert.True(sweep >= 0 && meter >= 0, "The simulator's result has no sweep or no meter current.");
        double[] voltageV = new double[points];
        double[] currentA = new double[points];
        for (int point = 0; point < points; point++)
        {
            voltageV[point] = BitConverter.ToDouble(raw, start + (8 * ((point * variables) + sweep)));
            currentA[point] = BitConverter.ToDouble(raw, start + (8 * ((point * variables) + meter)));
        }

        return (voltageV, currentA);
    }
}

/// <summary>The simulator's own iteration did not settle at some voltage.</summary>
internal sealed class SimulatorGaveUpException(string message) : Exception(message);

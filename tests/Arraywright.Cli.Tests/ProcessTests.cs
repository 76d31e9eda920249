using System.Diagnostics;
using System.Globalization;

namespace Arraywright.Cli.Tests;

/// <summary>The command as a process of its own, for what only a process has: its input, its signals.</summary>
public sealed class ProcessTests
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Arraywright.Cli.dll");

    [Fact]
    public void A_dash_reads_the_plan_from_standard_input()
    {
        using Process process = Start("plan", "-");
        process.StandardInput.Write("plan: 1\npanels: 3\n");
        process.StandardInput.Close();
        string error = process.StandardError.ReadToEnd();
        Assert.True(process.WaitForExit(30_000));
        Assert.Equal(2, process.ExitCode);
        Assert.Contains("standard input:2:9: ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ctrl_C_ends_it_within_a_second_with_status_130()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signal to send to a process without a console.");
        using Process process = Start("plan", "-");
        WaitUntilItWatches(process);
        Stopwatch watch = Stopwatch.StartNew();
        using (Process kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            kill.WaitForExit();
        }

        Assert.True(process.WaitForExit(10_000));
        Assert.Equal(130, process.ExitCode);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1.5), $"It took {watch.Elapsed.TotalSeconds:0.0} s.");
    }

    /// <summary>It reads its input only after it watches for the signal; half a plan taken from the pipe shows that it reads.</summary>
    private static void WaitUntilItWatches(Process process)
    {
        process.StandardInput.Write(new string('#', 256 * 1024));
        process.StandardInput.Flush();
    }

    private static Process Start(params string[] args) => Process.Start(new ProcessStartInfo("dotnet", [Program, .. args])
    {
        UseShellExecute = false,
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;
}

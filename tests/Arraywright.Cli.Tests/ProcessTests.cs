using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

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

    [Fact]
    public async Task Ctrl_C_during_a_search_shows_the_best_so_far_within_a_second_and_says_that_it_is_not_all()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signal to send to a process without a console.");
        string plan = DifferentPanels(40);

        // Too early nothing is found, too late all is: each try waits longer until there is something to show.
        for (double seconds = 1; seconds < 60; seconds *= 1.4)
        {
            using Process process = Start("plan", "-", "--json");
            process.StandardInput.Write(plan);
            process.StandardInput.Close();
            Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.False(process.WaitForExit(TimeSpan.FromSeconds(seconds)), "It was done before anything could be shown early.");
            Stopwatch watch = Stopwatch.StartNew();
            using (Process kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
            {
                kill.WaitForExit();
            }

            Assert.True(process.WaitForExit(10_000));
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1.5), $"It took {watch.Elapsed.TotalSeconds:0.0} s.");
            Assert.Equal(130, process.ExitCode);
            if (await output is { Length: > 0 } text)
            {
                using JsonDocument json = JsonDocument.Parse(text);
                JsonElement search = json.RootElement.GetProperty("search");
                Assert.False(search.GetProperty("proved").GetBoolean());
                Assert.True(search.GetProperty("gap_percent").GetDouble() > 0);
                Assert.Contains("stopped early", await error, StringComparison.Ordinal);
                return;
            }
        }

        Assert.Fail("Nothing was ever found.");
    }

    /// <summary>A plan of so many panels for the hill farm, no two alike, on an input that takes them all: too many to prove.</summary>
    private static string DifferentPanels(int count)
    {
        StringBuilder plan = new("plan: Every panel of the farm\npanels:\n");
        for (int i = 0; i < count; i++)
        {
            double openV = 20 + (i * 0.618 % 1 * 25);
            double shortA = 4 + (i * 0.755 % 1 * 7);
            plan.Append(CultureInfo.InvariantCulture, $"  - {{ name: p{i}, count: 1, power: {openV * shortA * 0.77:F1} W, voc: {openV:F2} V, isc: {shortA:F2} A, vmp: {openV * 0.82:F2} V, imp: {shortA * 0.94:F2} A }}\n");
        }

        plan.Append("inputs:\n  - { name: store-a, max_voltage: 150 V, max_current: 100 A, max_power: 9000 W, mpp_voltage: 30..140 V }\n");
        return plan.ToString();
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

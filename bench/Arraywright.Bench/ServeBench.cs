using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using System.Text;

namespace Arraywright.Bench;

/// <summary>The host under load on this machine: the native build, asked by as many clients at once as it takes to keep it busy.</summary>
internal static class ServeBench
{
    private const int Clients = 16;
    private static readonly string[] Examples = [.. Directory.GetFiles("examples", "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    /// <summary>Runs it; from the root of the repository.</summary>
    /// <param name="writer">Where the figures go.</param>
    /// <param name="seconds">How long each kind of load lasts.</param>
    public static async Task RunAsync(TextWriter writer, double seconds)
    {
        using Process host = Process.Start(new ProcessStartInfo("./arraywright", ["serve", "--port", "0"]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        try
        {
            string greeting = await host.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The host did not start.");
            using HttpClient client = new(new SocketsHttpHandler { MaxConnectionsPerServer = Clients }) { BaseAddress = new Uri(greeting.Split(' ')[3]) };
            writer.WriteLine($"`check` over HTTP, {Clients} clients at once on the same machine, {seconds:0} s each");
            await LoadAsync(writer, client, host, "the examples, again and again", seconds, i => Examples[i % Examples.Length]);
            await LoadAsync(writer, client, host, "another plan each time, no place", seconds, SmallPlan);
            await LoadAsync(writer, client, host, "another plan each time, its year solved", seconds, i => Examples[i % Examples.Length].Replace("\nplan: ", $"\nplan: {i} ", StringComparison.Ordinal));
        }
        finally
        {
            if (!host.HasExited)
            {
                using Process end = Process.Start("kill", ["-TERM", host.Id.ToString(CultureInfo.InvariantCulture)]);
                await host.WaitForExitAsync();
            }
        }
    }

    private static async Task LoadAsync(TextWriter writer, HttpClient client, Process host, string what, double seconds, Func<int, string> plan)
    {
        ConcurrentBag<double> tookMs = [];
        int asked = 0, errors = 0;
        TimeSpan processorBefore = host.TotalProcessorTime;
        long began = Stopwatch.GetTimestamp();
        await Task.WhenAll(Enumerable.Range(0, Clients).Select(_ => Task.Run(async () =>
        {
            while (Stopwatch.GetElapsedTime(began).TotalSeconds < seconds)
            {
                using ByteArrayContent body = new(Encoding.UTF8.GetBytes(plan(Interlocked.Increment(ref asked))));
                body.Headers.ContentType = new MediaTypeHeaderValue("application/yaml");
                long start = Stopwatch.GetTimestamp();
                using HttpResponseMessage answer = await client.PostAsync(new Uri("api/check", UriKind.Relative), body);
                byte[] text = await answer.Content.ReadAsByteArrayAsync();
                tookMs.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                if (!answer.IsSuccessStatusCode || text.Length == 0)
                {
                    Interlocked.Increment(ref errors);
                }
            }
        })));
        double elapsed = Stopwatch.GetElapsedTime(began).TotalSeconds;
        host.Refresh();
        double processorMs = (host.TotalProcessorTime - processorBefore).TotalMilliseconds / tookMs.Count;
        double[] sorted = [.. tookMs.Order()];
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-42} {sorted.Length / elapsed,8:0} /s  {errors} errors  median {At(sorted, 0.5),7:0.0} ms  99th percentile {At(sorted, 0.99),7:0.0} ms  host {processorMs:0.00} ms of processor each, {host.WorkingSet64 >> 20} MB"));
    }

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];

    private static string SmallPlan(int i) =>
        $$"""
        plan: Shed {{i}}
        panels:
          - { name: shed-120, count: 4, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
        inputs:
          - { name: store-a, max_voltage: 60 V, max_current: 13 A, max_power: 500 W, wiring: 2*shed-120 | 2*shed-120 }
        """;
}

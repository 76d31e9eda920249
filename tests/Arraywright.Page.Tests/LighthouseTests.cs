using System.Diagnostics;
using System.Text.Json;
using Arraywright.Page.Tests.Browser;

namespace Arraywright.Page.Tests;

/// <summary>The page as an independent program judges it: Lighthouse (npm), desktop profile. Its mark for speed depends on the machine and is written down, not asserted.</summary>
[Collection(nameof(Alone))]
public sealed class LighthouseTests
{
    private static readonly string Program = Path.Combine(Repository.Root, "artifacts", "npm", "node_modules", ".bin", "lighthouse");

    [Fact]
    public async Task It_finds_nothing_against_access_and_good_practice()
    {
        Assert.SkipWhen(!File.Exists(Program), "Lighthouse: not here; ./test installs it where npm is");
        Assert.SkipWhen(!File.Exists("/usr/bin/chromium"), "Lighthouse: there is no /usr/bin/chromium here: install the package chromium");
        Assert.SkipWhen(!File.Exists(Path.Combine(Repository.PublishedPage, "index.html")), "Lighthouse: the page is not published: ./test does it");
        await using PageServer server = await PageServer.StartAsync(Repository.PublishedPage);
        using JsonDocument report = JsonDocument.Parse(await RunAsync(server.Address));
        JsonElement categories = report.RootElement.GetProperty("categories");
        double Mark(string category) => categories.GetProperty(category).GetProperty("score").GetDouble() * 100;
        string Against(string category) => string.Join(
            "; ",
            categories.GetProperty(category).GetProperty("auditRefs").EnumerateArray()
                .Select(reference => report.RootElement.GetProperty("audits").GetProperty(reference.GetProperty("id").GetString()!))
                .Where(audit => audit.GetProperty("score") is { ValueKind: JsonValueKind.Number } score && score.GetDouble() < 1)
                .Select(audit => audit.GetProperty("title").GetString()));
        Repository.Pace(FormattableString.Invariant($"Lighthouse, desktop: performance {Mark("performance"):0}, accessibility {Mark("accessibility"):0}, best practices {Mark("best-practices"):0}"));
        Assert.True(Mark("accessibility") >= 100, Against("accessibility"));
        Assert.True(Mark("best-practices") >= 100, Against("best-practices"));
    }

    private static async Task<string> RunAsync(string address)
    {
        using Process lighthouse = Process.Start(new ProcessStartInfo(Program,
        [
            address, "--preset=desktop", "--output=json", "--quiet", "--only-categories=performance,accessibility,best-practices",
            $"--chrome-flags=--headless=new --no-sandbox --disable-gpu {Chromium.PlainWindow}",
        ])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
            Environment = { ["CHROME_PATH"] = "/usr/bin/chromium" },
        })!;
        using CancellationTokenSource late = new(TimeSpan.FromMinutes(4));
        Task<string> complaints = lighthouse.StandardError.ReadToEndAsync(late.Token);
        string json = await lighthouse.StandardOutput.ReadToEndAsync(late.Token);
        await lighthouse.WaitForExitAsync(late.Token);
        Assert.True(lighthouse.ExitCode == 0, await complaints);
        return json;
    }
}

using System.IO.Compression;
using System.Text;
using Arraywright.Page.Document;
using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>A link or a file comes from anybody: at worst it is refused.</summary>
public sealed class HostileTests(Chromium chromium)
{
    private const string Good = "plan: \"NAME\"\npanels:\n  - name: p\n    count: 2\n    voc: 22.9 V\n    isc: 6.72 A\n    power: 120 W\ninputs:\n  - name: i\n    max_voltage: 60 V\n    max_power: 300 W\n";

    /// <summary>Fragments of links that hold no plan.</summary>
    private static string[] Links =>
    [
        "plan=", "plan=AAAA", "plan=%00%00", "plan=====", "plan=<script>window.hacked=1</script>", "plan=javascript:window.hacked=1",
        "plan=" + new string('A', 50_000), "plan=" + new string('A', 200_000), "plan=" + Packed(new byte[5_000_000]), "plan=" + Packed([0xFF, 0xFE, 0x00]),
        PlanLink.Write(""), PlanLink.Write("just words"), PlanLink.Write("- a\n- list"), PlanLink.Write("plan: &a [*a]"), PlanLink.Write(new string('[', 4_000)),
        PlanLink.Write(string.Concat(Enumerable.Range(0, 2_000).Select(i => new string(' ', i % 50) + "a:\n"))),
    ];

    /// <summary>Plans that mean harm, or would be too much work.</summary>
    private static string[] Files =>
    [
        Good.Replace("NAME", "<img src=x onerror='window.hacked=1'>", StringComparison.Ordinal),
        Good.Replace("NAME", "</title></svg><script>window.hacked=1</script>", StringComparison.Ordinal),
        Good.Replace("NAME", "{{constructor.constructor('window.hacked=1')()}}", StringComparison.Ordinal),
        Good.Replace("NAME", "\\u202Etxt.exe", StringComparison.Ordinal),
        Good.Replace("name: p", "name: \"p<svg onload=window.hacked=1>\"", StringComparison.Ordinal),
        Good.Replace("22.9 V", "1e308 V", StringComparison.Ordinal),
        Good.Replace("22.9 V", "NaN V", StringComparison.Ordinal),
        Good.Replace("count: 2", "count: 2000000000", StringComparison.Ordinal),
        Good.Replace("count: 2", "count: -1", StringComparison.Ordinal),
        Good + "place:\n  latitude: 54\n  longitude: -3\n  weather: http://127.0.0.1:9/steal.epw\n",
        Good + "place:\n  latitude: 54\n  longitude: -3\n  weather: ../../../../etc/passwd\n",
        Good + "!!python/object/apply:os.system [\"true\"]: 1\n",
        Good + "x: &x [a, *x]\n",
        Good + "---\nplan: second\n",
        "plan: \"" + new string('x', 900_000) + "\"\n",
        "\0\0\0\0",
        "%PDF-1.7 not a plan at all",
        "{\"plan\": {\"__proto__\": {\"hacked\": 1}}}",
    ];

    [Fact]
    public async Task Links_are_refused_or_shown_and_never_run()
    {
        Assert.InRange(Links.Length + Files.Length, 30, int.MaxValue);
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("lambing-shed");
        foreach (string link in Links)
        {
            await visit.Page.EvaluateAsync("fragment => { location.hash = fragment; }", link);
            await visit.Page.Locator("[role=alert]:has(button)").WaitForAsync();
            await StillWellAsync(visit);
            await visit.Page.Locator("[role=alert] button").ClickAsync();
        }

        await visit.GoAsync("file");
        Assert.Equal(Repository.Example("lambing-shed"), await visit.Page.Locator("#plan-text").InputValueAsync());
    }

    [Fact]
    public async Task Files_are_refused_or_shown_and_never_run()
    {
        await using Visit visit = await chromium.VisitAsync();
        foreach (string file in Files)
        {
            await visit.GoAsync("start");
            await visit.OpenFileAsync("hostile.yaml", Encoding.UTF8.GetBytes(file));
            await visit.Page.Locator("[role=alert]:has(button), #answer .verdict").First.WaitForAsync();
            await StillWellAsync(visit);
        }

        await visit.TakeExampleAsync("lambing-shed");
        Assert.NotEmpty(await visit.Verdict.InnerTextAsync());
    }

    private static async Task StillWellAsync(Visit visit)
    {
        Assert.False(await visit.Page.EvaluateAsync<bool>("() => 'hacked' in window || 'hacked' in {}"));
        await Assertions.Expect(visit.Page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
    }

    private static string Packed(byte[] bytes)
    {
        using MemoryStream packed = new();
        using (DeflateStream deflate = new(packed, CompressionLevel.SmallestSize))
        {
            deflate.Write(bytes);
        }

        return Convert.ToBase64String(packed.ToArray()).TrimEnd('=').Replace('+', '-').Replace('/', '_');
    }
}

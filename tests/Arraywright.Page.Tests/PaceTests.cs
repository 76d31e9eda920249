using System.Diagnostics;
using System.Globalization;
using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>How long a person waits, measured and written down, not asserted: that depends on the machine. ./test prints what is found here.</summary>
[Collection(nameof(Alone))]
public sealed class PaceTests(Chromium chromium)
{
    private const int Edits = 5;

    /// <summary>Between one change and the next, by when the diagram that is folded away is drawn too.</summary>
    private const float RestMs = 400;

    private static readonly string EightPanels = """
        plan: Eight panels
        goal: peak
        place: {latitude: 54.6, longitude: -3.1, elevation: 210 m}
        mount: {tilt: 40 deg, azimuth: 180 deg}
        panels:
          - {name: hill-120, count: 4, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A}
          - {name: hill-200, count: 4, voc: 24.4 V, isc: 10.6 A, vmp: 20.2 V, imp: 9.9 A}
        inputs:
          - {name: store, max_voltage: 150 V, max_current: 15 A, max_power: 1400 W}
        """;

    /// <summary>Types a figure and says how long it takes until a verdict on it, the best wiring with its pictures, and everything is painted, ms.</summary>
    private const string ChangeAndWatch = """
        figure => new Promise(done => {
            const answer = document.getElementById('answer'), field = document.getElementById('f-panels-0-voc'), order = ['judged', 'settled', 'whole'], painted = [0, 0, 0];
            let from = 0;
            new MutationObserver((_, observer) => {
                const reached = order.indexOf(answer.dataset.stage);
                requestAnimationFrame(() => setTimeout(() => {
                    for (let i = 0; i <= reached; i++) painted[i] ||= performance.now() - from;
                    if (reached === 2) done(painted);
                }));
                if (reached === 2) observer.disconnect();
            }).observe(answer, { attributes: true, attributeFilter: ['data-stage'] });
            field.value = figure;
            from = performance.now();
            field.dispatchEvent(new Event('input', { bubbles: true }));
        })
        """;

    [Fact]
    public async Task A_change_settles()
    {
        await using Visit visit = await chromium.VisitAsync();
        foreach (string goal in new[] { "peak", "year" })
        {
            await visit.GoAsync("file");
            await visit.OpenFileAsync("eight.yaml", System.Text.Encoding.UTF8.GetBytes(EightPanels.Replace("goal: peak", $"goal: {goal}", StringComparison.Ordinal)));
            await visit.GoAsync("plan");
            await visit.AnsweredAsync();
            List<double[]> changes = [];
            for (int edit = 0; edit < Edits; edit++)
            {
                changes.Add(await visit.Page.EvaluateAsync<double[]>(ChangeAndWatch, string.Create(CultureInfo.InvariantCulture, $"{22.8 - (edit / 10.0):0.0}")));
                await visit.Page.WaitForTimeoutAsync(RestMs);
            }

            Assert.All(changes, painted => Assert.True(painted is [> 0, _, _] && painted[0] <= painted[1] && painted[1] <= painted[2]));
            Report($"8 panels of two kinds, goal {goal}, medians of {Edits} changes, each until it is painted: a verdict after {Middle(0)} ms, settled with drawing, curve and meter after {Middle(1)} ms, all designs after {Middle(2)} ms");
            string Middle(int at) => changes.Select(painted => painted[at]).Order().ElementAt(Edits / 2).ToString("0", CultureInfo.InvariantCulture);
        }
    }

    [Fact]
    public async Task A_first_visit_becomes_usable()
    {
        Stopwatch watch = Stopwatch.StartNew();
        await using Visit visit = await chromium.VisitAsync();
        double openMs = watch.Elapsed.TotalMilliseconds;
        await visit.TakeExampleAsync("weaver-loft-ask");
        double answeredMs = watch.Elapsed.TotalMilliseconds;
        Assert.True(answeredMs > openMs);
        Report($"first visit, empty cache: a screen to type into after {openMs:0} ms; an example pressed at once is answered after {answeredMs:0} ms");
    }

    [Fact]
    public async Task The_page_never_freezes_while_it_computes()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("cheese-dairy-two-inputs");
        await visit.Page.EvaluateAsync("() => { window.longest = 0; new PerformanceObserver(list => list.getEntries().forEach(entry => { window.longest = Math.max(window.longest, entry.duration); })).observe({ type: 'longtask' }); }");
        await visit.Page.Locator("#f-panels-0-count").FillAsync("3");
        await visit.AnsweredAsync();
        await visit.Page.WaitForTimeoutAsync(500);
        Report($"two inputs, goal year, one change: the longest task of the page's own thread {await visit.Page.EvaluateAsync<double>("() => window.longest"):0} ms");
        // A long search can be stopped, and the page goes on.
        await visit.Page.Locator("#f-panels-0-count").FillAsync("40");
        ILocator stop = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true });
        if (await stop.IsVisibleAsync())
        {
            await stop.ClickAsync();
        }

        await visit.Page.Locator("#f-panels-0-count").FillAsync("2");
        await visit.AnsweredAsync();
        Assert.NotEmpty(await visit.Verdict.InnerTextAsync());
    }

    private static void Report(FormattableString line)
    {
        string text = FormattableString.Invariant(line);
        TestContext.Current.TestOutputHelper?.WriteLine(text);
        Repository.Pace(text);
    }
}

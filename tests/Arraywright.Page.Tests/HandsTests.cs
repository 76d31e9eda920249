using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>The main job by keyboard alone, by thumb, and while something long runs.</summary>
public sealed class HandsTests(Chromium chromium)
{
    [Fact]
    public async Task The_main_job_can_be_done_by_keyboard_alone()
    {
        await using Visit visit = await chromium.VisitAsync();
        await TabToAsync(visit, "q-count");
        foreach (string figure in new[] { "4", "22.9", "6.72", "18.9", "6.35", "", "50", "10", "400" })
        {
            await visit.Page.Keyboard.TypeAsync(figure);
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.AnsweredAsync();
        // Down to the first rule, and open its why.
        for (int i = 0; i < 150 && !await visit.Page.EvaluateAsync<bool>("() => document.activeElement?.closest('.finding') !== null"); i++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator(".finding details[open] .source").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Panels_can_be_moved_by_hand_and_what_that_breaks_is_said()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("lambing-shed");
        await visit.GoAsync("try");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take everything off" }).ClickAsync();
        // All four in one row: four times 22.9 V is more than any 50 V input bears.
        for (int i = 0; i < 4; i++)
        {
            await visit.Page.Locator(".tray").First.Locator(".tile").First.ClickAsync();
            await visit.Page.Locator(".put").First.ClickAsync();
        }

        await Assertions.Expect(visit.Page.Locator(".right .verdict.level-stop")).ToBeVisibleAsync(new() { Timeout = Visit.PatienceMs });
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
        TestContext.Current.TestOutputHelper?.WriteLine($"longest task of the page's own thread: {await visit.Page.EvaluateAsync<double>("() => window.longest")} ms");
        TestContext.Current.TestOutputHelper?.WriteLine($"in the worker: {await visit.Page.Locator("#settled").GetAttributeAsync("data-worker-ms")} ms");
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

    private static async Task TabToAsync(Visit visit, string id)
    {
        for (int i = 0; i < 40; i++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (await visit.Page.EvaluateAsync<string>("() => document.activeElement?.id ?? ''") == id)
            {
                return;
            }
        }

        Assert.Fail($"#{id} cannot be reached with the Tab key");
    }
}

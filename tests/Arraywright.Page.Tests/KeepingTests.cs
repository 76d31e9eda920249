using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

public sealed class KeepingTests(Chromium chromium)
{
    [Fact]
    public async Task With_no_signal_it_opens_again_and_works()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await visit.Page.ReloadAsync();
        await visit.ReadyAsync();
        await visit.Context.SetOfflineAsync(true);
        visit.IsOffline = true;
        await visit.Page.ReloadAsync();
        await visit.ReadyAsync();
        await visit.TakeExampleAsync("lambing-shed");
        Assert.NotEmpty(await visit.Verdict.InnerTextAsync());
    }

    [Fact]
    public async Task A_crashed_tab_loses_nothing_that_was_typed()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("lambing-shed");
        await visit.Page.Locator("#f-plan").FillAsync("Lambing shed, typed before the crash");
        await visit.Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await visit.Page.WaitForTimeoutAsync(1_500);
        // The browser ends the tab's process: nothing of the page runs any more.
        TaskCompletionSource crashed = new();
        visit.Page.Crash += (_, _) => crashed.TrySetResult();
        ICDPSession session = await visit.Context.NewCDPSessionAsync(visit.Page);
        _ = session.SendAsync("Page.crash");
        await crashed.Task.WaitAsync(TimeSpan.FromMilliseconds(Visit.PatienceMs), TestContext.Current.CancellationToken);
        await visit.Page.CloseAsync();
        await visit.OpenAsync();
        await visit.GoAsync("plan");
        await Assertions.Expect(visit.Page.Locator("#f-plan")).ToHaveValueAsync("Lambing shed, typed before the crash");
    }

    [Fact]
    public async Task Steps_can_be_undone_and_done_again()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("lambing-shed");
        ILocator count = visit.Page.Locator("#f-panels-0-count");
        string before = await count.InputValueAsync();
        await count.FillAsync("2");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(count).ToHaveValueAsync(before);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Redo" }).ClickAsync();
        await Assertions.Expect(count).ToHaveValueAsync("2");
    }

    [Fact]
    public async Task A_shared_link_opens_the_same_plan_elsewhere()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("beekeeper-pile");
        await visit.GoAsync("file");
        string link = await visit.Page.Locator("#link").InputValueAsync();
        await visit.Page.Locator(".qr svg path").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await using Visit other = await chromium.VisitAsync(link[(link.IndexOf('#', StringComparison.Ordinal) + 1)..]);
        await other.AnsweredAsync();
        await other.GoAsync("file");
        Assert.Equal(Repository.Example("beekeeper-pile"), await other.Page.Locator("#plan-text").InputValueAsync());
    }
}

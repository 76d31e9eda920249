using Arraywright.Page.Tests.Browser;

namespace Arraywright.Page.Tests;

public sealed class FirstVisitTests(Chromium chromium)
{
    /// <summary>What the issue allows to be transferred before the page can be used, bytes.</summary>
    private const long MostBytes = 3_500_000;

    [Fact]
    public async Task A_first_visit_ends_in_a_verdict()
    {
        Assert.SkipWhen(chromium.Missing is not null, $"Browser tests: {chromium.Missing}");
        long before = chromium.Server.SentBytes;
        await using Visit visit = await chromium.VisitAsync();
        await visit.Page.Locator("#q-count").FillAsync("4");
        await visit.Page.Locator("#q-voc").FillAsync("22.9");
        await visit.Page.Locator("#q-isc").FillAsync("6.72");
        await visit.Page.Locator("#q-vmp").FillAsync("18.9");
        await visit.Page.Locator("#q-imp").FillAsync("6.35");
        await visit.Page.Locator("#q-maxv").FillAsync("50");
        await visit.Page.Locator("#q-maxa").FillAsync("10");
        await visit.Page.Locator("#q-maxw").FillAsync("400");
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Answer", Exact = true }).ClickAsync();
        await visit.AnsweredAsync();
        // The same question as the command's: arraywright quick 4x "22.9V 6.72A 18.9V 6.35A" --onto "50V 10A 400W".
        Plan asked = Assert.IsType<Plan>(Arraywright.Files.QuickPlan.Read(["4x", "22.9V 6.72A 18.9V 6.35A"], ["50V 10A 400W"]).Plan);
        string expected = Arraywright.Presentation.Terminal.VerdictSentence.Of(Arraywright.Planning.Planner.Answer(asked, Arraywright.Planning.PlannerOptions.Default, null, TestContext.Current.CancellationToken));
        Assert.Equal(Said.Plain(expected), Said.Plain((await visit.Verdict.InnerTextAsync()).Replace("\n", ": ", StringComparison.Ordinal)));
        Assert.Equal("22.9", await visit.Page.Locator("#f-panels-0-voc").InputValueAsync());
        Assert.Contains("level-", await visit.Verdict.GetAttributeAsync("class") ?? "", StringComparison.Ordinal);
        TestContext.Current.TestOutputHelper?.WriteLine($"sent {chromium.Server.SentBytes - before} bytes, the service worker's own copies among them");
    }

    [Fact]
    public void Everything_that_a_first_visit_loads_is_small_enough_to_load_on_a_hill()
    {
        Assert.SkipWhen(chromium.Missing is not null, $"Browser tests: {chromium.Missing}");
        long bytes = Directory.EnumerateFiles(Repository.PublishedPage, "*", SearchOption.AllDirectories)
            .Where(path => Path.GetExtension(path) is not (".br" or ".gz"))
            .Sum(path => new FileInfo(File.Exists(path + ".br") ? path + ".br" : path).Length);
        TestContext.Current.TestOutputHelper?.WriteLine($"{bytes} bytes as compressed");
        Assert.InRange(bytes, 1, MostBytes);
    }
}

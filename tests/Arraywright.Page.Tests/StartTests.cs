using System.Text.RegularExpressions;
using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>The start screen is there before the runtime, and is the one that the runtime draws.</summary>
public sealed partial class StartTests(Chromium chromium)
{
    private const string Begins = "  <div id=\"first\">", Ends = "</div>\n  <p id=\"opening\"";

    private static readonly string Source = Path.Combine(Repository.Root, "src", "Arraywright.Page", "wwwroot", "index.html");

    /// <summary>With ARRAYWRIGHT_GOLDEN=write it writes the screen into index.html.</summary>
    [Fact]
    public async Task The_screen_in_the_file_is_the_one_that_is_drawn()
    {
        await using Visit visit = await chromium.VisitAsync("start");
        await visit.Page.Locator("#app:not([hidden])").WaitForAsync();
        string drawn = (await visit.Page.Locator("#app").InnerHTMLAsync()).Trim();
        drawn = Blazors().Replace(drawn, "");
        string file = await File.ReadAllTextAsync(Source, TestContext.Current.CancellationToken);
        int from = file.IndexOf(Begins, StringComparison.Ordinal) + Begins.Length, to = file.IndexOf(Ends, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("ARRAYWRIGHT_GOLDEN") == "write")
        {
            await File.WriteAllTextAsync(Source, file[..from] + drawn + file[to..], TestContext.Current.CancellationToken);
            return;
        }

        Assert.Equal(drawn, file[from..to]);
    }

    [Fact]
    public async Task The_page_waits_for_somebody_and_what_is_typed_meanwhile_is_kept()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.Page.WaitForTimeoutAsync(500);
        Assert.Equal(0, await visit.Page.Locator("script[src*=blazor]").CountAsync());

        // Typed faster than any runtime starts, by keys that no field of its own hears.
        await visit.Page.EvaluateAsync("() => { document.getElementById('q-voc').value = '22.9'; document.getElementById('q-maxv').focus(); }");
        await visit.Page.Keyboard.TypeAsync("50");
        await visit.Page.Locator("#app:not([hidden])").WaitForAsync();
        await Assertions.Expect(visit.Page.Locator("#q-voc")).ToHaveValueAsync("22.9");
        await Assertions.Expect(visit.Page.Locator("#q-maxv")).ToHaveValueAsync("50");
        await Assertions.Expect(visit.Page.Locator("#q-maxv")).ToBeFocusedAsync();
        await visit.Page.Locator("#q-isc").FillAsync("6.72");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Answer", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#f-panels-0-voc")).ToHaveValueAsync("22.9");
        await Assertions.Expect(visit.Page.Locator("#f-panels-0-isc")).ToHaveValueAsync("6.72");
    }

    [Fact]
    public async Task What_is_pressed_before_the_runtime_is_there_is_done_when_it_is()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.Page.Locator("[data-example='lambing-shed']").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#opening")).ToBeVisibleAsync();
        await visit.AnsweredAsync();
        await Assertions.Expect(visit.Page.Locator("#first")).ToHaveCountAsync(0);
        Assert.NotEmpty(await visit.Verdict.InnerTextAsync());
    }

    [Fact]
    public async Task A_file_chosen_before_the_runtime_is_there_is_opened_when_it_is()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.OpenFileAsync("shed.yaml", System.Text.Encoding.UTF8.GetBytes(Repository.Example("lambing-shed")));
        await visit.AnsweredAsync();
        await visit.GoAsync("file");
        Assert.Equal(Repository.Example("lambing-shed"), await visit.Page.Locator("#plan-text").InputValueAsync());
    }

    /// <summary>Marks that the runtime leaves, and that mean nothing in a file.</summary>
    [GeneratedRegex("<!--!?-->| _bl_[-0-9a-f]+=\"\"", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Blazors();
}

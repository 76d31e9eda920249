using Arraywright.Page.Tests.Browser;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>Every screen on a desk, light and dark, and on a phone: no violation that axe finds, nothing wider than the screen, and a picture to look at.</summary>
public sealed class ScreenTests(Chromium chromium)
{
    private static readonly (string Screen, string? Choice)[] All =
    [
        ("start", null), ("plan", null), ("try", null), ("sun", "The year"), ("sun", "One day"), ("sun", "Tilt and direction"), ("sun", "More panels"),
        ("build", "Parts to buy"), ("build", "Report and order of connection"), ("build", "Letter to the maker"), ("build", "Circuit for a simulator"), ("file", null),
    ];

    /// <summary>What axe has against the page, one sentence a rule.</summary>
    private const string Axe = """
        async onlyColours => {
            const options = onlyColours ? { runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] } } : {};
            const { violations, passes } = await axe.run(document, options);
            if (passes.length === 0) return ['axe found nothing to look at'];
            return violations.map(one => `${one.id}: ${one.help}: ${one.nodes.slice(0, 3).map(node => node.html).join(', ')}`);
        }
        """;

    [Theory]
    [InlineData("desk", 1280, 900, "lambing-shed")]
    [InlineData("phone", 390, 844, "weaver-loft-ask")]
    public async Task Every_screen_is_open_to_everybody_and_fits(string device, int widthPx, int heightPx, string example)
    {
        Directory.CreateDirectory(Repository.Screens);
        await using Visit visit = await chromium.VisitAsync(options: new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = widthPx, Height = heightPx }, HasTouch = device == "phone" });
        await visit.TakeExampleAsync(example);
        await visit.Page.EvaluateAsync(new BundledAxeScriptProvider().GetScript());
        // What differs on a phone is the layout, and every kind of content is on these.
        foreach ((string screen, string? choice) in device == "desk" ? All : [.. All.Where(one => one.Choice is null or "The year" or "Parts to buy")])
        {
            await ShowAsync(visit, screen, choice);
            // Colours do not change with the width, and nothing else changes in the dark.
            foreach (ColorScheme scheme in device == "desk" ? new[] { ColorScheme.Light, ColorScheme.Dark } : [ColorScheme.Light])
            {
                await visit.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
                string name = $"{screen}{(choice is null ? "" : "-" + choice.ToLowerInvariant().Replace(' ', '-'))}-{device}-{scheme.ToString().ToLowerInvariant()}";
                await visit.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Screens, name + ".png"), FullPage = true });
                string[] against = await visit.Page.EvaluateAsync<string[]>(Axe, scheme == ColorScheme.Dark);
                Assert.True(against.Length == 0, $"{name}: {string.Join("; ", against)}");
                int over = await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
                Assert.True(over <= 0, $"{name}: {over} px wider than the screen");
            }
        }
    }

    private static async Task ShowAsync(Visit visit, string screen, string? choice)
    {
        await visit.GoAsync(screen);
        if (choice is not null)
        {
            await visit.Page.Locator(".choices button", new() { HasTextString = choice }).ClickAsync();
            await visit.Page.Locator(".sheet, .note").First.WaitForAsync();
        }
        else if (screen == "plan")
        {
            await visit.AnsweredAsync();
            await visit.Page.Locator(".picture svg").First.WaitForAsync();
        }
        else if (screen == "try")
        {
            await visit.Page.Locator(".right .verdict").WaitForAsync();
        }
    }
}

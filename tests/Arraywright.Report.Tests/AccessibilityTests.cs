using Arraywright.Presentation.Report;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Arraywright.Report.Tests;

/// <summary>The page in a real browser: the rules of axe, light and dark, and no scrolling sideways on a telephone.</summary>
public sealed class AccessibilityTests
{
    private const string Chromium = "/usr/bin/chromium";
    private static readonly string[] Alone =
    [
        "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run", "--disable-quic",
        // The browser's own address bar is a page of scripts for each window: without it a window costs two seconds less.
        "--disable-features=WebUIOmniboxPopup,WebUIOmniboxFullPopup,WebUITabSearch,InitialWebUI,InitialWebUIReloadButton,WebUIOmniboxAimPopup",
    ];

    /// <summary>Every verdict, light and dark, and the hardest names.</summary>
    private static readonly (string Name, ColorScheme Scheme)[] Opened =
    [
        ("one panel, no place, nothing optional", ColorScheme.Light),
        ("two panels, a stop", ColorScheme.Light),
        ("two panels, a stop", ColorScheme.Dark),
        ("sixteen panels, hard names", ColorScheme.Dark),
    ];

    /// <summary>Rules that the colours alone decide: of a page that was looked at in the light, nothing else changes in the dark.</summary>
    private static AxeRunOptions OfColours { get; } = new() { RunOnly = new RunOnlyOptions { Type = "rule", Values = ["color-contrast", "link-in-text-block"] } };

    /// <summary>What of the tables a person would have to scroll sideways for; empty where all is to be seen.</summary>
    private const string CutOff = """
        [...document.querySelectorAll('.table, .table th, .table td')]
          .filter(part => part.getBoundingClientRect().right > window.innerWidth || part.scrollWidth > part.clientWidth + 1)
          .map(part => part.textContent).join('; ')
        """;

    [Fact(Timeout = 400_000)]
    public async Task No_rule_of_axe_is_broken_and_nothing_runs_off_a_telephone()
    {
        Assert.SkipUnless(File.Exists(Chromium), "chromium is not installed: the page is not opened in a browser.");
        using IPlaywright playwright = await Playwright.CreateAsync();
        await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium, Args = Alone });
        HashSet<string> seen = [];
        foreach ((string name, ColorScheme scheme) in Opened)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            string html = HtmlReport.Of(Scene.Report(name));
            IPage page = await browser.NewPageAsync(new BrowserNewPageOptions { ColorScheme = scheme, BypassCSP = true, ViewportSize = new ViewportSize { Width = 360, Height = 740 } });
            List<string> asked = [];
            List<string> said = [];
            page.Request += (_, request) => asked.Add(request.Url);
            page.Console += (_, message) => said.Add(message.Text);
            await page.SetContentAsync(html);
            AxeResult result = seen.Add(name) ? await page.RunAxe() : await page.RunAxe(OfColours);
            Assert.NotEmpty(result.Passes);
            Assert.True(result.Violations.Length == 0, $"{name}, {scheme}: {string.Join("; ", result.Violations.Select(broken => $"{broken.Id}: {broken.Help}: {string.Join(", ", broken.Nodes.Select(node => node.Html))}"))}");
            Assert.Empty(asked);
            Assert.Empty(said);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= window.innerWidth"), $"{name} is wider than a telephone.");
            Assert.Equal("", await page.EvaluateAsync<string>(CutOff));
            await page.CloseAsync();
        }
    }
}

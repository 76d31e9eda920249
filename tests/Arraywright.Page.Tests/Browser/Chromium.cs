using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Chromium))]

namespace Arraywright.Page.Tests.Browser;

/// <summary>One browser and one server for all tests; each visit has storage of its own.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private const string Program = "/usr/bin/chromium";

    /// <summary>Without these the browser's own address bar, a page of scripts for each window, keeps the processors busy for seconds.</summary>
    internal const string PlainWindow = "--disable-features=WebUIOmniboxPopup,WebUIOmniboxFullPopup,WebUITabSearch,InitialWebUI,InitialWebUIReloadButton,WebUIOmniboxAimPopup";

    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private PageServer? _server;

    /// <summary>Why the browser tests cannot run here; null where they can.</summary>
    public string? Missing { get; private set; }

    internal PageServer Server => _server!;

    public async ValueTask InitializeAsync()
    {
        Missing = !File.Exists(Program) ? "there is no /usr/bin/chromium here: install the package chromium"
            : !File.Exists(Path.Combine(Repository.PublishedPage, "index.html")) ? "the page is not published: ./test does it, or dotnet publish src/Arraywright.Page -c Release -o artifacts/page"
            : null;
        if (Missing is not null)
        {
            return;
        }

        Assertions.SetDefaultExpectTimeout(Visit.PatienceMs);
        _server = await PageServer.StartAsync(Repository.PublishedPage);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Program,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run", "--disable-quic", PlainWindow],
        });
    }

    /// <summary>Opens the page as somebody who was never here before.</summary>
    /// <param name="fragment">What stands behind the # of the address.</param>
    /// <param name="options">Size, colours, language of the visitor.</param>
    internal async Task<Visit> VisitAsync(string fragment = "", BrowserNewContextOptions? options = null)
    {
        Assert.SkipWhen(Missing is not null, $"Browser tests: {Missing}");
        IBrowserContext context = await _browser!.NewContextAsync(options ?? new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 900 } });
        context.SetDefaultTimeout(Visit.PatienceMs);
        Visit visit = new(context, Server.Address);
        await visit.OpenAsync(fragment);
        return visit;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        if (_server is not null)
        {
            await _server.DisposeAsync();
        }
    }
}

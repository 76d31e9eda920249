using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests.Browser;

/// <summary>Somebody at the page. Ending a visit fails the test when the page asked anything of another address, or complained in the console.</summary>
internal sealed class Visit : IAsyncDisposable
{
    /// <summary>Long, for a machine that is busy with other tests.</summary>
    public const float PatienceMs = 120_000;

    private readonly string _address;
    private readonly ConcurrentQueue<string> _outside = new();
    private readonly ConcurrentQueue<string> _complaints = new();

    public Visit(IBrowserContext context, string address)
    {
        (Context, _address) = (context, address);
        context.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address, StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal) && !request.Url.StartsWith("chrome", StringComparison.Ordinal))
            {
                _outside.Enqueue(request.Url);
            }
        };
        context.Console += (_, said) =>
        {
            if (said.Type == "error" && !IsExpected(said.Text))
            {
                _complaints.Enqueue(said.Text);
            }
        };
    }

    public IBrowserContext Context { get; }

    public IPage Page { get; private set; } = null!;

    /// <summary>While the page may complain that there is no network.</summary>
    public bool IsOffline { get; set; }

    public ILocator Verdict => Page.Locator("#answer .verdict");

    public async Task OpenAsync(string fragment = "")
    {
        Page = await Context.NewPageAsync();
        await Page.GotoAsync(fragment.Length == 0 ? _address : $"{_address}#{fragment}");
        await ReadyAsync();
    }

    /// <summary>Waits until the page itself is there.</summary>
    public async Task ReadyAsync() => await Page.Locator("main#main h1").WaitForAsync();

    /// <summary>Begins with an example and waits for its answer.</summary>
    public async Task TakeExampleAsync(string name)
    {
        await GoAsync("start");
        await Page.Locator($"[data-example='{name}']").ClickAsync();
        await AnsweredAsync();
    }

    /// <summary>Shows a screen by the menu.</summary>
    public async Task GoAsync(string screen) => await Page.Locator($"nav a[href='#{screen}']").ClickAsync();

    /// <summary>Waits for the answer to the plan as it stands, pictures and all.</summary>
    public async Task AnsweredAsync()
    {
        await Assertions.Expect(Page.Locator("#answer")).Not.ToHaveAttributeAsync("aria-busy", "true", new() { Timeout = PatienceMs });
        await Verdict.First.WaitForAsync();
    }

    /// <summary>Saves by a button and gives back what the file holds.</summary>
    public async Task<byte[]> SavedAsync(string button)
    {
        IDownload download = await Page.RunAndWaitForDownloadAsync(() => Page.Locator(button).ClickAsync());
        return await File.ReadAllBytesAsync(await download.PathAsync());
    }

    /// <summary>Opens a file as a person would.</summary>
    public async Task OpenFileAsync(string name, byte[] bytes) =>
        await Page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/yaml", Buffer = bytes });

    public async ValueTask DisposeAsync()
    {
        await Context.DisposeAsync();
        Assert.Empty(_outside);
        Assert.True(_complaints.IsEmpty, string.Join(Environment.NewLine, _complaints));
    }

    private bool IsExpected(string text) => IsOffline && (text.Contains("ERR_INTERNET_DISCONNECTED", StringComparison.Ordinal) || text.Contains("Failed to load resource", StringComparison.Ordinal));
}

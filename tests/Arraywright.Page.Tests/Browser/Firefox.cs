using System.Diagnostics;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Arraywright.Page.Tests.Browser;

/// <summary>Debian's Firefox, driven by the W3C's WebDriver BiDi protocol, which it speaks by itself.</summary>
internal sealed class Firefox : IAsyncDisposable
{
    private const string Program = "/usr/bin/firefox-esr";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(180);

    private readonly Process _browser;
    private readonly ClientWebSocket _socket = new();
    private readonly string _profile;
    private int _lastId;
    private string _tab = "";

    private Firefox(Process browser, string profile) => (_browser, _profile) = (browser, profile);

    /// <summary>Why it cannot run here; null where it can.</summary>
    public static string? Missing => File.Exists(Program) ? null : $"there is no {Program} here: install the package firefox-esr";

    /// <summary>Starts it with an empty profile.</summary>
    public static async Task<Firefox> StartAsync()
    {
        string profile = Directory.CreateTempSubdirectory("arraywright-firefox").FullName;
        Process browser = Process.Start(new ProcessStartInfo(Program, ["--headless", "--no-remote", "--remote-debugging-port", "0", "--profile", profile, "about:blank"])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        })!;
        Firefox firefox = new(browser, profile);
        using CancellationTokenSource late = new(Patience);
        string address = "";
        while (address.Length == 0 && await browser.StandardError.ReadLineAsync(late.Token) is { } line)
        {
            int at = line.IndexOf("ws://", StringComparison.Ordinal);
            address = at < 0 ? "" : line[at..].Trim();
        }

        Assert.True(address.Length > 0, "Firefox did not say where it listens");
        _ = browser.StandardError.ReadToEndAsync(CancellationToken.None);
        _ = browser.StandardOutput.ReadToEndAsync(CancellationToken.None);
        await firefox._socket.ConnectAsync(new Uri($"{address}/session"), late.Token);
        await firefox.SendAsync("session.new", new JsonObject { ["capabilities"] = new JsonObject() });
        JsonNode tree = await firefox.SendAsync("browsingContext.getTree", []);
        firefox._tab = (string)tree["contexts"]![0]!["context"]!;
        return firefox;
    }

    /// <summary>Opens an address and waits until it is loaded.</summary>
    public Task OpenAsync(string address) =>
        SendAsync("browsingContext.navigate", new JsonObject { ["context"] = _tab, ["url"] = address, ["wait"] = "complete" });

    /// <summary>Runs a script in the page; a promise is waited for. The text it ends in.</summary>
    public async Task<string> RunAsync(string script)
    {
        JsonNode result = await SendAsync("script.evaluate", new JsonObject { ["expression"] = script, ["target"] = new JsonObject { ["context"] = _tab }, ["awaitPromise"] = true });
        Assert.True((string?)result["type"] == "success", $"Firefox: {result["exceptionDetails"]?["text"]}");
        return result["result"]!["value"]?.ToString() ?? "";
    }

    /// <summary>Waits until a script's text is not empty, and gives it back.</summary>
    public async Task<string> UntilAsync(string script)
    {
        Stopwatch clock = Stopwatch.StartNew();
        while (clock.Elapsed < Patience)
        {
            if (await RunAsync(script) is { Length: > 0 } text)
            {
                return text;
            }

            await Task.Delay(100);
        }

        Assert.Fail($"Firefox: nothing came of {script}");
        return "";
    }

    public async ValueTask DisposeAsync()
    {
        _socket.Dispose();
        _browser.Kill(entireProcessTree: true);
        await _browser.WaitForExitAsync();
        _browser.Dispose();
        Directory.Delete(_profile, recursive: true);
    }

    private async Task<JsonNode> SendAsync(string method, JsonObject parameters)
    {
        using CancellationTokenSource late = new(Patience);
        int id = ++_lastId;
        byte[] message = JsonSerializer.SerializeToUtf8Bytes(new JsonObject { ["id"] = id, ["method"] = method, ["params"] = parameters });
        await _socket.SendAsync(message, WebSocketMessageType.Text, endOfMessage: true, late.Token);
        while (true)
        {
            JsonNode answer = await ReceiveAsync(late.Token);
            if ((int?)answer["id"] == id)
            {
                Assert.True((string?)answer["type"] == "success", $"Firefox: {method}: {answer["message"]}");
                return answer["result"]!;
            }
        }
    }

    private async Task<JsonNode> ReceiveAsync(CancellationToken late)
    {
        using MemoryStream text = new();
        byte[] buffer = new byte[64 * 1024];
        while (true)
        {
            ValueWebSocketReceiveResult part = await _socket.ReceiveAsync(buffer.AsMemory(), late);
            text.Write(buffer, 0, part.Count);
            if (part.EndOfMessage)
            {
                return JsonNode.Parse(text.ToArray())!;
            }
        }
    }
}

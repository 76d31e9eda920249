using System.Security.Cryptography;
using System.Text;

namespace Arraywright.Host.Tests;

/// <summary>The page's folder over the line.</summary>
public sealed class PageTests : IDisposable
{
    private const string Map = """{"imports":{"./a.js":"./a.0123456789.js"}}""";
    private const string Index = $"""<!doctype html><base href="/" /><script type="importmap">{Map}</script>""";
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-page-").FullName;

    public PageTests()
    {
        Write("index.html", Index);
        Write("_framework/app.abc123defg.wasm", "as it is, and longer than its twins");
        Write("_framework/app.abc123defg.wasm.br", "by brotli");
        Write("_framework/app.abc123defg.wasm.gz", "by gzip, more");
        Write("_framework/plainwords.components.js", "no print");
        Write("service-worker.js", "const base = \"/\";");
        Write("service-worker-assets.js", $"self.assetsManifest = {{ \"hash\": \"{Hash(Index)}\", \"url\": \"index.html\" }};");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("br, gzip", "br", "by brotli")]
    [InlineData("gzip, deflate", "gzip", "by gzip, more")]
    [InlineData("br;q=0, gzip;q=0.5", "gzip", "by gzip, more")]
    [InlineData("", null, "as it is, and longer than its twins")]
    public async Task A_file_goes_out_as_its_smallest_twin_that_is_taken(string takes, string? encoding, string body)
    {
        await using RunningHost host = await StartAsync();
        using HttpResponseMessage answer = await host.GetAsync("_framework/app.abc123defg.wasm", ("Accept-Encoding", takes));
        Assert.Equal(encoding, answer.Content.Headers.ContentEncoding.SingleOrDefault());
        Assert.Equal(body, await Answers.TextAsync(answer));
        Assert.Equal("application/wasm", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("Accept-Encoding", Assert.Single(answer.Headers.Vary));
        Assert.Equal("public, max-age=31536000, immutable", Assert.Single(answer.Headers.NonValidated["Cache-Control"]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("index.html")]
    [InlineData("service-worker.js")]
    [InlineData("_framework/plainwords.components.js")]
    [InlineData("plan/of/the/page")]
    public async Task What_keeps_its_name_is_asked_for_again_and_sent_only_when_it_changed(string path)
    {
        await using RunningHost host = await StartAsync();
        using HttpResponseMessage answer = await host.GetAsync(path);
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.True(answer.Headers.CacheControl?.NoCache);
        using HttpResponseMessage again = await host.GetAsync(path, ("If-None-Match", answer.Headers.ETag!.Tag));
        Assert.Equal(304, (int)again.StatusCode);
        Assert.Empty(await Answers.TextAsync(again));
        using HttpResponseMessage other = await host.GetAsync(path, ("If-None-Match", "\"other\""));
        Assert.Equal(200, (int)other.StatusCode);
    }

    [Fact]
    public async Task A_head_is_the_answer_without_its_body()
    {
        await using RunningHost host = await StartAsync();
        using HttpResponseMessage head = await host.SendAsync(HttpMethod.Head, "index.html");
        Assert.Equal(Encoding.UTF8.GetByteCount(Index), head.Content.Headers.ContentLength);
        Assert.Empty(await Answers.TextAsync(head));
    }

    [Theory]
    [InlineData("missing.js")]
    [InlineData("_framework/app.abc123defg.wasm.map")]
    [InlineData("..%2f..%2f..%2fetc%2fpasswd.txt")]
    [InlineData("%2e%2e/%2e%2e/global.json")]
    public async Task A_file_that_is_not_there_is_not_the_page(string path)
    {
        await using RunningHost host = await StartAsync();
        using HttpResponseMessage answer = await host.GetAsync(path);
        Assert.Equal(404, (int)answer.StatusCode);
    }

    [Fact]
    public async Task Scripts_are_ours_and_the_import_map_alone_stands_in_the_page()
    {
        await using RunningHost host = await StartAsync();
        using HttpResponseMessage answer = await host.GetAsync("");
        Assert.Contains($"script-src 'self' 'wasm-unsafe-eval' '{Hash(Map)}';", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Under_a_path_page_and_worker_know_it_and_the_hash_still_holds()
    {
        await using RunningHost host = await RunningHost.StartAsync(new HostSettings { PageFolder = _folder, BasePath = "/sun" });
        Assert.EndsWith("/sun/", host.Client.BaseAddress!.ToString(), StringComparison.Ordinal);
        using HttpResponseMessage index = await host.GetAsync("");
        string moved = await Answers.TextAsync(index);
        Assert.Contains("<base href=\"/sun/\" />", moved, StringComparison.Ordinal);
        using HttpResponseMessage worker = await host.GetAsync("service-worker.js");
        Assert.Equal("const base = \"/sun/\";", await Answers.TextAsync(worker));
        using HttpResponseMessage assets = await host.GetAsync("service-worker-assets.js");
        Assert.Contains(Hash(moved), await Answers.TextAsync(assets), StringComparison.Ordinal);
        using HttpResponseMessage check = await host.AskAsync("check", Answers.Small("a"));
        Assert.Equal(200, (int)check.StatusCode);
        using HttpResponseMessage root = await host.GetAsync("/");
        Assert.Equal((302, "/sun/"), ((int)root.StatusCode, root.Headers.Location?.ToString()));
        using HttpResponseMessage bare = await host.GetAsync("/sun");
        Assert.Equal((302, "/sun/"), ((int)bare.StatusCode, bare.Headers.Location?.ToString()));
        using HttpResponseMessage outside = await host.GetAsync("/index.html");
        Assert.Equal(404, (int)outside.StatusCode);
        using HttpResponseMessage health = await host.GetAsync("/health");
        Assert.Equal(200, (int)health.StatusCode);
    }

    [Fact]
    public async Task Without_a_page_the_interface_is_pointed_to()
    {
        await using RunningHost host = await RunningHost.StartAsync(new HostSettings { PageFolder = Path.Combine(_folder, "none") });
        using HttpResponseMessage answer = await host.GetAsync("");
        Assert.Equal(404, (int)answer.StatusCode);
        Assert.Contains("api/openapi.json", await Answers.TextAsync(answer), StringComparison.Ordinal);
    }

    private Task<RunningHost> StartAsync() => RunningHost.StartAsync(new HostSettings { PageFolder = _folder });

    private void Write(string name, string text)
    {
        string path = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}

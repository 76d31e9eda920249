using System.IO.Compression;

namespace Arraywright.Host.Tests;

/// <summary>What a browser is told, and what goes over the line.</summary>
public sealed class HeaderTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private readonly RunningHost _host = shared.Host;

    [Theory]
    [InlineData("")]
    [InlineData("missing.js")]
    [InlineData("health")]
    [InlineData("api/openapi.json")]
    [InlineData("api/nothing")]
    [InlineData("api/check")]
    public async Task Every_answer_forbids_what_none_needs(string path)
    {
        using HttpResponseMessage answer = await _host.GetAsync(path);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("DENY", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Opener-Policy")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
        Assert.Contains("geolocation=(self)", Assert.Single(answer.Headers.GetValues("Permissions-Policy")), StringComparison.Ordinal);
        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task Answers_are_compressed_for_whoever_takes_it(string encoding)
    {
        byte[] plain = await AskedAsync(null), packed = await AskedAsync(encoding);
        Assert.True(packed.Length < plain.Length / 2, $"{packed.Length} of {plain.Length}");
        using MemoryStream from = new(packed), to = new();
        using Stream unpack = encoding == "br" ? new BrotliStream(from, CompressionMode.Decompress) : new GZipStream(from, CompressionMode.Decompress);
        unpack.CopyTo(to);
        Assert.Equal(plain, to.ToArray());
    }

    [Fact]
    public async Task No_other_site_may_ask_unless_it_is_named()
    {
        using HttpResponseMessage closed = await _host.GetAsync("api/schema", ("Origin", "https://example.org"));
        Assert.False(closed.Headers.Contains("Access-Control-Allow-Origin"));
        using HttpResponseMessage preflight = await Preflight(_host, "https://example.org");
        Assert.False(preflight.Headers.Contains("Access-Control-Allow-Origin"));

        await using RunningHost open = await RunningHost.StartAsync(new HostSettings { Origins = ["https://example.org"] });
        using HttpResponseMessage named = await Preflight(open, "https://example.org");
        Assert.Equal("https://example.org", Assert.Single(named.Headers.GetValues("Access-Control-Allow-Origin")));
        using HttpResponseMessage other = await Preflight(open, "https://example.com");
        Assert.False(other.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Fact]
    public async Task A_name_of_somebody_else_that_leads_here_is_not_answered()
    {
        using HttpResponseMessage foreign = await _host.GetAsync("health", ("Host", "rebound.example.org"));
        Assert.Equal(400, (int)foreign.StatusCode);
        await using RunningHost named = await RunningHost.StartAsync(new HostSettings { Names = ["sun.example.org"] });
        using HttpResponseMessage own = await named.GetAsync("health", ("Host", "sun.example.org"));
        Assert.Equal(200, (int)own.StatusCode);
    }

    [Fact]
    public async Task It_says_that_it_is_well()
    {
        using HttpResponseMessage answer = await _host.GetAsync("health");
        Assert.Equal("ok\n", await Answers.TextAsync(answer));
    }

    private async Task<byte[]> AskedAsync(string? encoding)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("api/check", UriKind.Relative)) { Content = new StringContent(Answers.Small("packed"), System.Text.Encoding.UTF8, "application/yaml") };
        if (encoding is not null)
        {
            request.Headers.Add("Accept-Encoding", encoding);
        }

        using HttpResponseMessage answer = await _host.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal(encoding, answer.Content.Headers.ContentEncoding.SingleOrDefault());
        return await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }

    private static Task<HttpResponseMessage> Preflight(RunningHost host, string origin) =>
        host.SendAsync(HttpMethod.Options, "api/check", ("Origin", origin), ("Access-Control-Request-Method", "POST"), ("Access-Control-Request-Headers", "content-type"));
}

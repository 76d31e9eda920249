using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Microsoft.AspNetCore.Builder;

namespace Arraywright.Host.Tests;

/// <summary>A host on a free port of this machine, with a client that takes nothing compressed unless it is asked to.</summary>
public sealed class RunningHost : IAsyncDisposable
{
    private RunningHost(WebApplication app)
    {
        App = app;
        Client = new HttpClient(new SocketsHttpHandler { AutomaticDecompression = DecompressionMethods.None, AllowAutoRedirect = false }) { BaseAddress = ArraywrightHost.Address(app), Timeout = TimeSpan.FromMinutes(5) };
    }

    public WebApplication App { get; }

    public HttpClient Client { get; }

    /// <summary>Starts one.</summary>
    public static async Task<RunningHost> StartAsync(HostSettings? settings = null)
    {
        WebApplication app = ArraywrightHost.Build((settings ?? new HostSettings { LimitS = 240 }) with { Port = 0 });
        await app.StartAsync();
        return new RunningHost(app);
    }

    /// <summary>Posts a plan.</summary>
    public Task<HttpResponseMessage> AskAsync(string question, string body, string type = "application/yaml") => AskAsync(question, Encoding.UTF8.GetBytes(body), type);

    /// <inheritdoc cref="AskAsync(string, string, string)"/>
    public Task<HttpResponseMessage> AskAsync(string question, byte[] body, string type = "application/yaml")
    {
        ByteArrayContent content = new(body);
        content.Headers.ContentType = type.Length == 0 ? null : MediaTypeHeaderValue.Parse(type);
        return Client.PostAsync(new Uri($"api/{question}", UriKind.Relative), content, TestContext.Current.CancellationToken);
    }

    /// <summary>Gets a path.</summary>
    public Task<HttpResponseMessage> GetAsync(string path, params (string Name, string Value)[] headers) => SendAsync(HttpMethod.Get, path, headers);

    /// <summary>Sends a request without a body.</summary>
    public Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, params (string Name, string Value)[] headers)
    {
        HttpRequestMessage request = new(method, new Uri(path, UriKind.RelativeOrAbsolute));
        foreach ((string name, string value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await App.DisposeAsync();
    }
}

/// <summary>One host for all tests of a class.</summary>
public sealed class SharedHost : IAsyncLifetime
{
    public RunningHost Host { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Host = await RunningHost.StartAsync();

    public ValueTask DisposeAsync() => Host.DisposeAsync();
}

using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.Logging;

namespace Arraywright.Page.Tests.Browser;

/// <summary>A plain file server on loopback, as any web host is one: the published folder, with the compressed files beside the others.</summary>
internal sealed class PageServer : IAsyncDisposable
{
    private readonly WebApplication _server;
    private long _sentBytes;

    private PageServer(WebApplication server) => _server = server;

    public string Address => _server.Urls.Single() + "/";

    /// <summary>Bytes of files sent so far, as they went over the wire.</summary>
    public long SentBytes => Interlocked.Read(ref _sentBytes);

    public static async Task<PageServer> StartAsync(string folder)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        PageServer server = new(builder.Build());
        FileExtensionContentTypeProvider types = new();
        types.Mappings[".dat"] = "application/octet-stream";
        server._server.Run(context => server.SendAsync(context, folder, types));
        await server._server.StartAsync();
        return server;
    }

    public ValueTask DisposeAsync() => _server.DisposeAsync();

    private async Task SendAsync(HttpContext context, string folder, FileExtensionContentTypeProvider types)
    {
        string asked = context.Request.Path.Value is "/" or null ? "/index.html" : context.Request.Path.Value;
        string path = Path.GetFullPath(Path.Combine(folder, asked.TrimStart('/')));
        if (!path.StartsWith(folder, StringComparison.Ordinal) || !File.Exists(path))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        context.Response.ContentType = types.TryGetContentType(path, out string? type) ? type : "application/octet-stream";
        context.Response.Headers.CacheControl = "no-cache";
        if (File.Exists(path + ".br") && context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal))
        {
            context.Response.Headers.ContentEncoding = "br";
            path += ".br";
        }

        FileInfo file = new(path);
        context.Response.ContentLength = file.Length;
        Interlocked.Add(ref _sentBytes, file.Length);
        await context.Response.SendFileAsync(path, context.RequestAborted);
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Address}, {SentBytes} bytes sent");
}

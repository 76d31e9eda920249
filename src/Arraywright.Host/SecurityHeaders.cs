using Arraywright.Host.Page;

namespace Arraywright.Host;

/// <summary>What a browser is told never to do with anything that comes from here.</summary>
internal static class SecurityHeaders
{
    private const string Api = "default-src 'none'; frame-ancestors 'none'";

    /// <summary>A report is one file with its style and pictures in it.</summary>
    private const string Report = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'none'";

    private const string Permissions =
        "accelerometer=(self), geolocation=(self), gyroscope=(self), magnetometer=(self), camera=(), microphone=(), payment=(), usb=(), serial=(), bluetooth=(), display-capture=(), browsing-topics=()";

    /// <summary>The step of the pipeline that sets them, before anything is written.</summary>
    public static Func<HttpContext, RequestDelegate, Task> For(PageFiles page)
    {
        string ofPage = Policy(page);
        return (context, next) =>
        {
            IHeaderDictionary headers = context.Response.Headers;
            headers.ContentSecurityPolicy = context.Request.Path == "/api/report" ? Report : context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal) ? Api : ofPage;
            headers.XContentTypeOptions = "nosniff";
            headers.XFrameOptions = "DENY";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Permissions-Policy"] = Permissions;
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Embedder-Policy"] = "require-corp";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            return next(context);
        };
    }

    /// <summary>Scripts from here alone, WebAssembly among them; of inline ones only the import map that the page's own build wrote, by its hash.</summary>
    private static string Policy(PageFiles page)
    {
        string hashes = string.Concat(page.ImportMapHashes.Select(hash => $" '{hash}'"));
        return $"default-src 'none'; script-src 'self' 'wasm-unsafe-eval'{hashes}; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
            + "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
    }
}

using Microsoft.Net.Http.Headers;

namespace Arraywright.Host.Page;

/// <summary>Every path that is not the interface's: files of the page, and the page itself for its own addresses.</summary>
internal static class PageRoutes
{
    private const string NoPage = "There is no page here, only the JSON interface: see api/openapi.json.\n";
    private const string NoFile = "There is no such file.\n";

    /// <summary>Maps them.</summary>
    public static void Map(WebApplication app, PageFiles page)
    {
        app.MapMethods("/{**path}", ["GET", "HEAD"], (RequestDelegate)(context => ServeAsync(context, page)));
    }

    private static Task ServeAsync(HttpContext context, PageFiles page)
    {
        string path = context.Request.RouteValues["path"] as string ?? "";
        if (page.Find(path) is { } file)
        {
            return SendAsync(context, file);
        }

        // An address of the page's own has no extension; a missing file must not be answered with the page.
        return page.IsThere && !Path.HasExtension(path)
            ? SendAsync(context, page.Find("")!)
            : MissingAsync(context, page.IsThere ? NoFile : NoPage);
    }

    private static Task SendAsync(HttpContext context, PageFile file)
    {
        PageTwin twin = Accepted(context.Request, file);
        IHeaderDictionary headers = context.Response.Headers;
        headers.CacheControl = file.IsForever ? "public, max-age=31536000, immutable" : "no-cache";
        headers.ETag = twin.Tag;
        headers.Vary = file.Twins.Length > 1 ? HeaderNames.AcceptEncoding : default;
        if (IsKnown(context.Request, twin.Tag))
        {
            context.Response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        headers.ContentEncoding = twin.Encoding;
        headers.ContentType = file.Type;
        headers.ContentLength = twin.Bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(twin.Bytes, context.RequestAborted).AsTask();
    }

    private static Task MissingAsync(HttpContext context, string words)
    {
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        context.Response.ContentType = "text/plain; charset=utf-8";
        context.Response.Headers.CacheControl = "no-cache";
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.WriteAsync(words, context.RequestAborted);
    }

    /// <summary>The smallest twin that the client takes; an encoding with weight nought it does not take.</summary>
    private static PageTwin Accepted(HttpRequest request, PageFile file)
    {
        IList<StringWithQualityHeaderValue> takes = StringWithQualityHeaderValue.TryParseList(request.Headers.AcceptEncoding, out IList<StringWithQualityHeaderValue>? parsed) ? parsed : [];
        return file.Twins.First(twin => twin.Encoding is null || takes.Any(taken => taken.Value.Equals(twin.Encoding, StringComparison.OrdinalIgnoreCase) && taken.Quality is not 0));
    }

    private static bool IsKnown(HttpRequest request, string tag) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out IList<EntityTagHeaderValue>? tags)
        && tags.Any(known => known.Tag == "*" || known.Tag == tag);
}

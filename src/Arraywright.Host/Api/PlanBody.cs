using System.Collections.Immutable;
using Arraywright.Files;
using Microsoft.Net.Http.Headers;

namespace Arraywright.Host.Api;

/// <summary>A plan as the body of a request.</summary>
internal static class PlanBody
{
    /// <summary>Largest body, bytes: the largest plan file.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>Longest time that a body may take to come, s; slower than Kestrel's least rate it ends sooner.</summary>
    private const double MostS = 30;

    /// <summary>Types that a plan may be sent as; JSON is YAML too.</summary>
    public static ImmutableArray<string> Types { get; } = ["application/yaml", "text/yaml", "application/json"];

    /// <summary>The plan, or every fault of it; what it says must not make the host read files of its own.</summary>
    public static PlanReading Read(ReadOnlyMemory<byte> body) => PlanFile.ReadBytes(body, "plan", mayNameFiles: false);

    /// <summary>Whether a request's type is one of those; other letters than UTF-8 are refused with it.</summary>
    public static bool HasType(HttpRequest request, ImmutableArray<string> types) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && types.Any(known => type.MediaType.Equals(known, StringComparison.OrdinalIgnoreCase))
        && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase) || type.Charset.Equals("\"utf-8\"", StringComparison.OrdinalIgnoreCase));

    /// <summary>The whole body.</summary>
    /// <exception cref="BadHttpRequestException">It is too large, comes too slowly, or breaks off.</exception>
    public static async Task<ReadOnlyMemory<byte>> ReadAllAsync(HttpRequest request)
    {
        using CancellationTokenSource patience = CancellationTokenSource.CreateLinkedTokenSource(request.HttpContext.RequestAborted);
        patience.CancelAfter(TimeSpan.FromSeconds(MostS));
        using MemoryStream body = new(request.ContentLength is { } length and <= MostBytes ? (int)length : 0);
        try
        {
            await request.Body.CopyToAsync(body, patience.Token);
        }
        catch (OperationCanceledException late) when (!request.HttpContext.RequestAborted.IsCancellationRequested)
        {
            throw new BadHttpRequestException("Reading the request body timed out.", StatusCodes.Status408RequestTimeout, late);
        }

        return body.GetBuffer().AsMemory(0, (int)body.Length);
    }
}

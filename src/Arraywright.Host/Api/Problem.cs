using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Arraywright.Files;
using Arraywright.Files.Asking;

namespace Arraywright.Host.Api;

/// <summary>Answers that are none, as problem details (RFC 9457): what is wrong, where, and what to do.</summary>
internal static partial class Problem
{
    private static readonly JsonWriterOptions Readable = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The plan has faults; all are listed with their places.</summary>
    public static Task WrongPlan(HttpContext context, IReadOnlyList<Fault> faults) => WriteAsync(
        context,
        StatusCodes.Status422UnprocessableEntity,
        "the plan is wrong",
        string.Create(CultureInfo.InvariantCulture, $"{faults.Count} {(faults.Count == 1 ? "fault" : "faults")}; the first: {faults[0]}"),
        json => WriteFaults(json, faults));

    /// <summary>The plan is sound, but lacks what the question needs.</summary>
    public static Task Refused(HttpContext context, Refusal refusal) => WriteAsync(
        context,
        StatusCodes.Status422UnprocessableEntity,
        "this cannot be asked of this plan",
        refusal.Option is null ? refusal.Text : $"{refusal.Option}: {refusal.Text}");

    /// <summary>Options in the address are wrong; all are listed.</summary>
    public static Task WrongOptions(HttpContext context, IReadOnlyList<string> faults) =>
        WriteAsync(context, StatusCodes.Status400BadRequest, "the options are wrong", string.Join("\n", faults));

    /// <summary>The body is of another type.</summary>
    public static Task WrongType(HttpContext context, IReadOnlyList<string> types)
    {
        context.Response.Headers.Accept = string.Join(", ", types);
        return WriteAsync(context, StatusCodes.Status415UnsupportedMediaType, "the body has another type", $"expected Content-Type: {string.Join(" or ", types)}, in UTF-8");
    }

    /// <summary>Questions are posted.</summary>
    public static Task WrongMethod(HttpContext context)
    {
        context.Response.Headers.Allow = "POST";
        return WriteAsync(context, StatusCodes.Status405MethodNotAllowed, "questions are posted", "expected POST with the plan as the body");
    }

    /// <summary>There is no such question.</summary>
    public static Task NoSuchQuestion(HttpContext context) => WriteAsync(
        context,
        StatusCodes.Status404NotFound,
        "there is no such question",
        $"expected POST /api/ and one of {string.Join(", ", QuestionTable.All.Select(question => question.Verb))}; GET /api/openapi.json describes them");

    /// <summary>One client asks too fast.</summary>
    public static Task TooFast(HttpContext context, TimeSpan after)
    {
        context.Response.Headers.RetryAfter = ClientRate.Seconds(after);
        return WriteAsync(context, StatusCodes.Status429TooManyRequests, "too many questions", "ask again in a moment, and slower");
    }

    /// <summary>Too many ask at once.</summary>
    public static Task Busy(HttpContext context)
    {
        context.Response.Headers.RetryAfter = "5";
        return WriteAsync(context, StatusCodes.Status503ServiceUnavailable, "too many ask at once", "nothing was computed; ask again in a moment");
    }

    /// <summary>The time ran out.</summary>
    public static Task TookTooLong(HttpContext context, double limitS) => WriteAsync(
        context,
        StatusCodes.Status503ServiceUnavailable,
        "it took too long",
        string.Create(CultureInfo.InvariantCulture, $"nothing whole came of it in {limitS:0.#} s, which is as long as this host computes for one question; ask of a smaller pile, or run the command yourself"));

    /// <summary>The step of the pipeline where every failure ends: a request that is wrong in itself, and ours.</summary>
    public static async Task InsteadOfFailure(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (BadHttpRequestException bad) when (!context.Response.HasStarted)
        {
            await (bad.StatusCode switch
            {
                StatusCodes.Status413PayloadTooLarge => WriteAsync(context, bad.StatusCode, "the body is too large", "found more than 1 MiB; expected a plan, which has a few kilobytes"),
                StatusCodes.Status408RequestTimeout => WriteAsync(context, bad.StatusCode, "the body came too slowly", "it was waited for long enough; send it again"),
                _ => WriteAsync(context, bad.StatusCode, "the request is wrong", "it breaks the rules of HTTP"),
            });
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody is left to tell.
        }
        catch (Exception failure) when (!context.Response.HasStarted)
        {
            FailedInside(context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger("Arraywright.Host"), context.Request.Path, failure);
            await WriteAsync(context, StatusCodes.Status500InternalServerError, "something failed inside", "not by your doing; please report it with the plan");
        }
    }

    [LoggerMessage(LogLevel.Error, "A question failed inside: {Path}")]
    private static partial void FailedInside(ILogger logger, PathString path, Exception failure);

    private static void WriteFaults(Utf8JsonWriter json, IReadOnlyList<Fault> faults)
    {
        json.WriteStartArray("faults");
        foreach (Fault fault in faults)
        {
            json.WriteStartObject();
            json.WriteString("file", fault.File);
            json.WriteNumber("line", fault.Line);
            json.WriteNumber("column", fault.Column);
            json.WriteString("found", fault.Found);
            json.WriteString("expected", fault.Expected);
            json.WriteString("hint", fault.Hint);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static Task WriteAsync(HttpContext context, int status, string title, string detail, Action<Utf8JsonWriter>? more = null)
    {
        ArrayBufferWriter<byte> text = new();
        using (Utf8JsonWriter json = new(text, Readable))
        {
            json.WriteStartObject();
            json.WriteString("type", "about:blank");
            json.WriteString("title", title);
            json.WriteNumber("status", status);
            json.WriteString("detail", detail);
            more?.Invoke(json);
            json.WriteEndObject();
        }

        context.Response.StatusCode = status;
        context.Response.ContentType = "application/problem+json; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.Body.WriteAsync(text.WrittenMemory, context.RequestAborted).AsTask();
    }
}

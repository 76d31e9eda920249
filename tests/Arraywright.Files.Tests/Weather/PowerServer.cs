using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Arraywright.Files.Tests.Weather;

/// <summary>A server on this machine that answers as it is told, once for each request; the last answer stands for all further ones.</summary>
internal sealed class PowerServer : IDisposable
{
    private readonly HttpListener _listener = new();
    private readonly Func<HttpListenerContext, Task>[] _answers;
    private readonly Task _loop;
    private int _asked;
    private int _open;

    public PowerServer(params Func<HttpListenerContext, Task>[] answers)
    {
        _answers = answers;
        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            Address = new Uri($"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}/api/");
        }

        _listener.Prefixes.Add(Address.AbsoluteUri);
        _listener.Start();
        _loop = Task.Run(ServeAsync);
    }

    public Uri Address { get; }

    /// <summary>Requests so far: address and user agent.</summary>
    public ConcurrentQueue<(Uri Url, string? UserAgent)> Requests { get; } = new();

    /// <summary>Most requests that were open at once.</summary>
    public int MostAtOnce { get; private set; }

    public static Func<HttpListenerContext, Task> Json(string text) => context => Send(context, "application/json; charset=utf-8", Encoding.UTF8.GetBytes(text));

    public static Func<HttpListenerContext, Task> Page(string text) => context => Send(context, "text/html", Encoding.UTF8.GetBytes(text));

    public static Func<HttpListenerContext, Task> Status(int code, string? retryAfter = null) => context =>
    {
        context.Response.StatusCode = code;
        if (retryAfter is not null)
        {
            context.Response.AddHeader("Retry-After", retryAfter);
        }

        context.Response.Close();
        return Task.CompletedTask;
    };

    /// <summary>Promises the whole and breaks the connection after a part.</summary>
    public static Func<HttpListenerContext, Task> BrokenOff(string text, int after) => async context =>
    {
        byte[] body = Encoding.UTF8.GetBytes(text);
        context.Response.ContentType = "application/json";
        context.Response.ContentLength64 = body.Length;
        await context.Response.OutputStream.WriteAsync(body.AsMemory(0, after));
        await context.Response.OutputStream.FlushAsync();
        context.Response.Abort();
    };

    /// <summary>Ends properly, in the middle of the text.</summary>
    public static Func<HttpListenerContext, Task> CutOff(string text, int after) => Json(text[..after]);

    /// <summary>Sends the whole drop by drop.</summary>
    public static Func<HttpListenerContext, Task> Slow(string text, int drops) => async context =>
    {
        byte[] body = Encoding.UTF8.GetBytes(text);
        context.Response.ContentType = "application/json";
        context.Response.ContentLength64 = body.Length;
        foreach (byte[] drop in body.Chunk((body.Length / drops) + 1))
        {
            await context.Response.OutputStream.WriteAsync(drop);
            await context.Response.OutputStream.FlushAsync();
            await Task.Delay(20);
        }

        context.Response.Close();
    };

    /// <summary>Never ends by itself.</summary>
    public static Func<HttpListenerContext, Task> Stuck() => async context =>
    {
        context.Response.ContentType = "application/json";
        context.Response.SendChunked = true;
        await context.Response.OutputStream.WriteAsync("{"u8.ToArray());
        await context.Response.OutputStream.FlushAsync();
        await Task.Delay(TimeSpan.FromSeconds(3));
        context.Response.Abort();
    };

    public void Dispose()
    {
        _listener.Close();
        _loop.Wait(TimeSpan.FromSeconds(5));
    }

    private static async Task Send(HttpListenerContext context, string type, byte[] body)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength64 = body.Length;
        await context.Response.OutputStream.WriteAsync(body);
        context.Response.Close();
    }

    private async Task ServeAsync()
    {
        while (_listener.IsListening)
        {
            HttpListenerContext context;
            try
            {
                context = await _listener.GetContextAsync();
            }
            catch (Exception closed) when (closed is HttpListenerException or ObjectDisposedException)
            {
                return;
            }

            Requests.Enqueue((context.Request.Url!, context.Request.UserAgent));
            Func<HttpListenerContext, Task> answer = _answers[Math.Min(_asked++, _answers.Length - 1)];
            _ = AnswerAsync(answer, context);
        }
    }

    private async Task AnswerAsync(Func<HttpListenerContext, Task> answer, HttpListenerContext context)
    {
        MostAtOnce = Math.Max(MostAtOnce, Interlocked.Increment(ref _open));
        try
        {
            await answer(context);
        }
        catch (Exception gone) when (gone is HttpListenerException or ObjectDisposedException or IOException)
        {
            // The client went away, as it may.
        }
        finally
        {
            Interlocked.Decrement(ref _open);
        }
    }
}

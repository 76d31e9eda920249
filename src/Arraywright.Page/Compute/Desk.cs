using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace Arraywright.Page.Compute;

/// <summary>The worker's door: a question in, replies out one by one, so that between them it can hear that nobody waits for more. The page itself never computes, so it never freezes.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Desk
{
    private static IEnumerator<Reply> _replies = Enumerable.Empty<Reply>().GetEnumerator();

    /// <summary>Takes a question, in place of the one before it.</summary>
    /// <returns>Name of the weather file to be given before it can be answered; null where <see cref="Next"/> answers it.</returns>
    [JSExport]
    internal static string? Ask(string question)
    {
        _replies.Dispose();
        try
        {
            (IEnumerable<Reply> replies, string? lacking) = Answers.To(JsonSerializer.Deserialize(question, DeskJson.Default.Question)!, new SharesDone());
            _replies = replies.GetEnumerator();
            return lacking;
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            _replies = Enumerable.Repeat(Broken(failed), 1).GetEnumerator();
            return null;
        }
    }

    /// <summary>The next reply, as JSON in UTF-8, which goes from thread to thread as it is; null where there is no other.</summary>
    [JSExport]
    internal static byte[]? Next()
    {
        try
        {
            return _replies.MoveNext() ? Write(_replies.Current) : null;
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            return Write(Broken(failed));
        }
    }

    /// <summary>Gives a weather file, whole.</summary>
    [JSExport]
    internal static void Give(string name, byte[] bytes) => Answers.Weather.Put(name, bytes);

    /// <summary>The end of a question whose weather file is not to be had: judged by milder weather than the plan's, it could be told to go where it must stop.</summary>
    [JSExport]
    internal static byte[] GoWithout(string name) =>
        Write(new Reply { Refusal = $"The plan names the weather file \"{name}\", which this page has not been given. Open it under Place, or leave it out there: the built-in climate serves then." });

    /// <summary>Nothing that a plan holds should end here; if it does, the page says so and keeps the plan.</summary>
    private static Reply Broken(Exception failed) =>
        new() { Refusal = $"Something went wrong inside the calculation ({failed.GetType().Name}). The plan is kept; please report it with the plan file." };

    private static byte[] Write(Reply reply) => JsonSerializer.SerializeToUtf8Bytes(reply, DeskJson.Default.Reply);

    [JSImport("progress", "desk")]
    private static partial void Progress(double share);

    /// <summary>Tells the page how much of a search is done, in steps worth seeing.</summary>
    private sealed class SharesDone : IProgress<double>
    {
        private double _last = -1;

        public void Report(double value)
        {
            if (Math.Abs(value - _last) >= 0.01)
            {
                _last = value;
                Progress(value);
            }
        }
    }
}

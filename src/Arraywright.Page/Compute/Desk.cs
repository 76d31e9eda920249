using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace Arraywright.Page.Compute;

/// <summary>The worker's door: a question in, replies out as they are ready. The page itself never computes, so it never freezes.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Desk
{
    /// <summary>Answers a question; the answer comes in one or more calls of reply.</summary>
    /// <returns>Name of the weather file to be given before it can be answered; null once it is answered.</returns>
    [JSExport]
    internal static string? Ask(string question)
    {
        try
        {
            return Answers.To(JsonSerializer.Deserialize(question, DeskJson.Default.Question)!, new SharesDone(), Send);
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            // Nothing that a plan holds should end here; if it does, the page says so and keeps the plan.
            Send(new Reply { Refusal = $"Something went wrong inside the calculation ({failed.GetType().Name}). The plan is kept; please report it with the plan file." });
            return null;
        }
    }

    /// <summary>Gives a weather file, whole.</summary>
    [JSExport]
    internal static void Give(string name, byte[] bytes) => Answers.Weather.Put(name, bytes);

    /// <summary>Ends a question whose weather file is not to be had: judged by milder weather than the plan's, it could be told to go where it must stop.</summary>
    [JSExport]
    internal static void GoWithout(string name) =>
        Send(new Reply { Refusal = $"The plan names the weather file \"{name}\", which this page has not been given. Open it under Place, or leave it out there: the built-in climate serves then." });

    private static void Send(Reply reply) => Post(JsonSerializer.Serialize(reply, DeskJson.Default.Reply));

    [JSImport("reply", "desk")]
    private static partial void Post(string reply);

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

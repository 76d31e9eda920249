using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace Arraywright.Page.Compute;

/// <summary>The worker's door: a question in, replies out as they are ready. The page itself never computes, so it never freezes.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Desk
{
    /// <summary>Answers a question; the answer comes in one or more calls of reply.</summary>
    [JSExport]
    internal static void Ask(string question)
    {
        try
        {
            Answers.To(JsonSerializer.Deserialize(question, DeskJson.Default.Question)!, new SharesDone(), Send);
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            // Nothing that a plan holds should end here; if it does, the page says so and keeps the plan.
            Send(new Reply { Refusal = $"Something went wrong inside the calculation ({failed.GetType().Name}). The plan is kept; please report it with the plan file." });
        }
    }

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

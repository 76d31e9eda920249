using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using Arraywright.Files;
using Arraywright.Planning;

namespace Arraywright.Page.Compute;

[SupportedOSPlatform("browser")]
internal static partial class Desk
{
    [JSExport]
    internal static string Answer(string text)
    {
        PlanReading reading = PlanFile.Read(text, "plan");
        return reading.Plan is { } plan ? ResultJson.Write(Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None), 0) : string.Join('\n', reading.Faults);
    }
}

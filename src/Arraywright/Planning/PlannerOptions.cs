using Arraywright.Energy;

namespace Arraywright.Planning;

/// <summary>What a person may ask for beside the plan.</summary>
/// <param name="Conditions">Conditions for the operating points, the meter and the loss ladder.</param>
public sealed record PlannerOptions(StatedConditions Conditions)
{
    /// <summary>Keeps the sun of places from one question to the next; null for a caller that asks once. Changes no figure.</summary>
    public SunMemory? Memory { get; init; }

    /// <summary>
    /// Told the best that may be connected without asking as soon as it is certain, while what else there is to show is still looked for; null for a caller
    /// that waits for all. Its one design is the first of the answer. Not told where nothing goes without asking.
    /// </summary>
    public Action<PlanResult>? Early { get; init; }

    /// <summary>Nothing stated.</summary>
    public static PlannerOptions Default { get; } = new(StatedConditions.None);
}

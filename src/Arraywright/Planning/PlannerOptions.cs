using Arraywright.Energy;

namespace Arraywright.Planning;

/// <summary>What a person may ask for beside the plan.</summary>
/// <param name="Conditions">Conditions for the operating points, the meter and the loss ladder.</param>
public sealed record PlannerOptions(StatedConditions Conditions)
{
    /// <summary>Keeps the sun of places from one question to the next; null for a caller that asks once. Changes no figure.</summary>
    public SunMemory? Memory { get; init; }

    /// <summary>Nothing stated.</summary>
    public static PlannerOptions Default { get; } = new(StatedConditions.None);
}

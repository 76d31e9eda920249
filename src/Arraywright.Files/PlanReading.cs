namespace Arraywright.Files;

/// <summary>What came of reading a plan: the plan, or everything that is wrong with it.</summary>
/// <param name="Plan">The plan; null when there is any fault.</param>
/// <param name="Faults">Every fault, in file order; empty when there is a plan.</param>
public sealed record PlanReading(Plan? Plan, IReadOnlyList<Fault> Faults);

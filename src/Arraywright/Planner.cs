namespace Arraywright;

/// <summary>PLACEHOLDER of branch show: the founder's planner replaces this file.</summary>
/// <param name="Conditions">Conditions for the operating points.</param>
public sealed record PlannerOptions(StatedConditions Conditions);

/// <summary>PLACEHOLDER of branch show: the founder's planner replaces this file.</summary>
public static class Planner
{
    /// <summary>Finds, proves and ranks the wirings of a plan.</summary>
    public static PlanResult Answer(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) => throw new NotSupportedException(plan.Name);

    /// <summary>Judges the wiring that the plan states.</summary>
    public static PlanResult Check(Plan plan, PlannerOptions options, CancellationToken cancellation) => throw new NotSupportedException(plan.Name);

    /// <summary>Writes the letters for the stated or best wiring.</summary>
    public static AskResult Ask(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) => throw new NotSupportedException(plan.Name);
}

/// <summary>PLACEHOLDER of branch show: the founder's planner replaces this file.</summary>
public static class CurveStudy
{
    /// <summary>The curve of the stated or best wiring of one input (the first that has a wiring when null).</summary>
    public static CurveResult Run(Plan plan, string? input, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) => throw new NotSupportedException(plan.Name);
}

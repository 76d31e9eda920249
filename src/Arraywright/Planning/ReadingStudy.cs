using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Planning;

/// <summary>Open-circuit volts of one part of a wiring, and of the parts within it.</summary>
/// <param name="VoltageV">Between its open ends, V.</param>
/// <param name="Parts">Its parts in the wiring's order; empty for a panel.</param>
public sealed record OpenReading(double VoltageV, ImmutableArray<OpenReading> Parts);

/// <summary>What meters show at each part of the array of one input.</summary>
/// <param name="OpenCold">With nothing connected at the coldest, the worst case, as the voltage limit is judged: that of the whole is <see cref="Assignment.VocColdV"/>.</param>
/// <param name="AtWork">Under the conditions of the design's operating point; null where the input draws nothing.</param>
public sealed record ArrayReading(OpenReading OpenCold, PartReading? AtWork);

/// <summary>What meters show at every junction of a design.</summary>
public static class ReadingStudy
{
    /// <summary>The readings of each input's array, in plan order; null where nothing is connected.</summary>
    /// <param name="plan">The plan of the design.</param>
    /// <param name="design">The design, its wirings in canonical form.</param>
    /// <param name="options">The conditions its operating points are of.</param>
    public static ImmutableArray<ArrayReading?> Of(Plan plan, Design design, PlannerOptions options)
    {
        PlanPhysics physics = new(plan, asked: options.Conditions);
        ImmutableArray<Conditions> seen = physics.Seen(options.Conditions);
        DesignJudge judge = new(physics, seen);
        return [.. design.Assignments.Select((assignment, index) =>
        {
            if (assignment.Wiring is not { } wiring)
            {
                return null;
            }

            RuleContext context = judge.Context(wiring, plan.Inputs[index].Input);
            PartReading? atWork = assignment.Operating.LimitedBy == LimitedBy.Off
                ? null
                : PartReading.Of(wiring, physics.Tree(wiring, seen), assignment.Operating.VoltageV);
            return new ArrayReading(Open(wiring, context), atWork);
        })];
    }

    private static OpenReading Open(Wiring part, RuleContext context) => new(
        ColdVoltage.Of(part, context),
        part switch
        {
            Wiring.Series series => [.. series.Parts.Select(inner => Open(inner, context))],
            Wiring.Parallel parallel => [.. parallel.Parts.Select(inner => Open(inner, context))],
            _ => [],
        });
}

using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Planning;

/// <summary>The current-voltage curve of a plan's wiring.</summary>
public static class CurveStudy
{
    private const int Points = 401;

    /// <summary>The curve of the stated wiring, or the best where none is stated.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="input">Name of the input; null for the first that has a wiring.</param>
    /// <param name="options">Conditions.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends a search early.</param>
    /// <exception cref="ArgumentException">The named input is not there or has no wiring.</exception>
    public static CurveResult Run(Plan plan, string? input, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        bool stated = plan.Inputs.Any(planned => planned.StatedWiring is not null && (input is null || planned.Input.Name == input));
        PlanResult result = Wired(plan, stated, options, progress, cancellation);
        return Of(result, Index(result.Designs[0], input), options);
    }

    /// <summary>The curve of every input that the stated wiring connects, or the best where none is stated, in plan order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Conditions.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends a search early.</param>
    public static ImmutableArray<CurveResult> RunAll(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) =>
        Of(Wired(plan, plan.Inputs.Any(planned => planned.StatedWiring is not null), options, progress, cancellation), options);

    /// <summary>The curve of each input that an answer's first design connects, in plan order.</summary>
    /// <param name="result">The answer.</param>
    /// <param name="options">Conditions.</param>
    public static ImmutableArray<CurveResult> Of(PlanResult result, PlannerOptions options) =>
        [.. Enumerable.Range(0, result.Plan.Inputs.Length).Where(index => result.Designs[0].Assignments[index].Wiring is not null).Select(index => Of(result, index, options))];

    /// <summary>The wiring to draw. A curve needs no year: what a stated wiring earns is not asked.</summary>
    private static PlanResult Wired(Plan plan, bool isStated, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) =>
        isStated ? Planner.Check(plan with { Goal = Goal.Peak }, options) : Planner.Answer(plan, options, progress, cancellation);

    private static CurveResult Of(PlanResult result, int index, PlannerOptions options)
    {
        Plan plan = result.Plan;
        Assignment assignment = result.Designs[0].Assignments[index];
        PlanPhysics physics = new(result.Plan);
        CircuitTree tree = physics.Tree(assignment.Wiring!, physics.Seen(options.Conditions));
        Circuit circuit = new(tree);
        double[] currentA = new double[Points];
        circuit.Sweep(currentA);
        double[] voltageV = [.. Enumerable.Range(0, Points).Select(i => circuit.OpenCircuitV * i / (Points - 1))];
        return new CurveResult
        {
            Plan = result.Plan,
            Input = plan.Inputs[index].Input,
            Assignment = assignment,
            Circuit = tree,
            VoltageV = [.. voltageV],
            CurrentA = [.. currentA],
            PowerW = [.. voltageV.Zip(currentA, (volts, amps) => volts * amps)],
            MaximumPower = circuit.MaximumPower(),
            LocalMaxima = circuit.LocalMaxima(),
            Assumed = result.Assumed,
            Cautions = Cautions.For(assignment.VocColdV),
        };
    }

    private static int Index(Design design, string? input)
    {
        for (int i = 0; i < design.Assignments.Length; i++)
        {
            if (design.Assignments[i] is { Wiring: not null } assignment && (input is null || assignment.Input == input))
            {
                return i;
            }
        }

        throw new ArgumentException(input is null ? "No input has a wiring." : $"No wiring on an input named \"{input}\".", nameof(input));
    }
}

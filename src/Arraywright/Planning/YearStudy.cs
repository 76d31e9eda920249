using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Planning;

/// <summary>What a plan's wiring delivers in a year.</summary>
public sealed record YearResult : RunResult;

/// <summary>Runs a plan's wiring through a year.</summary>
public static class YearStudy
{
    /// <summary>The year of the stated wiring, or of the best where none is stated.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="options">How the energy is run.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends a search early.</param>
    public static YearResult Run(Plan plan, WeatherYear weather, EnergyOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        (plan, Design design, _) = Wirings(plan, progress, cancellation);
        return Of(plan, design, weather, options);
    }

    /// <summary>The year of a design that is at hand already.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">One of its designs.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="options">How the energy is run.</param>
    public static YearResult Of(Plan plan, Design design, WeatherYear weather, EnergyOptions options)
    {
        SunSeries series = SunOnPanels.Of(plan, FinerWeather.InSteps(weather, options.StepH), SunOptions.Of(plan));
        EnergyResult energy = EnergyRun.Of(new PlanPhysics(plan), [.. design.Assignments.Select(assignment => assignment.Wiring)], series, options);
        return new YearResult
        {
            Plan = plan,
            Design = design,
            Energy = energy,
            WeatherSource = weather.Source,
            Assumed = [.. plan.Assumed, .. YearAssumptions.Of(plan, weather, options)],
            Cautions = Cautions.For(design.HighestVocColdV),
        };
    }

    /// <summary>The stated wiring, or the best where none is stated, and its wirings one entry an input; the plan with its cable sized for them.</summary>
    internal static (Plan Sized, Design Design, ImmutableArray<Wiring?> Wirings) Wirings(Plan plan, IProgress<double>? progress, CancellationToken cancellation)
    {
        // What a stated wiring earns is about to be worked out: it is judged without.
        PlanResult result = plan.Inputs.Any(planned => planned.StatedWiring is not null)
            ? Planner.Check(plan with { Goal = Goal.Peak }, PlannerOptions.Default)
            : Planner.Answer(plan, PlannerOptions.Default, progress, cancellation);
        return (result.Plan with { Goal = plan.Goal }, result.Designs[0], Planner.Wirings(result.Designs[0]));
    }
}

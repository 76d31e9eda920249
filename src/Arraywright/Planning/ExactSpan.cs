using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;

namespace Arraywright.Planning;

/// <summary>The year, or the days, that a plan's wirings are to be best in: distilled into moments to search by, and whole to solve the best again.</summary>
internal sealed class ExactSpan
{
    private readonly WeatherYear _weather;

    private ExactSpan(PlanPhysics physics, WeatherYear weather, DaySpan? dates)
    {
        (Physics, _weather, Dates) = (physics, weather, dates);
        bool isWhole = dates is null;
        Series = isWhole ? physics.Sun.Series! : SunOnPanels.Of(physics.Plan, weather, SunOptions.Of(physics.Plan));
        Ranking = new RankingMoments
        {
            Moments = isWhole ? physics.Sun.Moments : SiteSun.MomentsOf(physics.Plan, Series),
            Assumptions = [.. Assumed()],
            IsYearEnergy = true,
        };
    }

    /// <summary>The plan's panels and circuits.</summary>
    public PlanPhysics Physics { get; }

    /// <summary>The sun on every kind of panel, step by step.</summary>
    public SunSeries Series { get; }

    /// <summary>The days its energies are of; null for the whole year.</summary>
    public DaySpan? Dates { get; }

    /// <summary>The moments to search by.</summary>
    public RankingMoments Ranking { get; }

    /// <summary>The span of a plan: its days, or the year where it names none or the sun does not shine on them; null where its goal is the peak or no weather of its place is known.</summary>
    public static ExactSpan? For(PlanPhysics physics)
    {
        Plan plan = physics.Plan;
        if (plan.Goal == Goal.Peak || physics.Sun.Year is not { } weather)
        {
            return null;
        }

        return plan is { Goal: Goal.Day, Dates: { } dates } && Within(weather, dates) is { } some && Lit(new ExactSpan(physics, some, dates)) is { } days
            ? days
            : Lit(new ExactSpan(physics, weather, dates: null));
    }

    private static ExactSpan? Lit(ExactSpan span) => span.Ranking.Moments.IsEmpty ? null : span;

    /// <summary>Energy into the inputs of each design, kWh, every step solved on the true circuit.</summary>
    /// <param name="designs">Their wirings, one entry an input.</param>
    public double[] DeliveredKWh(IReadOnlyList<ImmutableArray<Wiring?>> designs)
    {
        double[] kWh = new double[designs.Count];
        // Each run is whole on one thread.
        Threads.ForAll(kWh.Length, i => kWh[i] = DeliveredKWh(designs[i], Series));
        return kWh;
    }

    /// <summary>The same of one design over some of the steps.</summary>
    public double DeliveredKWh(ImmutableArray<Wiring?> wirings, SunSeries steps) =>
        EnergyRun.DeliveredKWh(Physics, wirings, steps, EnergyOptions.Default);

    /// <summary>The same of one design, with the cable of another plan of the same panels.</summary>
    public double DeliveredKWh(Plan plan, ImmutableArray<Wiring?> wirings) =>
        EnergyRun.DeliveredKWh(new PlanPhysics(plan), wirings, Series, EnergyOptions.Default);

    private static WeatherYear? Within(WeatherYear weather, DaySpan dates) =>
        weather.Steps.Where(step => dates.Has(weather.Middle(step))).ToImmutableArray() is { IsEmpty: false } steps ? weather.With(steps) : null;

    private IEnumerable<Assumption> Assumed()
    {
        Plan plan = Physics.Plan;
        yield return new Assumption("sun to rank by", $"{_weather.GlobalKWhPerM2:0} kWh/m² on the flat", $"From {_weather.Source}.");
        if (plan.Goal == Goal.Day && Dates is null)
        {
            yield return new Assumption("day to be best on", "the whole year", plan.Dates is { } dark ? $"The weather has no sun on {dark}." : "The plan names no \"date\".");
        }

        foreach (Assumption assumption in YearAssumptions.OfSun(plan, _weather, EnergyOptions.Default))
        {
            yield return assumption;
        }
    }
}

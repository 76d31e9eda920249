using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;

namespace Arraywright.Planning;

/// <summary>The year, or the days, that a plan's wirings are to be best in: distilled into moments to search by, and whole to solve the best again.</summary>
internal sealed class ExactSpan
{
    /// <summary>Moments where all panels see the same sun; see <see cref="DistilledMoments"/>.</summary>
    private const int Moments = 24;

    /// <summary>Moments where they do not.</summary>
    private const int MomentsOfSeveralSuns = 40;

    private readonly PlanPhysics _physics;
    private readonly SunSeries _series;
    private readonly WeatherYear _weather;

    private ExactSpan(PlanPhysics physics, WeatherYear weather, SunSeries series)
    {
        (_physics, _weather, _series) = (physics, weather, series);
        bool oneSun = physics.Plan.Panels.All(stock => stock.Mount is null && stock.Shade.Hours.IsEmpty);
        Ranking = new RankingMoments
        {
            Moments = DistilledMoments.Of(series, oneSun ? Moments : MomentsOfSeveralSuns, EnergyOptions.Default.SpreadWithinStep),
            Assumptions = [.. Assumed()],
            IsYearEnergy = true,
        };
    }

    /// <summary>The moments to search by.</summary>
    public RankingMoments Ranking { get; }

    /// <summary>The span of a plan; null where its goal is the peak, where no weather of its place is known, or where the sun does not shine.</summary>
    public static ExactSpan? For(PlanPhysics physics)
    {
        Plan plan = physics.Plan;
        if (plan.Goal == Goal.Peak || (plan.WeatherYear ?? YearStudy.BuiltIn(plan)) is not { } weather)
        {
            return null;
        }

        WeatherYear span = plan is { Goal: Goal.Day, Dates: { } dates } ? Within(weather, dates) : weather;
        ExactSpan exact = new(physics, span, SunOnPanels.Of(plan, span, SunOptions.Of(plan)));
        return exact.Ranking.Moments.IsEmpty ? null : exact;
    }

    /// <summary>Energy into the inputs of each design, kWh, every step solved on the true circuit.</summary>
    /// <param name="designs">Their wirings, one entry an input.</param>
    public double[] DeliveredKWh(IReadOnlyList<ImmutableArray<Wiring?>> designs)
    {
        double[] kWh = new double[designs.Count];
        if (OperatingSystem.IsBrowser() || designs.Count == 1)
        {
            for (int i = 0; i < kWh.Length; i++)
            {
                kWh[i] = DeliveredKWh(designs[i]);
            }
        }
        else
        {
            // Each run is whole on one thread: the figures do not depend on how many there are.
            Parallel.For(0, kWh.Length, i => kWh[i] = DeliveredKWh(designs[i]));
        }

        return kWh;
    }

    private double DeliveredKWh(ImmutableArray<Wiring?> wirings) =>
        EnergyRun.DeliveredKWh(_physics, wirings, _series, EnergyOptions.Default);

    private static WeatherYear Within(WeatherYear weather, DaySpan dates) =>
        weather.Steps.Where(step => dates.Has(weather.Middle(step))).ToImmutableArray() is { IsEmpty: false } steps ? weather.With(steps) : weather;

    private IEnumerable<Assumption> Assumed()
    {
        Plan plan = _physics.Plan;
        yield return new Assumption("sun to rank by", $"{_weather.GlobalKWhPerM2:0} kWh/m² on the flat", $"From {_weather.Source}.");
        if (plan is { Goal: Goal.Day, Dates: null })
        {
            yield return new Assumption("day to be best on", "the whole year", "The plan names no \"date\".");
        }

        foreach (Assumption assumption in YearAssumptions.OfSun(plan, _weather, EnergyOptions.Default))
        {
            yield return assumption;
        }
    }
}

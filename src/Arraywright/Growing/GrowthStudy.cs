using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Growing;

/// <summary>What more panels would bring, one at a time, and which kind to buy.</summary>
public static class GrowthStudy
{
    /// <summary>The kinds that <see cref="Run"/> looks at; empty when <see cref="GrowthOptions.Of"/> names none of the plan's.</summary>
    public static ImmutableArray<PanelStock> Kinds(Plan plan, GrowthOptions options)
    {
        ImmutableArray<PanelStock> all = [.. plan.Panels, .. plan.Candidates];
        ImmutableArray<PanelStock> offered = [.. plan.Candidates, .. plan.Panels.Where(stock => stock.Panel.Price is not null)];
        return options.Of is { } name ? [.. all.Where(stock => stock.Panel.Name == name)]
            : offered.IsEmpty ? plan.Panels
            : offered;
    }

    /// <summary>Runs the study.</summary>
    /// <param name="plan">The plan. Wirings that it states do not count: a larger pile is wired anew.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="options">The question; it names a kind of the plan, or none.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancellation">Ends it with an <see cref="OperationCanceledException"/>.</param>
    public static GrowthResult Run(Plan plan, WeatherYear weather, GrowthOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        ImmutableArray<PanelStock> kinds = Kinds(plan, options);
        if (kinds.IsEmpty)
        {
            throw new ArgumentException($"No panel of the plan is named \"{options.Of}\".", nameof(options));
        }

        // One cable for every size of the pile: what is compared is panels.
        plan = CableSizing.IsOpen(plan) ? Planner.Answer(plan, PlannerOptions.Default, progress: null, cancellation).Plan : plan;
        Plan all = plan with { Panels = [.. plan.Panels, .. plan.Candidates] };
        ExactYear year = new(all, weather, options.Energy);
        GrowthWalk walk = new(plan, year, options);
        GrowthPoint now = walk.Now(cancellation);
        double most = options.Most ?? GrowthOptions.UsualMost;
        var curves = ImmutableArray.CreateBuilder<GrowthCurve>(kinds.Length);
        foreach (PanelStock kind in kinds)
        {
            double sunKWhPerM2 = year.Sun[all.Panels.IndexOf(kind)];
            curves.Add(walk.Of(kind, sunKWhPerM2, now, more => progress?.Report((curves.Count + (more / most)) / kinds.Length), cancellation));
        }

        bool isByCost = curves.All(curve => curve.Worth.More == 0 || curve.CostPerYearlyKWh is not null);
        return new GrowthResult
        {
            Plan = plan,
            Options = options,
            Now = now,
            StatedKWh = plan.Inputs.Any(planned => planned.StatedWiring is not null)
                ? year.Of([.. plan.Inputs.Select(planned => planned.StatedWiring)]).Total.DeliveredKWh
                : null,
            Curves = Ordered(curves, isByCost),
            IsByCost = isByCost,
            Ideals = IdealStudy.Of(plan, all),
            WeatherSource = weather.Source,
            Assumed = [.. Assumed(plan, weather, options, kinds)],
            Cautions = Cautions.For(curves.Select(curve => curve.Points[curve.Worth.More].Design).Append(now.Design).Max(design => design.HighestVocColdV)),
        };
    }

    /// <summary>What may be recommended first; cheapest a kWh, or most kWh; equals in plan order.</summary>
    private static ImmutableArray<GrowthCurve> Ordered(IEnumerable<GrowthCurve> curves, bool isByCost) =>
    [
        .. curves
            .OrderBy(curve => curve.Worth.More == 0 ? 2 : curve.IsInDoubt ? 1 : 0)
            .ThenBy(curve => isByCost ? curve.CostPerYearlyKWh ?? 0 : curve.Points[0].DeliveredKWh - curve.Points[curve.Worth.More].DeliveredKWh),
    ];

    private static IEnumerable<Assumption> Assumed(Plan plan, WeatherYear weather, GrowthOptions options, ImmutableArray<PanelStock> kinds) =>
    [
        .. plan.Assumed,
        .. kinds.Where(kind => !plan.Panels.Contains(kind)).SelectMany(kind => PanelAssumptions.Of(kind.Panel)),
        .. DesignTemperatures.For(plan).Assumptions,
        .. YearAssumptions.Of(plan, weather, options.Energy),
        IdealStudy.Assumed,
    ];
}

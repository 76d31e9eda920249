using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Growing;

/// <summary>Adds panels of one kind to a pile, one at a time, and finds the wiring that delivers most each time.</summary>
internal sealed class GrowthWalk(Plan plan, ExactYear year, GrowthOptions options)
{
    /// <summary>A runner-up of the search may deliver more in the exact year; one this far behind does not.</summary>
    private const double CloseBehind = 0.97;

    /// <summary>The maker's word is worth mentioning from this gain on, fraction.</summary>
    private const double WorthAsking = 0.005;

    /// <summary>A panel that adds less than this share of what the sun on its label comes to is not worth it, whatever the first one added.</summary>
    private const double NegligibleShare = 0.05;

    /// <summary>The pile as it is.</summary>
    public GrowthPoint Now(CancellationToken cancellation) => Point(plan, 0, null, price: null, cancellation);

    /// <summary>The curve of a kind.</summary>
    /// <param name="kind">The kind, at hand or a candidate.</param>
    /// <param name="sunKWhPerM2">Sun in its plane over the year.</param>
    /// <param name="now">The pile as it is.</param>
    /// <param name="progress">Told how many more have been looked at.</param>
    /// <param name="cancellation">Ends it with an exception.</param>
    public GrowthCurve Of(PanelStock kind, double sunKWhPerM2, GrowthPoint now, Action<int> progress, CancellationToken cancellation)
    {
        List<GrowthPoint> points = [now];
        double negligibleKWh = NegligibleShare * kind.Panel.PowerW.Value / 1000 * sunKWhPerM2;
        int most = options.Most ?? GrowthOptions.UsualMost;
        int patience = LongestString(kind);
        DiminishingReturn worth;
        do
        {
            cancellation.ThrowIfCancellationRequested();
            points.Add(Point(Grown(plan, kind, points.Count), points.Count, points[^1], kind.Panel.Price, cancellation));
            worth = DiminishingReturn.Of([.. points.Select(point => point.DeliveredKWh)], options.WorthShare, negligibleKWh);
            progress(points.Count - 1);
        }
        while (points.Count <= most && (options.Most is not null || points.Count <= worth.More + patience));

        return new GrowthCurve
        {
            Kind = kind,
            IsOwned = plan.Panels.Contains(kind),
            Points = [.. points],
            Worth = worth,
            IsInDoubt = Grown(plan, kind, 1).Doubts.Length > 0,
        };
    }

    /// <summary>The plan with more panels of a kind.</summary>
    internal static Plan Grown(Plan plan, PanelStock kind, int more)
    {
        int owned = plan.Panels.IndexOf(kind);
        return owned >= 0
            ? plan with { Panels = plan.Panels.SetItem(owned, kind with { Count = kind.Count + more }) }
            : plan with
            {
                Panels = plan.Panels.Add(kind with { Count = more }),
                Assumed = [.. plan.Assumed, .. PanelAssumptions.Of(kind.Panel)],
                Doubts = [.. plan.Doubts, .. plan.CandidateDoubts.Where(doubt => doubt.Panel == kind.Panel.Name)],
            };
    }

    private GrowthPoint Point(Plan grown, int more, GrowthPoint? before, double? price, CancellationToken cancellation)
    {
        ImmutableArray<Design> designs = Planner.Answer(grown, PlannerOptions.Default, progress: null, cancellation).Designs;
        Design best = Best(designs, before, grown);
        EnergyResult bestYear = YearOf(best);
        double deliveredKWh = best.Verdict == Level.Go ? bestYear.Total.DeliveredKWh : 0;
        double gainKWh = before is null ? 0 : deliveredKWh - before.DeliveredKWh;
        return new GrowthPoint
        {
            More = more,
            Design = best,
            Verdict = grown.Doubted(best.Verdict),
            Year = bestYear,
            IfAsked = Wish(designs, deliveredKWh),
            GainKWh = gainKWh,
            CostPerYearlyKWh = gainKWh > 0 ? price / gainKWh : null,
        };
    }

    /// <summary>Of what may be connected the one that delivers most; the wiring of one panel fewer stays possible, so that more panels never bring less.</summary>
    private Design Best(ImmutableArray<Design> designs, GrowthPoint? before, Plan grown)
    {
        Design? best = null;
        foreach (Design design in designs)
        {
            if (design.Verdict == Level.Go && (best is null || (design.ObjectiveW > CloseBehind * best.ObjectiveW && Delivered(design) > Delivered(best))))
            {
                best = design;
            }
        }

        return best is null || (before?.DeliveredKWh > Delivered(best) && before.Design.Verdict == Level.Go)
            ? before is { Design.Verdict: Level.Go } ? WithOneMoreLeftOver(grown, before.Design) : designs[0]
            : best;
    }

    private GrowthWish? Wish(ImmutableArray<Design> designs, double deliveredKWh) =>
        designs.FirstOrDefault(design => design.Verdict == Level.Ask) is { } asked && Delivered(asked) is var kWh && kWh > deliveredKWh * (1 + WorthAsking)
            ? new GrowthWish(asked, kWh)
            : null;

    private double Delivered(Design design) => YearOf(design).Total.DeliveredKWh;

    private EnergyResult YearOf(Design design) => year.Of([.. design.Assignments.Select(assignment => assignment.Wiring)]);

    private static Design WithOneMoreLeftOver(Plan grown, Design design) => Planner.Check(
        grown with { Inputs = [.. grown.Inputs.Select((planned, i) => planned with { StatedWiring = design.Assignments[i].Wiring })] },
        PlannerOptions.Default).Designs[0];

    /// <summary>Panels of a kind that may stand in one string, on the input that bears most: with so many more, another string would have shown what it adds.</summary>
    private int LongestString(PanelStock kind)
    {
        Plan grown = Grown(plan, kind, 1);
        PlanPhysics physics = new(grown);
        ColdPanelVolts cold = ColdVoltage.PerPanel(kind.Panel, physics.Temperatures.ColdestCellC, physics.ForRules(new Wiring.Single(kind.Panel.Name), plan.Inputs[0].Input));
        double mostV = plan.Inputs.Max(planned => planned.Input.MaxVoltageV);
        return Math.Clamp((int)(mostV / Math.Max(cold.CodeV, cold.ModelV)), 1, GrowthOptions.UsualMost);
    }
}

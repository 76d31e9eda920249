using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;
using Arraywright.Search;
using Arraywright.Tests.Search;
using CsCheck;

namespace Arraywright.Tests.Planning;

/// <summary>What is proved over every hour, against every wiring of small plans written out and solved over every hour.</summary>
public sealed class ExactProofProperties
{
    /// <summary>As a share: runs over parts of the days were seen to add up to 1e-6 less than one over all of them.</summary>
    private const double Resolution = 3e-6;

    private static readonly (double PowerW, double OpenV, double ShortA)[] Kinds = [(120, 22.9, 6.72), (100, 21.6, 6.1), (60, 21, 3.8), (200, 45.2, 5.7)];

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Limit? Figure(double? figure) => figure is { } stated ? new Limit(stated, new Evidence(EvidenceKind.Maker, 2, null)) : null;

    private static readonly Gen<Shade> Shades = OneOf(
        Shade.None,
        Shade.None,
        new Shade(0.3, [], []),
        new Shade(0, [0.6], []),
        new Shade(0, [], [new ShadeHours(8, 11, 0.7)]));

    private static Gen<PanelStock> Stock(int kind, int most) =>
        from count in Gen.Int[1, most]
        from shade in Shades
        from mount in OneOf<Mount?>(null, null, new Mount(60, 95, MountKind.CloseRoof))
        select new PanelStock(
            PanelReader.Read(new PanelLabel
            {
                Name = $"p{kind}",
                PowerW = Kinds[kind].PowerW,
                OpenCircuitV = Kinds[kind].OpenV,
                ShortCircuitA = Kinds[kind].ShortA,
                MaximumPowerV = 0.82 * Kinds[kind].OpenV,
                MaximumPowerA = Kinds[kind].PowerW / (0.82 * Kinds[kind].OpenV),
                MaxSeriesFuseA = 20,
            }).Panel!,
            count,
            shade,
            mount);

    private static readonly Gen<DcInput> Input =
        from mostV in OneOf(60.0, 100)
        from startV in OneOf<double?>(null, 20, 38)
        from minV in OneOf<double?>(null, 15, 34)
        from maxV in OneOf<double?>(null, 50)
        from mostA in OneOf<double?>(null, 9, 5)
        from mostW in OneOf<double?>(null, 260, 90)
        select new DcInput
        {
            Name = "in",
            MaxVoltageV = mostV,
            StartVoltageV = startV,
            TrackingMinV = minV,
            TrackingMaxV = maxV,
            MaxCurrent = Figure(mostA),
            MaxShortCircuitCurrent = new Limit(60, Evidence.Nothing),
            MaxPower = Figure(mostW),
        };

    /// <summary>Up to five panels of up to three kinds on one or two inputs, for the days of half a week: shade, a second plane, windows, limits, a shared unit, thin cable.</summary>
    private static Gen<Plan> Plans(int inputs, int kinds, int each) =>
        from stocks in Gen.Select(Stock(0, each), Stock(1, 1), Stock(2, 1), Stock(3, each))
        from first in Gen.Int[0, 4 - kinds]
        from list in Input.Array[inputs]
        from unit in Gen.Bool
        from lengthM in OneOf(2.0, 30)
        from month in Gen.Int[1, 12]
        select new Plan
        {
            Name = "farm",
            Goal = Goal.Day,
            Dates = new DaySpan(month, 11, month, 14),
            Place = new Place(54.6, -3.1, 200, -14, null),
            Mount = new Mount(40, 180, MountKind.OpenRack),
            Panels = [.. new[] { stocks.Item1, stocks.Item2, stocks.Item3, stocks.Item4 }.Skip(first).Take(kinds)],
            Inputs = [.. list.Select((input, i) => new PlannedInput(input with { Name = $"in{i}", Unit = unit && inputs > 1 ? "box" : null }, null))],
            Units = unit && inputs > 1 ? [new ChargingUnit("box", Figure(150), null)] : [],
            Cable = new Cable(Sourced.Given(lengthM), Sourced.Given(4.0), Sourced.Given(1.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
            Assumed = [],
            Doubts = [],
        };

    [Fact]
    public void On_one_input_no_wiring_passes_the_bound_and_the_best_is_found() => HoldsAgainstEveryWiring(Plans(1, 3, 1), 60);

    [Fact]
    public void Equal_panels_are_held_to_the_same() => HoldsAgainstEveryWiring(Plans(1, 2, 3), 30);

    [Fact]
    public void On_two_inputs_no_wiring_passes_the_bound_and_the_best_is_found() => HoldsAgainstEveryWiring(Plans(2, 3, 1), 30);

    private static void HoldsAgainstEveryWiring(Gen<Plan> plans, int times)
    {
        int looked = 0;
        plans.Sample(
            plan =>
            {
                Planner.Setting setting = new(plan, PlannerOptions.Default);
                SearchProblem family = new SearchSetup(setting.Physics, setting.Ranking, setting.Judge).Problem(Level.Go);
                ImmutableArray<Wiring?>[] all = [.. EveryWiring.Judged(family).Select(one => one.Wirings).Where(family.Accept!)];
                double[] kWh = setting.Exact!.DeliveredKWh(all);
                double bestKWh = kWh.DefaultIfEmpty(0).Max();
                if (bestKWh <= 0)
                {
                    return;
                }

                PlanResult result = Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None);
                SearchReport report = result.Search!;
                if (result.Designs[0].Verdict == Level.Go)
                {
                    double firstKWh = result.Designs[0].EnergyKWh!.Value;
                    Assert.InRange(firstKWh, 0, bestKWh * (1 + Resolution));
                    Assert.InRange(bestKWh, 0, firstKWh * (1 + (report.GapPercent / 100)) * (1 + Resolution));
                    Assert.True(!report.Proved || bestKWh <= firstKWh * (1.0005 + Resolution));
                    looked += report.Exact!.Value.LookedAt > 0 ? 1 : 0;
                }

                // From the worst incumbent there is, and where the family counts as too large to look at each.
                int worst = Array.IndexOf(kWh, kWh.Min());
                (Candidate, double)[] incumbent = [(new Candidate(all[worst], 0, 0, 0, 0), kWh[worst])];
                ExactProof each = ExactProof.Of(setting.Exact, family, report with { Feasible = all.Length }, incumbent, CancellationToken.None);
                ExactProof alone = ExactProof.Of(setting.Exact, family, report with { Feasible = double.MaxValue }, incumbent, CancellationToken.None);
                Assert.InRange(bestKWh, 0, alone.BoundKWh * (1 + 1e-9));
                Assert.Equal(0, alone.LookedAt);
                Assert.Equal(bestKWh, each.BoundKWh, Resolution * bestKWh);
                double foundKWh = setting.Exact.DeliveredKWh([.. each.Better.Select(one => one.Wirings)]).Append(kWh[worst]).Max();
                Assert.Equal(bestKWh, foundKWh, Resolution * bestKWh);
            },
            iter: times,
            threads: 1);
        Assert.True(looked > times / 10, $"Only {looked} of {times} plans had wirings to look at one by one.");
    }
}

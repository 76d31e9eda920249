using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Growing;
using Arraywright.Limits;
using Arraywright.Planning;
using static Arraywright.Tests.Growing.GrowingPlans;

namespace Arraywright.Tests.Growing;

public sealed class IdealStudyTests
{
    private static readonly DcInput Store = new()
    {
        Name = "store",
        MaxVoltageV = 60,
        StartVoltageV = 14,
        TrackingMinV = 12,
        TrackingMaxV = 55,
        MaxCurrent = new Limit(13, Manual),
        MaxShortCircuitCurrent = new Limit(17, Manual),
        MaxPower = new Limit(500, Manual),
    };

    private static IdealPanel Ideal(DcInput input, params PanelStock[] stocks)
    {
        Plan plan = With(input, null, stocks);
        return IdealStudy.Of(plan, plan).Single();
    }

    private static Design Judged(DcInput input, IdealLabel label, double vocV, double iscA)
    {
        Panel panel = PanelReader.Read(new PanelLabel
        {
            Name = "ideal",
            OpenCircuitV = vocV,
            ShortCircuitA = iscA,
            MaximumPowerV = 0.825 * vocV,
            MaximumPowerA = 0.945 * iscA,
            OpenCircuitPerK = -0.0031,
            ToleranceFraction = 0.03,
            MaxSeriesFuseA = 100,
        }).Panel!;
        Wiring wiring = Wiring.InParallel(Enumerable.Repeat(Wiring.InSeries(Enumerable.Repeat<Wiring>(new Wiring.Single("ideal"), label.InString)), label.Strings));
        Plan plan = With(input, null, new PanelStock(panel, label.InString * label.Strings, Shade.None, null)) with { Inputs = [new PlannedInput(input, wiring)] };
        return Planner.Check(plan, PlannerOptions.Default).Designs[0];
    }

    /// <summary>Two routes: the window's edges against the rules' own judgement of a panel with such a label.</summary>
    [Fact]
    public void A_label_at_the_edge_may_be_connected_and_fills_the_input_and_one_beyond_may_not()
    {
        IdealPanel ideal = Ideal(Store, Stock("a", 1));
        Assert.Equal(500, ideal.FullW);
        Assert.All(ideal.Labels, label => Assert.True(label.IsPossible));
        foreach (IdealLabel label in ideal.Labels)
        {
            double vocV = label.MostOpenCircuitV * 0.999;
            double neededA = label.LeastPowerW!.Value / (0.825 * vocV * 0.945);
            Assert.True(neededA <= label.MostShortCircuitA, $"{label}");
            Design inside = Judged(Store, label, vocV, neededA * 1.01);
            Assert.Equal(Level.Go, inside.Verdict);
            // Copper and connectors take up to 5 % of the label's watts before the input's limit is felt.
            Assert.InRange(inside.PeakPowerW, 0.95 * 500, 500.001);
            Assert.Equal(Level.Stop, Judged(Store, label, label.MostOpenCircuitV * 1.01, neededA).Verdict);
            Assert.Equal(Level.Ask, Judged(Store, label, vocV, label.MostShortCircuitA!.Value * 1.01).Verdict);
        }
    }

    /// <summary>By hand: 60 V / (2 × (1 + 0.0031 × (25 + 14)) × 1.03) = 25.98 V; the circuit model may ask a little less, and 17 A / 2 = 8.5 A.</summary>
    [Fact]
    public void The_windows_are_those_of_a_hand_calculation()
    {
        IdealLabel pair = Ideal(Store, Stock("a", 1)).Labels.Single(label => label is { InString: 2, Strings: 2 });
        Assert.InRange(pair.MostOpenCircuitV, 25.7, 25.99);
        Assert.Equal(8.5, pair.MostShortCircuitA!.Value, 1e-9);
    }

    [Fact]
    public void What_the_label_watts_end_is_told()
    {
        IdealPanel ideal = Ideal(Store with { MaxPower = new Limit(400, Evidence.Nothing) }, Stock("a", 1));
        Assert.InRange(ideal.ReachW!.Value, 340, 399);
        Assert.Contains("label watts", ideal.HeldBy, StringComparison.Ordinal);
        Assert.All(ideal.Labels, label => Assert.True(label.LeastPowerW <= label.MostPowerW));
    }

    [Fact]
    public void An_input_that_states_nothing_has_nothing_to_fill()
    {
        IdealPanel ideal = Ideal(new DcInput { Name = "bare", MaxVoltageV = 60 }, Stock("a", 1));
        Assert.Null(ideal.FullW);
        Assert.Null(ideal.ReachW);
        Assert.All(ideal.Labels, label => Assert.Null(label.MostShortCircuitA));
    }

    [Fact]
    public void A_window_narrower_than_hot_and_cold_fits_no_panel() =>
        Assert.All(Ideal(Store with { TrackingMinV = 40, TrackingMaxV = 44 }, Stock("a", 1)).Labels, label => Assert.False(label.IsPossible));

    [Fact]
    public void The_kind_that_fills_it_best_comes_first_and_says_what_keeps_it()
    {
        ImmutableArray<KindFit> kinds = Ideal(Store, Stock("wide", 1, iscA: 9.5), Stock("good", 1), Stock("tall", 1, vocV: 70)).Kinds;
        Assert.Equal(["good", "wide", "tall"], kinds.Select(fit => fit.Panel));
        Assert.Equal((2, 2), (kinds[0].InString, kinds[0].Strings));
        Assert.Contains(kinds[0].Obstacles, obstacle => obstacle is { InString: 3, Finding.Level: Level.Stop });
        Assert.Contains(kinds[0].Obstacles, obstacle => obstacle is { Strings: 3, Finding.Rule: "short_circuit_current" });
        Assert.Equal((0, 0.0), (kinds[2].InString, kinds[2].TakenW));
        Assert.Equal(Level.Stop, kinds[2].Obstacles.Single().Finding.Level);
    }
}

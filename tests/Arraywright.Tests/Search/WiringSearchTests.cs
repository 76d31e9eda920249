using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Tests.Search;

public sealed class WiringSearchTests
{
    private static readonly double[] Sun = [1000];
    private static readonly SearchInput OpenInput = new("store", InputWindow.Open, 60, 0);

    [Fact]
    public void Nothing_is_connected_when_one_panel_alone_passes_the_limit()
    {
        SearchOutcome outcome = WiringSearch.Run(Problem([SearchPanels.Stock("a", 3, 36, 6, Sun)], OpenInput with { MaxVoltageV = 10 }), SearchOptions.Default);

        Assert.Empty(outcome.Best);
        Assert.True(outcome.Report.Proved);
        Assert.Equal(0, outcome.Report.Feasible);

        // 1; 2 or 1|1; 3, 2|1 or 1|1|1.
        Assert.Equal(6, outcome.Report.Considered);
        Assert.Equal(0, outcome.Report.BoundW);
    }

    [Fact]
    public void A_voltage_just_over_the_limit_is_never_connected()
    {
        SearchStock stock = SearchPanels.Stock("a", 2, 36, 6, Sun);
        double pairV = stock.ColdLabelV + stock.ColdLabelV;

        ImmutableArray<Candidate> Under(double limitV) =>
            WiringSearch.Run(Problem([stock], OpenInput with { MaxVoltageV = limitV, Window = InputWindow.Open with { MinV = 30 } }), SearchOptions.Default).Best;

        Assert.Equal(1, Under(pairV)[0].Strings);
        Assert.Empty(Under(pairV * (1 - 1e-8)));
    }

    [Fact]
    public void A_sum_that_only_the_order_of_adding_lifts_over_its_limit_is_connected()
    {
        // 3 x 100.4 W is 301.20000000000005 W in binary, as a rule that judges the wiring forgives.
        SearchStock stock = SearchPanels.Stock("a", 3, 36, 6, Sun) with { LabelPowerW = 100.4 };
        SearchProblem Limited(double labelW) => Problem([stock], OpenInput with { MaxLabelPowerW = labelW, MaxVoltageV = 200 });
        SearchProblem shared = Limited(double.PositiveInfinity) with { UnitMaxW = [double.PositiveInfinity], UnitMaxLabelPowerW = [301.2] };

        Assert.Equal(3, WiringSearch.Run(Limited(301.2), SearchOptions.Default).Best[0].Panels);
        Assert.Equal(2, WiringSearch.Run(Limited(301.1), SearchOptions.Default).Best[0].Panels);
        Assert.Equal(3, WiringSearch.Run(shared with { Inputs = [shared.Inputs[0] with { Unit = 0 }] }, SearchOptions.Default).Best[0].Panels);
        Assert.Equal(3, WiringSearch.Run(Problem([stock], OpenInput with { MaxVoltageV = Math.BitDecrement(3 * stock.ColdLabelV), Window = InputWindow.Open with { MinV = 45 } }), SearchOptions.Default).Best[0].Panels);
    }

    [Fact]
    public void A_wiring_that_never_starts_is_no_answer()
    {
        // The cold figure is 1.12 times the open-circuit voltage in this sun.
        SearchStock stock = SearchPanels.Stock("a", 2, 36, 6, Sun);
        InputWindow startsHigh = InputWindow.Open with { StartV = 1.99 * stock.ColdLabelV / 1.12 };
        InputWindow startsTooHigh = InputWindow.Open with { StartV = 2.01 * stock.ColdLabelV / 1.12 };

        Assert.Equal(2, WiringSearch.Run(Problem([stock], OpenInput with { Window = startsHigh }), SearchOptions.Default).Best[0].Panels);
        Assert.Empty(WiringSearch.Run(Problem([stock], OpenInput with { Window = startsTooHigh }), SearchOptions.Default).Best);
    }

    [Fact]
    public void A_full_input_gets_no_more_panels_than_it_needs()
    {
        // Each of the four gives about 118 W (36 cells, 6 A); the input takes 90 W.
        SearchInput input = OpenInput with { Window = InputWindow.Open with { MaxW = 90 } };
        SearchOutcome outcome = WiringSearch.Run(Problem([SearchPanels.Stock("a", 4, 36, 6, Sun)], input), SearchOptions.Default);

        Assert.Equal(90, outcome.Best[0].ObjectiveW, 1e-6);
        Assert.Equal(1, outcome.Best[0].Panels);
        Assert.Contains("simplest", outcome.Best[0].ChosenFor);
    }

    [Fact]
    public void A_last_word_is_obeyed_and_the_proof_still_holds()
    {
        SearchProblem problem = Problem(Mixed(5), OpenInput) with { Accept = wirings => wirings[0]!.Strings.Length <= 1 };
        SearchOutcome outcome = WiringSearch.Run(problem, SearchOptions.Default);

        double bestW = EveryWiring.Judged(problem).Where(wiring => wiring.Wirings[0]?.Strings.Length <= 1).Max(wiring => wiring.ObjectiveW);
        Assert.True(outcome.Report.Proved);
        Assert.InRange(outcome.Best.Max(candidate => candidate.ObjectiveW), bestW * (1 - 2e-6), bestW * (1 + 1e-8));
        Assert.All(outcome.Best, candidate => Assert.Single(candidate.Wirings[0]!.Strings));
    }

    [Fact]
    public void Asking_twice_gives_the_same_answer()
    {
        SearchProblem problem = Problem(Mixed(9), OpenInput);
        SearchOutcome once = WiringSearch.Run(problem, SearchOptions.Default);
        SearchOutcome twice = WiringSearch.Run(problem, SearchOptions.Default);

        Assert.Equal(once.Report, twice.Report);
        Assert.Equal(once.Nodes, twice.Nodes);
        Assert.Equal(Written(once), Written(twice));
    }

    [Fact]
    public void A_spent_budget_leaves_an_honest_gap()
    {
        SearchProblem problem = Problem(Mixed(12), OpenInput);
        SearchOutcome full = WiringSearch.Run(problem, SearchOptions.Default);
        SearchOutcome hasty = WiringSearch.Run(problem, SearchOptions.Default with { NodeBudget = 1 });

        Assert.True(full.Report.Proved);
        Assert.False(hasty.Report.Proved);
        Assert.True(hasty.Report.GapPercent > 0);
        Assert.True(hasty.Report.BoundW >= full.Best.Max(candidate => candidate.ObjectiveW));
        Assert.Equal(((hasty.Report.BoundW / hasty.Best.Max(candidate => candidate.ObjectiveW)) - 1) * 100, hasty.Report.GapPercent, 1e-9);
    }

    [Fact]
    public void A_search_called_off_says_that_nothing_is_proved()
    {
        using CancellationTokenSource called = new();
        called.Cancel();
        SearchOutcome outcome = WiringSearch.Run(Problem(Mixed(6), OpenInput), SearchOptions.Default, progress: null, called.Token);

        Assert.False(outcome.Report.Proved);
        Assert.Equal(100, outcome.Report.GapPercent);
        Assert.True(double.IsFinite(outcome.Report.BoundW));
    }

    [Fact]
    public void A_search_called_off_on_its_way_keeps_the_best_so_far_with_an_honest_gap()
    {
        SearchProblem problem = Problem(Mixed(9), OpenInput);
        SearchOutcome whole = WiringSearch.Run(problem, SearchOptions.Default);
        using CancellationTokenSource called = new();
        problem = problem with
        {
            Accept = _ =>
            {
                called.Cancel();
                return true;
            },
        };
        SearchOutcome outcome = WiringSearch.Run(problem, SearchOptions.Default with { MostTableNodes = long.MaxValue }, progress: null, called.Token);

        double bestW = outcome.Best.Max(candidate => candidate.ObjectiveW);
        Assert.True(outcome.Report.StoppedEarly);
        Assert.False(outcome.Report.Proved);
        Assert.True(outcome.Report.BoundW >= whole.Best.Max(candidate => candidate.ObjectiveW));
        Assert.Equal(((outcome.Report.BoundW / bestW) - 1) * 100, outcome.Report.GapPercent, 1e-9);
        Assert.False(whole.Report.StoppedEarly);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Designs_that_differ_by_exchanging_equal_inputs_are_one(bool ownUnits)
    {
        SearchProblem problem = Problem(Mixed(6), OpenInput with { MaxVoltageV = 50 }) with
        {
            Inputs = [.. Enumerable.Range(0, 3).Select(i => OpenInput with { Name = $"in{i}", MaxVoltageV = 50, Unit = ownUnits ? i : -1 })],
            UnitMaxW = ownUnits ? [300, 300, 300] : [],
        };
        SearchOutcome outcome = WiringSearch.Run(problem, SearchOptions.Default);

        string[] unordered = [.. outcome.Best.Select(candidate => string.Join('/', candidate.Wirings.Select(wiring => wiring is null ? "" : WiringText.Print(wiring)).Order(StringComparer.Ordinal)))];
        Assert.True(unordered.Length > 1);
        Assert.Equal(unordered.Length, unordered.Distinct().Count());
        Assert.True(outcome.Report.Proved);
    }

    [Theory]
    [InlineData(WiringFamily.Strings)]
    [InlineData(WiringFamily.StringsOfBlocks)]
    public void A_pile_too_large_gets_a_good_wiring_and_an_honest_gap(WiringFamily family)
    {
        SearchProblem problem = Problem(Mixed(6), OpenInput with { MaxIscSumA = 25 }) with { Family = family };
        SearchOutcome exact = WiringSearch.Run(problem, SearchOptions.Default);
        SearchOutcome rough = WiringSearch.Run(problem, SearchOptions.Default with { MostParts = 20 });

        double bestW = exact.Best.Max(candidate => candidate.ObjectiveW);
        double roughW = rough.Best.Max(candidate => candidate.ObjectiveW);
        Assert.False(rough.Report.Proved);
        Assert.True(rough.Report.BoundW >= bestW);
        Assert.InRange(roughW, bestW * 0.8, bestW * (1 + 1e-8));
        Assert.All(rough.Best, candidate =>
        {
            Assert.Equal(EveryWiring.Worth(problem, candidate.Wirings), candidate.ObjectiveW, 1e-6);
            Assert.Equal(candidate.Wirings[0]!.Panels.Distinct().Count(), candidate.Wirings[0]!.Panels.Count());
            Assert.True(candidate.HighestColdV <= problem.Inputs[0].MaxVoltageV);
        });
    }

    [Fact]
    public void More_sharings_out_than_can_be_listed_end_in_a_gap_and_not_in_all_memory()
    {
        // Every string is one panel, and all four inputs take any of them: nearly every sharing-out has nearly the highest bound.
        SearchProblem problem = Problem(Mixed(13), OpenInput) with
        {
            Inputs = [.. Enumerable.Range(0, 4).Select(i => OpenInput with { Name = $"in{i}", MaxVoltageV = 30 + i })],
        };
        long before = GC.GetAllocatedBytesForCurrentThread();
        SearchOutcome outcome = WiringSearch.Run(problem, SearchOptions.Default with { NodeBudget = 500_000 });

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 400L << 20);
        Assert.NotEmpty(outcome.Best);
        Assert.InRange(outcome.Best[0].ObjectiveW, 0.7 * outcome.Report.BoundW, outcome.Report.BoundW);
    }

    [Fact]
    public void Moments_that_do_not_fit_the_panels_are_refused()
    {
        SearchProblem problem = Problem([SearchPanels.Stock("a", 1, 36, 6, [1000, 500])], OpenInput);

        Assert.Throws<ArgumentException>(() => WiringSearch.Run(problem, SearchOptions.Default));
    }

    /// <summary>Panels of about 36 cells and 5 to 9 A, no two alike.</summary>
    private static ImmutableArray<SearchStock> Mixed(int kinds) =>
        [.. Enumerable.Range(0, kinds).Select(i => SearchPanels.Stock($"p{i}", 1, 33 + (i * 5 % 7), 5 + (4 * (i * 0.618 % 1)), Sun))];

    private static SearchProblem Problem(ImmutableArray<SearchStock> stocks, SearchInput input) =>
        new() { Stocks = stocks, Inputs = [input], Weights = [1] };

    private static string Written(SearchOutcome outcome) =>
        string.Join('\n', outcome.Best.Select(candidate => $"{candidate.ObjectiveW:R} {string.Join(',', candidate.Wirings[0]!.Panels)} {candidate.Strings} {string.Join(',', candidate.ChosenFor)}"));
}

using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Search;
using CsCheck;

namespace Arraywright.Tests.Search;

public sealed class WiringSearchProperties
{
    private static readonly Gen<InputWindow> Windows =
        from minV in OneOf(0.0, 12, 25)
        from maxV in OneOf(double.PositiveInfinity, 45, 30)
        from startV in OneOf(0.0, 14, 24)
        from maxA in OneOf(double.PositiveInfinity, 10, 4)
        from maxW in OneOf(double.PositiveInfinity, 250, 90)
        select new InputWindow(minV, maxV, startV, maxA, maxW);

    private static readonly Gen<SearchInput> Inputs =
        from window in Windows
        from maxVoltageV in OneOf(50.0, 60, 110)
        from runOhm in OneOf(0.0, 0.02, 0.3)
        from iscSumA in OneOf(double.PositiveInfinity, double.PositiveInfinity, 15.005)
        from labelW in OneOf(double.PositiveInfinity, double.PositiveInfinity, 400)
        select new SearchInput("input", window, maxVoltageV, runOhm) { MaxIscSumA = iscSumA, MaxLabelPowerW = labelW };

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<SearchStock> Stock(int index, int most) =>
        from count in Gen.Int[1, most]
        from cells in OneOf(20, 32, 36, 54, 60)
        from iscA in Gen.Double[2, 11]
        from bypassed in Gen.Bool
        from shade in OneOf(0, 0, 0.3, 0.8)
        select SearchPanels.Stock($"p{index}", count, cells, Math.Round(iscA, 2), [900, 350, 120], bypassed, shade);

    private static Gen<SearchProblem> Problem(int kinds, int each, int inputs, WiringFamily family) =>
        from stocks in Gen.Select(Stock(0, each), Stock(1, each), Stock(2, each), Stock(3, each), Stock(4, 1))
        from list in Inputs.Array[inputs]
        from alike in Gen.Bool
        from unit in Gen.Bool
        from contactOhm in OneOf(0, 0.0005, 0.02)
        select new SearchProblem
        {
            Stocks = [.. new[] { stocks.Item1, stocks.Item2, stocks.Item3, stocks.Item4, stocks.Item5 }.Take(kinds)],
            Inputs = [.. (alike ? list.Select(_ => list[0]) : list).Select((input, i) => input with { Name = $"in{i}", Unit = unit ? 0 : -1 })],
            UnitMaxW = unit ? [320] : [],
            Weights = [1, 3, 2],
            StringOhm = 0.02,
            ContactOhm = contactOhm,
            Family = family,
        };

    [Fact]
    public void One_input_gets_the_best_of_every_wiring() => AgreesWithEveryWiring(Problem(5, 1, 1, WiringFamily.Strings), 150);

    [Fact]
    public void Equal_panels_get_the_best_of_every_wiring() => AgreesWithEveryWiring(Problem(2, 3, 1, WiringFamily.Strings), 150);

    [Fact]
    public void Two_inputs_get_the_best_of_every_wiring() => AgreesWithEveryWiring(Problem(4, 1, 2, WiringFamily.Strings), 150);

    [Fact]
    public void Three_inputs_get_the_best_of_every_wiring() => AgreesWithEveryWiring(Problem(3, 1, 3, WiringFamily.Strings), 60);

    [Fact]
    public void Blocks_get_the_best_of_every_wiring() => AgreesWithEveryWiring(Problem(4, 1, 1, WiringFamily.StringsOfBlocks), 100);

    /// <summary>Label amps drawn, amps beside a string and label watts of a unit are held by the bounds, and a last word has nothing left to refuse.</summary>
    [Fact]
    public void What_the_rules_refuse_is_never_walked_into() => Gen.Select(Problem(4, 1, 2, WiringFamily.Strings), Gen.Double[3, 25], Gen.Double[3, 25], Gen.Double[200, 900]).Sample(
        (problem, besideA, impA, unitW) =>
        {
            double IscA(Wiring part) => part.Panels.Max(name => problem.Stocks.Single(stock => stock.Name == name).LabelIscA);
            double ImpA(Wiring part) => part.Panels.Min(name => problem.Stocks.Single(stock => stock.Name == name).LabelImpA);
            double LabelW(Wiring? wiring) => wiring?.Panels.Sum(name => problem.Stocks.Single(stock => stock.Name == name).LabelPowerW) ?? 0;

            // A string bears less beside it the more panels it has.
            double BesideA(Wiring part) => part.Panels.Count() == 3 ? -1 : besideA / part.Panels.Count();
            bool Fits(ImmutableArray<Wiring?> wirings) =>
                wirings.All(wiring => wiring is null || (EveryWiring.Within(wiring.Strings.Sum(ImpA), impA) && wiring.Strings.All(part => EveryWiring.Within(wiring.Strings.Sum(IscA) - IscA(part), BesideA(part)))))
                && (problem.UnitMaxW.IsEmpty || EveryWiring.Within(wirings.Sum(LabelW), unitW));
            int refused = 0;
            SearchOutcome outcome = WiringSearch.Run(
                problem with
                {
                    Inputs = [.. problem.Inputs.Select(input => input with { MaxImpSumA = impA })],
                    UnitMaxLabelPowerW = problem.UnitMaxW.IsEmpty ? [] : [unitW],
                    MaxBesideA = BesideA,
                    Accept = wirings =>
                    {
                        refused += Fits(wirings) ? 0 : 1;
                        return true;
                    },
                },
                SearchOptions.Default);

            double bestW = EveryWiring.Judged(problem).Where(wiring => Fits(wiring.Wirings)).Max(wiring => wiring.ObjectiveW);
            Assert.Equal(0, refused);
            Assert.True(outcome.Report.Proved);
            Assert.InRange(outcome.Best.Select(candidate => candidate.ObjectiveW).DefaultIfEmpty(0).Max(), bestW * (1 - 2e-6), bestW * (1 + 1e-8));
        },
        iter: 100,
        threads: 1);

    [Fact]
    public void A_pile_taken_in_groups_is_bounded_above_every_wiring_and_its_best_is_one_of_them() => Gen.Select(Problem(5, 1, 1, WiringFamily.Strings), Gen.Double[0.3, 2]).Sample(
        (problem, besideShare) =>
        {
            problem = problem with { Stocks = [.. problem.Stocks.Select(stock => stock with { MaxBesideA = besideShare * stock.LabelIscA })] };
            double Most(Wiring part, Func<SearchStock, double> value) => part.Panels.Max(name => value(problem.Stocks.Single(stock => stock.Name == name)));
            bool Fits(ImmutableArray<Wiring?> wirings) => wirings[0] is not { } wiring || wiring.Strings.All(part =>
                wiring.Strings.Sum(beside => Most(beside, stock => stock.LabelIscA)) - Most(part, stock => stock.LabelIscA) <= -Most(part, stock => -stock.MaxBesideA) + 1e-9);
            SearchOutcome outcome = WiringSearch.Run(problem with { Accept = Fits }, SearchOptions.Default with { MostParts = 12 });

            double bestW = EveryWiring.Judged(problem).Where(wiring => Fits(wiring.Wirings)).Max(wiring => wiring.ObjectiveW);
            Assert.InRange(outcome.Report.BoundW, bestW * (1 - 1e-8), double.MaxValue);
            Assert.All(outcome.Best, candidate =>
            {
                Assert.True(Fits(candidate.Wirings));
                Assert.Equal(EveryWiring.Worth(problem, candidate.Wirings), candidate.ObjectiveW, 1e-7 * bestW);
                Assert.InRange(candidate.ObjectiveW, 0, bestW * (1 + 1e-8));
            });
        },
        iter: 150,
        threads: 1);

    /// <summary>Also those that no moment starts: what is listed does not hang on windows and limits of power.</summary>
    [Fact]
    public void A_small_family_is_listed_to_the_last_wiring() => Gen.Select(Problem(4, 1, 1, WiringFamily.StringsOfBlocks), Problem(2, 2, 2, WiringFamily.Strings), Gen.Bool).Sample(
        (blocks, inputs, which) =>
        {
            SearchProblem problem = which ? blocks : inputs;
            var alike = new AlikeInputs(problem);
            string[] all = [.. EveryWiring.Judged(problem).Where(wiring => wiring.Complexity > 0).Select(wiring => alike.Key(wiring.Wirings)).Distinct().Order(StringComparer.Ordinal)];
            string[] listed = [.. WiringList.All(problem, 2000, _ => true, CancellationToken.None)!.Value.Select(candidate => alike.Key(candidate.Wirings)).Order(StringComparer.Ordinal)];
            Assert.Equal(all, listed);
            Assert.True(all.Length < 2 || WiringList.All(problem, all.Length - 1, _ => true, CancellationToken.None) is null);
        },
        iter: 100,
        threads: 1);

    private static void AgreesWithEveryWiring(Gen<SearchProblem> problems, int times) => problems.Sample(
        problem =>
        {
            List<(ImmutableArray<Wiring?> Wirings, double ObjectiveW, int Complexity)> all = EveryWiring.Judged(problem);
            double bestW = all.Max(wiring => wiring.ObjectiveW);
            SearchOutcome outcome = WiringSearch.Run(problem, SearchOptions.Default);

            // Connecting nothing is among those listed, and not told.
            Assert.Equal(EveryWiring.Distinct(problem).Count - 1, outcome.Report.Considered);
            Assert.Equal(all.Count - 1, outcome.Report.Feasible);
            Assert.Equal(bestW == 0, outcome.Best.IsEmpty);
            if (bestW == 0)
            {
                return;
            }

            Assert.True(outcome.Report.Proved);
            Assert.Equal(0, outcome.Report.GapPercent);
            double foundW = outcome.Best.Max(candidate => candidate.ObjectiveW);
            Assert.InRange(foundW, bestW * (1 - 2e-6), bestW * (1 + 1e-8));
            Assert.InRange(outcome.Report.BoundW, foundW, foundW * (1 + 2e-6));
            foreach (Candidate candidate in outcome.Best)
            {
                Assert.Equal(EveryWiring.Worth(problem, candidate.Wirings), candidate.ObjectiveW, 1e-7 * bestW);
            }

            // The first is the simplest of all that tie with the best.
            int simplest = all.Where(wiring => wiring.ObjectiveW >= bestW * (1 - (SearchOptions.Default.NearTieFraction * 0.99))).Min(wiring => wiring.Complexity);
            Assert.True(outcome.Best[0].ObjectiveW >= bestW * (1 - (SearchOptions.Default.NearTieFraction * 1.01)));
            Assert.True(outcome.Best[0].Complexity <= simplest);
        },
        iter: times,
        threads: 1,
        print: problem => $"{problem} {string.Join(' ', problem.Stocks)} {string.Join(' ', problem.Inputs)}");
}

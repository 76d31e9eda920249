using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class VerdictSentenceTests
{
    [Fact]
    public void Go_says_what_the_input_takes() =>
        Assert.Equal("GO: connect it as drawn; nothing is against it, and store-a takes 360 W in full sun.", VerdictSentence.Of(SampleResults.Go));

    [Theory]
    [InlineData("GO: connect it as drawn, with a 12 A fuse in each string; nothing else is against it, and store-a takes 360 W in full sun.", 12.0, 12.0)]
    [InlineData("GO: connect it as drawn, with the string fuses drawn; nothing else is against it, and store-a takes 360 W in full sun.", 12.0, null)]
    [InlineData("GO: connect it as drawn, with the string fuses drawn; nothing else is against it, and store-a takes 360 W in full sun.", 12.0, 15.0)]
    [InlineData("GO: connect it as drawn; nothing is against it, and store-a takes 360 W in full sun.", null, null)]
    public void Go_names_the_fuses_without_which_it_would_be_no_go(string sentence, double? firstA, double? secondA)
    {
        Design best = SampleResults.Go.Designs[0];
        Design fused = best with { Assignments = [best.Assignments[0] with { StringFusesA = [firstA, secondA] }] };
        Assert.Equal(sentence, VerdictSentence.Of(SampleResults.Go with { Designs = [fused] }));
    }

    [Fact]
    public void Ask_names_the_open_question_with_its_figures_and_counts_the_others() =>
        Assert.Equal(
            "ASK FIRST: do not connect it to store-a until somebody who knows has answered. Short-circuit current offered, by label: 13.44 A, at most 10 A (and 1 more question).",
            VerdictSentence.Of(SampleResults.Ask));

    [Fact]
    public void Stop_names_the_limit_that_is_broken() =>
        Assert.Equal(
            "STOP: do not connect it to store-a. Open-circuit voltage at the coldest: 74.9 V, at most 50 V.",
            VerdictSentence.Of(SampleResults.Stop));

    [Fact]
    public void An_odd_label_alone_asks_to_read_it_again() =>
        Assert.Equal("ASK FIRST: do not connect yet; the label of dairy-60 looks odd at \"vmp\" and must be read again.", VerdictSentence.Of(SampleResults.TwoInputs));

    [Fact]
    public void A_label_in_doubt_does_not_hide_a_stop()
    {
        PlanResult stop = SampleResults.Stop with { Plan = SampleResults.TwoInputs.Plan };
        Assert.Equal(Level.Stop, stop.Verdict);
        Assert.StartsWith("STOP: do not connect it to store-a.", VerdictSentence.Of(stop), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_can_be_connected_the_verdict_is_stop_and_says_so()
    {
        Design best = SampleResults.Go.Designs[0];
        Design none = best with { Assignments = [best.Assignments[0] with { Wiring = null, Findings = [] }] };
        PlanResult result = SampleResults.Go with { Designs = [none] };
        Assert.Equal("STOP: none of these panels can be connected to any of these inputs.", VerdictSentence.Of(result));
    }

    [Fact]
    public void Where_the_search_found_nothing_that_may_be_connected_the_sentence_speaks_of_every_wiring()
    {
        PlanResult none = SampleResults.Stop with { Search = new SearchReport("strings", 4, 0, 0, 0, Proved: true) };
        Assert.StartsWith("STOP: connect no wiring of these panels to store-a. Open-circuit", VerdictSentence.Of(none), StringComparison.Ordinal);
    }

    private static ExactComparison Exact { get; } = new()
    {
        Moments = 24,
        MomentsProved = true,
        MomentsGapPercent = 0,
        Resolved = 6,
        DisagreementPercent = 0.1,
        LikelyGapPercent = 0.12,
        LookedAt = 0,
    };

    [Fact]
    public void What_is_proved_over_every_hour_is_kept_apart_from_what_is_proved_on_moments_and_what_is_likely()
    {
        SearchReport search = new("strings", 12, 6, 370, 2.7, Proved: false) { Exact = Exact };
        Assert.EndsWith(
            "Proved on 24 weighted moments of the weather: none of them does better than the one shown. The best 6 were worked out again hour by hour, and are listed by that. "
            + "Over every hour it is proved that none of them does better than the one shown by more than 2.7 %. Going by those worked out, 0.1 % is likely the most.",
            ProofSentence.Of(search, [SampleResults.Go.Designs[0]]),
            StringComparison.Ordinal);
        Assert.EndsWith("Going by those worked out, none is likely to.", ProofSentence.Of(search with { Exact = Exact with { LikelyGapPercent = 0 } }, [SampleResults.Go.Designs[0]]), StringComparison.Ordinal);
    }

    [Fact]
    public void Proved_over_every_hour_needs_no_moments()
    {
        SearchReport search = new("strings", 12, 6, 360, 0, Proved: true) { Exact = Exact with { Resolved = 2, LookedAt = 4 } };
        Assert.EndsWith(
            "The best 2 were worked out again hour by hour, and are listed by that, and so was every other wiring until it could no longer catch up. Proved over every hour: none of them does better than the one shown.",
            ProofSentence.Of(search, [SampleResults.Go.Designs[0]]),
            StringComparison.Ordinal);
        Assert.Contains("The best was worked out again hour by hour, and so was the only other one that could have matched it. Proved", ProofSentence.Of(search with { Exact = Exact with { Resolved = 1, LookedAt = 1 } }, [SampleResults.Go.Designs[0]]), StringComparison.Ordinal);
        Assert.Contains("The best was worked out again hour by hour. Proved", ProofSentence.Of(search with { Exact = Exact with { Resolved = 1 } }, [SampleResults.Go.Designs[0]]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_called_off_says_so_with_its_gap()
    {
        SearchReport search = new("strings", 12, 6, 370, 2.7, Proved: false) { StoppedEarly = true };
        string sentence = ProofSentence.Of(search, [SampleResults.Go.Designs[0]]);
        Assert.StartsWith("Stopped early. There are 12 ways", sentence, StringComparison.Ordinal);
        Assert.EndsWith("by no more than 2.7 %.", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_waits_for_an_answer_is_not_said_to_be_proved_worse()
    {
        SearchReport search = new("strings", 12, 6, 360.2, 0, Proved: true);
        Design[] goThenAsk = [SampleResults.Go.Designs[0], SampleResults.Ask.Designs[0] with { Rank = 2 }];
        Assert.EndsWith("Proved: none of the wirings that may be connected without asking anybody does better than the first one listed.", ProofSentence.Of(search, goThenAsk), StringComparison.Ordinal);
        Assert.EndsWith("Proved: none of them does better than the one shown.", ProofSentence.Of(search, [goThenAsk[0]]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 1, "There is one way to wire these panels in strings; it keeps within the limits, and is shown.")]
    [InlineData(3, 1, "There are 3 ways to wire all or some of these panels in strings; only one of them keeps within the limits, and is shown.")]
    [InlineData(3, 3, "There are 3 ways to wire all or some of these panels in strings; all keep within the limits. Proved: none of them does better than the one shown.")]
    public void What_there_is_to_choose_from_is_told_in_plain_words(double considered, double feasible, string sentence) =>
        Assert.Equal(sentence, ProofSentence.Of(new SearchReport("strings", considered, feasible, 360.2, 0, Proved: true), [SampleResults.Go.Designs[0]]));

    [Theory]
    [InlineData(0, "none keeps under the voltage limit, so none may be connected.")]
    [InlineData(2, "none was found that passes every rule and brings power.")]
    public void Under_a_stop_nothing_is_said_to_be_the_best(double feasible, string end)
    {
        string sentence = ProofSentence.Of(new SearchReport("strings", 2, feasible, 0, 0, Proved: true), SampleResults.Stop.Designs);
        Assert.EndsWith(end, sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("Proved", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_about_a_whole_unit_names_all_of_its_inputs_that_are_used()
    {
        Finding shared = new("unit_power", "Label watts on all inputs of box", Level.Ask, 180, 100, "W", "120 W + 60 W = 180 W", "label");
        Assert.Equal(
            "ASK FIRST: do not connect it to box (store-a and store-b) until somebody who knows has answered. Label watts on all inputs of box: 180 W, at most 100 W.",
            VerdictSentence.Of(InABox(assignment => assignment.Input == "store-a" ? assignment with { Findings = [shared] } : assignment)));
    }

    [Fact]
    public void What_a_unit_holds_back_is_told_at_each_of_its_inputs_and_in_the_sentence()
    {
        PlanResult result = InABox(assignment => assignment with { HeldByUnit = new UnitHold("box", 200, 268) });
        result = result with { Designs = [result.Designs[0] with { PeakPowerW = 200 }] };
        Assert.Equal("GO: connect it as drawn; nothing is against it, and the 2 inputs together take 200 W in full sun, held by the limit of box.", VerdictSentence.Of(result));
        (string _, string _, string remark) = MeterTable.Rows(result.Designs[0].Assignments[0]).Single(row => row.What == "  amps");
        Assert.Equal("by itself, nothing holds it back; but box takes at most 200 W of the 268 W at its inputs, so amps and watts will read less", remark);
        Assert.Equal("with the other inputs box holds it back", MeterTable.HeldInShort(result.Designs[0].Assignments[0]));
        Assert.Equal("by itself, all that the panels can give", MeterTable.Rows(result.Designs[0].Assignments[0]).Last().Remark);
    }

    private static PlanResult InABox(Func<Assignment, Assignment> change)
    {
        Plan plan = SampleResults.TwoInputs.Plan;
        Design design = SampleResults.TwoInputs.Designs[0];
        return SampleResults.TwoInputs with
        {
            Plan = plan with { Doubts = [], Inputs = [.. plan.Inputs.Select(planned => planned with { Input = planned.Input with { Unit = "box" } })] },
            Designs = [design with { Assignments = [.. design.Assignments.Select(change)] }],
        };
    }

    [Fact]
    public void Two_inputs_are_told_together()
    {
        PlanResult result = SampleResults.TwoInputs with { Plan = SampleResults.TwoInputs.Plan with { Doubts = [] } };
        Assert.Equal("GO: connect it as drawn; nothing is against it, and the 2 inputs together take 268 W in full sun.", VerdictSentence.Of(result));
    }

    [Fact]
    public void A_name_in_a_plan_cannot_steer_the_terminal()
    {
        StringWriter writer = new() { NewLine = "\n" };
        new PlanScreen(writer, TerminalStyle.Plain).Write(SampleResults.Go with { Plan = SampleResults.Go.Plan with { Name = "shed\e[2J\aB\r\nGO" } });
        string page = writer.ToString();
        Assert.DoesNotContain(page, c => char.IsControl(c) && c != '\n');
        Assert.StartsWith("shed [2J B GO\n", page, StringComparison.Ordinal);
    }
}

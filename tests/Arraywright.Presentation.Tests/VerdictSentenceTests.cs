using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class VerdictSentenceTests
{
    [Fact]
    public void Go_says_what_the_input_takes() =>
        Assert.Equal("GO: connect it as drawn; nothing is against it, and store-a takes 360 W in full sun.", VerdictSentence.Of(SampleResults.Go));

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
            "Proved on 24 weighted moments of the weather: none of them does better than this one. The best 6 were solved again over every hour, and are ranked by that. "
            + "Over every hour it is proved that none of them does better than this one by more than 2.7 %. Going by those solved, 0.1 % is likely the most.",
            ProofSentence.Of(search, [SampleResults.Go.Designs[0]]),
            StringComparison.Ordinal);
        Assert.EndsWith("None is likely to, going by those solved.", ProofSentence.Of(search with { Exact = Exact with { LikelyGapPercent = 0 } }, [SampleResults.Go.Designs[0]]), StringComparison.Ordinal);
    }

    [Fact]
    public void Proved_over_every_hour_needs_no_moments()
    {
        SearchReport search = new("strings", 12, 6, 360, 0, Proved: true) { Exact = Exact with { Resolved = 2, LookedAt = 4 } };
        Assert.EndsWith(
            "The best 2 were solved again over every hour, and are ranked by that; each of the others too, or until it could no longer catch up. Proved over every hour: none of them does better than this one.",
            ProofSentence.Of(search, [SampleResults.Go.Designs[0]]),
            StringComparison.Ordinal);
        Assert.Contains("It was solved again over every hour. Proved", ProofSentence.Of(search with { Exact = Exact with { Resolved = 1 } }, [SampleResults.Go.Designs[0]]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_called_off_says_so_with_its_gap()
    {
        SearchReport search = new("strings", 12, 6, 370, 2.7, Proved: false) { StoppedEarly = true };
        string sentence = ProofSentence.Of(search, [SampleResults.Go.Designs[0]]);
        Assert.StartsWith("Stopped early: ", sentence, StringComparison.Ordinal);
        Assert.EndsWith("by no more than 2.7 %.", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_waits_for_an_answer_is_not_said_to_be_proved_worse()
    {
        SearchReport search = new("strings", 12, 6, 360.2, 0, Proved: true);
        Design[] goThenAsk = [SampleResults.Go.Designs[0], SampleResults.Ask.Designs[0] with { Rank = 2 }];
        Assert.EndsWith("Proved: none of those that need no answer does better than number 1.", ProofSentence.Of(search, goThenAsk), StringComparison.Ordinal);
        Assert.EndsWith("Proved: none of them does better than this one.", ProofSentence.Of(search, [goThenAsk[0]]), StringComparison.Ordinal);
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

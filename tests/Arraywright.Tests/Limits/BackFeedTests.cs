using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Rules;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>1.25 × what the others offer, into each panel in turn (NEC 690.8(A), 690.9(A)); the fuse window of IEC 62548.</summary>
public sealed class BackFeedTests
{
    private static readonly Panel Ten = Shed with { Name = "ten", ShortCircuitA = 10, MaxSeriesFuseA = 25 };

    private static Wiring Strings(int count, string name) => Side([.. Enumerable.Repeat(One(name), count)]);

    [Fact]
    public void One_string_has_nothing_beside_it()
    {
        Finding finding = Row(3, "ten").On(Input(90), Ten).Says("back_feed");
        Assert.Equal((Level.Go, 0.0, 25.0), (finding.Level, finding.Value, finding.Limit));
        Assert.Null(finding.Note);
    }

    [Theory]
    [InlineData(25, null)]
    [InlineData(24.9, "Fuses are compulsory: each string needs a 16 A gPV fuse.")]
    public void Three_strings_at_the_rating_need_no_fuse_and_over_it_they_do(double ratingA, string? note)
    {
        // 1.25 × (10 + 10) = 25 A. Window 15 < In < 24: the 15 A link is not above 1.5 × 10, so 16 A.
        Finding finding = Strings(3, "ten").On(Input(90), Ten with { MaxSeriesFuseA = ratingA }).Says("back_feed");
        Assert.Equal((Level.Go, note), (finding.Level, finding.Note));
        Assert.Equal(25, finding.Value, 1e-12);
    }

    [Fact]
    public void Where_no_standard_fuse_fits_the_rating_it_stops()
    {
        // The smallest fit is 16 A; the label allows 15 A.
        Finding finding = Strings(3, "ten").On(Input(90), Ten with { MaxSeriesFuseA = 15 }).Says("back_feed");
        Assert.Equal((Level.Stop, 16.0, 15.0), (finding.Level, finding.Value, finding.Limit));
        Assert.True(finding.MarginPercent < 0);
        Assert.Equal("Smallest fuse for string 1 that strong sun does not blow, against the largest it may have", finding.Title);
        Assert.Contains("no standard size fits string 1", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_for_want_of_a_fuse_tells_the_fuse_though_the_current_by_itself_would_pass()
    {
        // Into the silent small panel of string 2: 1.25 × 10 = 12.5 A, over its 1.5625 × 2 = 3.125 A, so a fuse: over 3 A and under 4.8 A, that is 4 A.
        // The mild panel in that row allows 3.5 A only, and 12.5 A is over that as well; in string 1 there is nothing amiss: 2.5 A into 25 A.
        Panel small = Shed with { Name = "small", ShortCircuitA = 2, MaxSeriesFuseA = null };
        Panel mild = Shed with { Name = "mild", ShortCircuitA = 2, MaxSeriesFuseA = 3.5 };
        Finding finding = Side(One("ten"), Row(One("small"), One("mild"))).On(Input(90), Ten, small, mild).Says("back_feed");
        Assert.Equal((Level.Stop, 4.0, 3.5), (finding.Level, finding.Value, finding.Limit));
        Assert.Contains("string 2", finding.Title, StringComparison.Ordinal);
        Assert.Contains("the smallest standard size over 3 A is 4 A; needed since", finding.Working, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_list_of_sizes_ends_the_stop_says_so()
    {
        // 1.5 × 30 A = 45 A; the largest usual link has 32 A.
        Finding finding = Strings(3, "ten").On(Input(90), Ten with { ShortCircuitA = 30, MaxSeriesFuseA = 50 }).Says("back_feed");
        Assert.Equal((Level.Stop, 45.0, 32.0), (finding.Level, finding.Value, finding.Limit));
    }

    [Fact]
    public void Too_much_within_a_block_is_told_as_the_current_it_is()
    {
        // Three of ten side by side in a block: into one 1.25 × 20 = 25 A from its mates, over its 24 A; the other string adds 1.25 × 10 = 12.5 A.
        Wiring block = Row(Side(One("ten"), One("ten"), One("ten")), One("ten"));
        Finding finding = Side(block, One("ten")).On(Input(90), Ten with { MaxSeriesFuseA = 24 }).Says("back_feed");
        Assert.Equal((Level.Stop, 37.5, 24.0), (finding.Level, Math.Round(finding.Value, 9), finding.Limit));
        Assert.Contains("its own block", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_silent_label_is_the_reason_told_though_another_panels_label_speaks()
    {
        // Into the silent 2 A panel 1.25 × 10 = 12.5 A; into the ten 1.25 × 2 = 2.5 A of 25 A, which is not why it asks.
        Panel small = Shed with { Name = "small", ShortCircuitA = 2, MaxSeriesFuseA = null };
        Finding finding = Side(One("ten"), One("small")).On(Input(90), Ten, small).Says("back_feed");
        Assert.Equal((Level.Ask, 12.5, null, null), (finding.Level, finding.Value, finding.Limit, finding.MarginPercent));
        Assert.Equal("Current the rest can drive into a failed small, whose label gives no largest series fuse", finding.Title);
        Assert.StartsWith("1.25 × 10 A from the others = 12.5 A into string 2 (small: no figure)", finding.Working, StringComparison.Ordinal);
    }

    [Fact]
    public void Unequal_strings_are_taken_in_turn_and_only_those_in_danger_need_a_fuse()
    {
        // Into the small: 1.25 × 10 = 12.5 A over its 5 A. Into the ten: 1.25 × 2 = 2.5 A. Small's window 3 < In < 4.8: 4 A.
        Panel small = Shed with { Name = "small", ShortCircuitA = 2, MaxSeriesFuseA = 5 };
        Finding finding = Side(One("ten"), One("small")).On(Input(90), Ten, small).Says("back_feed");
        Assert.Equal("1.25 × 10 A from the others = 12.5 A into string 2 (small: 5 A)", finding.Working);
        Assert.Equal((Level.Go, "Fuses are compulsory: string 2 needs a 4 A gPV fuse."), (finding.Level, finding.Note));
    }

    [Theory]
    [InlineData(2, Level.Go)]
    [InlineData(3, Level.Ask)]
    public void A_silent_label_is_a_note_for_two_equal_strings_and_asked_about_from_three(int strings, Level level)
    {
        Finding finding = Strings(strings, "ten").On(Input(90), Ten with { MaxSeriesFuseA = null }).Says("back_feed");
        Assert.Equal(level, finding.Level);
        Assert.Null(finding.Limit);
        Assert.Contains("ten gives no largest series fuse", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_silent_small_panel_beside_a_large_one_is_asked_about_though_there_are_only_two_strings()
    {
        // 12.5 A into a panel of 2 A, whose 156 % is 3.125 A.
        Panel small = Shed with { Name = "small", ShortCircuitA = 2, MaxSeriesFuseA = null };
        Finding finding = Side(One("ten"), One("small")).On(Input(90), Ten, small).Says("back_feed");
        Assert.Equal(Level.Ask, finding.Level);
        Assert.Contains("string 2 needs a 4 A gPV fuse", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_panel_in_a_block_is_fed_by_its_block_and_by_the_other_strings()
    {
        // Into one of the block: its mate 10 A and the other string 10 A: 1.25 × 20 = 25 A; into the lone string: 1.25 × 20 = 25 A.
        Wiring wiring = Side(Row(Side(One("ten"), One("ten")), One("ten")), Row(2, "ten"));
        Finding finding = wiring.On(Input(90), Ten).Says("back_feed");
        Assert.Equal(25, finding.Value, 1e-12);
        Assert.Equal(Level.Go, finding.Level);
    }

    [Theory]
    [InlineData(45, Level.Go, 62.5)]
    [InlineData(40, Level.Stop, 32)]
    public void A_strings_fuse_does_not_hold_back_what_its_own_block_feeds(double ratingA, Level level, double toldA)
    {
        // Three strings with a block of two, 20 A each: 1.25 × (40 + 10) = 62.5 A, so fuses: above 1.5 × 20 = 30 A, that is 32 A.
        // The mate's 1.25 × 10 = 12.5 A comes past the fuse: 45 − 12.5 = 32.5 A bears 32 A, 40 − 12.5 = 27.5 A does not.
        Wiring block = Row(Side(One("ten"), One("ten")), One("ten"));
        Finding finding = Side(block, block, block).On(Input(90), Ten with { MaxSeriesFuseA = ratingA }).Says("back_feed");
        Assert.Equal(toldA, finding.Value, 1e-12);
        Assert.Equal(level, finding.Level);
    }

    [Fact]
    public void A_block_of_two_in_a_single_string_is_within_its_rating()
    {
        // 1.25 × 10 = 12.5 A under 15 A.
        Finding finding = Row(Side(One("ten"), One("ten")), One("ten")).On(Input(90), Ten with { MaxSeriesFuseA = 15 }).Says("back_feed");
        Assert.Equal((Level.Go, 12.5), (finding.Level, finding.Value));
    }

    [Fact]
    public void A_silent_small_panel_in_a_block_is_asked_about_and_no_string_fuse_is_offered()
    {
        // 12.5 A from its mate of 10 A, in one string only: a string fuse would not hold that back.
        Panel small = Shed with { Name = "small", ShortCircuitA = 2, MaxSeriesFuseA = null };
        Finding finding = Row(Side(One("ten"), One("small")), One("ten")).On(Input(90), Ten, small).Says("back_feed");
        Assert.Equal(Level.Ask, finding.Level);
        Assert.DoesNotContain("gPV", finding.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.4, null)]
    [InlineData(0.5, 1.0)]
    [InlineData(30, null)]
    public void No_fuse_is_named_outside_the_window(double shortCircuitA, double? sizeA)
    {
        // 0.4 A: 0.6 to 0.96 A holds no size; 0.5 A: 0.75 to 1.2 A holds 1 A; 30 A: above 45 A there is none.
        Assert.Equal(sizeA, new StringFuse(0, RuleSet.Iec, shortCircuitA, double.PositiveInfinity).SizeA);
    }
}

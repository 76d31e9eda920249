using Arraywright.Gear;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>What the labels offer, 2 × 6.72 = 13.44 A for two strings, against what the input may be offered.</summary>
public sealed class ShortCircuitCurrentTests
{
    private static readonly DcInput Bare = Input(60);

    private static Finding Judge(DcInput input) => Side(Row(2, "shed-120"), Row(2, "shed-120")).On(input).Says("short_circuit_current");

    [Fact]
    public void Strings_add_and_the_working_shows_it()
    {
        Finding finding = Judge(Bare with { RatedCurrent = Limit(14) });
        Assert.Equal("2 × 6.72 A = 13.44 A; rated_current 14 A", finding.Working);
        Assert.Equal(Level.Go, finding.Level);
    }

    [Fact]
    public void One_string_needs_no_equation() =>
        Assert.Equal("6.72 A; rated_current 14 A", Row(2, "shed-120").On(Bare with { RatedCurrent = Limit(14) }).Says("short_circuit_current").Working);

    [Theory]
    [InlineData(13.44, Level.Go)]
    [InlineData(13.43, Level.Ask)]
    public void At_the_figure_is_allowed_and_over_it_is_asked_never_stopped(double ratedA, Level level) =>
        Assert.Equal(level, Judge(Bare with { RatedCurrent = Limit(ratedA) }).Level);

    [Fact]
    public void The_stated_short_circuit_limit_goes_before_a_printed_current()
    {
        Finding finding = Judge(Bare with { RatedCurrent = Limit(10), MaxCurrent = Limit(10), MaxShortCircuitCurrent = Limit(14, EvidenceKind.Maker) });
        Assert.Equal((Level.Go, 14.0), (finding.Level, finding.Limit));
        Assert.Contains("maker's written answer", finding.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawn_limit_stands_in_until_somebody_says_what_may_be_offered()
    {
        Finding finding = Judge(Bare with { MaxCurrent = Limit(10, EvidenceKind.Manual) });
        Assert.Equal((Level.Ask, 10.0), (finding.Level, finding.Limit));
        Assert.Contains("drawn current stands in", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void An_input_that_states_no_current_is_asked_about()
    {
        Finding finding = Judge(Bare);
        Assert.Equal(Level.Ask, finding.Level);
        Assert.Null(finding.Limit);
        Assert.Null(finding.MarginPercent);
    }

    [Theory]
    [InlineData(EvidenceKind.Maker, 0.35, Level.Go)]
    [InlineData(EvidenceKind.Maker, 0.30, Level.Ask)]
    [InlineData(EvidenceKind.None, 0.35, Level.Ask)]
    public void A_percentage_above_the_figure_counts_only_with_a_word_behind_it(EvidenceKind kind, double exceed, Level level)
    {
        // 10 A + 35 % = 13.5 A over 13.44 A; + 30 % = 13 A under it.
        Assert.Equal(level, Judge(Bare with { RatedCurrent = Limit(10, kind, exceed) }).Level);
    }

    [Fact]
    public void A_string_of_unequal_panels_counts_with_its_largest_and_says_its_smallest()
    {
        Panel small = Shed with { Name = "small", ShortCircuitA = 5.1 };
        Finding finding = Row(One("shed-120"), One("small")).On(Bare with { RatedCurrent = Limit(10) }, Shed, small).Says("short_circuit_current");
        Assert.Equal(6.72, finding.Value);
        Assert.Contains("5.1 A to 6.72 A", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_block_adds_its_panels_and_unequal_strings_say_their_shares()
    {
        // Block: 5.1 + 5.1 = 10.2 A in series with 6.72 A counts 10.2; the second string 6.72: 16.92 A in all, 60 % and 40 %.
        Panel small = Shed with { Name = "small", ShortCircuitA = 5.1 };
        Finding finding = Side(Row(Side(One("small"), One("small")), One("shed-120")), One("shed-120")).On(Bare with { RatedCurrent = Limit(20) }, Shed, small).Says("short_circuit_current");
        Assert.Equal(16.92, finding.Value, 1e-9);
        Assert.StartsWith("Shares: string 1 10.2 A (60 %), string 2 6.72 A (40 %).", finding.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(16.8, false)]
    [InlineData(16.7, true)]
    public void Strong_sun_is_shown_beside_and_noted_where_it_passes_but_not_judged(double ratedA, bool noted)
    {
        // 1.25 × 13.44 = 16.8 A.
        Finding finding = Side(Row(2, "shed-120"), Row(2, "shed-120")).On(Bare with { RatedCurrent = Limit(ratedA) }).Says("strong_sun_current");
        Assert.Equal("1.25 × 13.44 A = 16.8 A", finding.Working);
        Assert.Equal((Level.Go, noted), (finding.Level, finding.Note is not null));
    }
}

using Arraywright.Electrical;

namespace Arraywright.Tests.Electrical;

public sealed class WiringTextTests
{
    // Expected forms written by hand from the grammar in the remarks of WiringText.
    [Theory]
    [InlineData("a", "a")]
    [InlineData("  shed-120  ", "shed-120")]
    [InlineData("120w-old + a", "120w-old + a")]
    [InlineData("b + a", "a + b")]
    [InlineData("b | a", "a | b")]
    [InlineData("3*a", "3*a")]
    [InlineData("3 * a", "3*a")]
    [InlineData("a + a + a", "3*a")]
    [InlineData("1*a", "a")]
    [InlineData("003*a", "3*a")]
    [InlineData("3*120", "3*120")]
    [InlineData("120 + 2*120w-old", "120 + 2*120w-old")]
    [InlineData("a + b | c", "c | a + b")]
    [InlineData("(a + b) | (a + b)", "a + b | a + b")]
    [InlineData("(shed-120 + shed-120) | (shed-120 + shed-120)", "2*shed-120 | 2*shed-120")]
    [InlineData("a + (b | c)", "a + (b | c)")]
    [InlineData("(b | c) + a + (c | b)", "a + 2*(b | c)")]
    [InlineData("3*(a | b)", "3*(a | b)")]
    [InlineData("2*(a + b)", "2*a + 2*b")]
    [InlineData("2*(2*(2*a))", "8*a")]
    [InlineData("a + (b + (c + d))", "a + b + c + d")]
    [InlineData("a | (b | (c | d))", "a | b | c | d")]
    [InlineData("((((a))))", "a")]
    [InlineData("a+b|c+d", "a + b | c + d")]
    [InlineData("a\n+\tb", "a + b")]
    [InlineData("a + (b | c + (d | e))", "a + (b | c + (d | e))")]
    [InlineData("2*a | a | 3*a | b", "a | b | 2*a | 3*a")]
    [InlineData("Süd-1 + a", "Süd-1 + a")]
    public void A_wiring_is_read_and_printed_in_canonical_form(string text, string canonical)
    {
        Assert.True(WiringText.TryParse(text, out Wiring? wiring, out WiringTextFault? fault), fault?.ToString());
        Assert.Equal(canonical, WiringText.Print(wiring));
    }

    [Fact]
    public void Series_binds_tighter_than_parallel()
    {
        Assert.True(WiringText.TryParse("a + b | c", out Wiring? wiring, out _));
        Wiring.Parallel parallel = Assert.IsType<Wiring.Parallel>(wiring);
        Assert.Equal(new Wiring.Single("c"), parallel.Parts[0]);
        Assert.Equal(Wiring.InSeries([new Wiring.Single("a"), new Wiring.Single("b")]), parallel.Parts[1]);
    }

    [Fact]
    public void A_count_repeats_the_part_in_series()
    {
        Assert.True(WiringText.TryParse("3*(a | b)", out Wiring? wiring, out _));
        Wiring block = Wiring.InParallel([new Wiring.Single("a"), new Wiring.Single("b")]);
        Assert.Equal(Wiring.InSeries([block, block, block]), wiring);
    }

    [Theory]
    [InlineData("", 0, "the end", "a panel name")]
    [InlineData("   ", 3, "the end", "a panel name")]
    [InlineData("a +", 3, "the end", "a panel name")]
    [InlineData("| a", 0, "'|'", "a panel name")]
    [InlineData("a + + b", 4, "'+'", "a panel name")]
    [InlineData("a b", 2, "b", "'+', '|' or the end")]
    [InlineData("(a", 2, "the end", "'+', '|' or ')'")]
    [InlineData("a)", 1, "')'", "'+', '|' or the end")]
    [InlineData("()", 1, "')'", "a panel name")]
    [InlineData("(a b)", 3, "b", "'+', '|' or ')'")]
    [InlineData("a*3", 1, "'*'", "a count stands before its star")]
    [InlineData("3*2*a", 3, "'*'", "a count stands before its star")]
    [InlineData("3*", 2, "the end", "a panel name")]
    [InlineData("3(a)", 1, "'('", "'+', '|' or the end")]
    [InlineData("0*a", 0, "0", "a count from 1 to 4096")]
    [InlineData("b + 99999999999999999999*a", 4, "99999999999999999999", "a count from 1 to 4096")]
    [InlineData("a + 4097*a", 4, "4097", "a count from 1 to 4096")]
    [InlineData("a & b", 2, "'&'", "'+', '|' or the end")]
    [InlineData("a_1", 1, "'_'", "'+', '|' or the end")]
    [InlineData("3×a", 1, "'×'", "'+', '|' or the end")]
    [InlineData("a\0", 1, "the character U+0000", "'+', '|' or the end")]
    [InlineData("-0.5*a", 2, "'.'", "'+', '|' or the end")]
    public void A_fault_says_where_what_was_found_and_what_was_expected(string text, int position, string found, string expected)
    {
        Assert.False(WiringText.TryParse(text, out Wiring? wiring, out WiringTextFault? fault));
        Assert.Null(wiring);
        Assert.Equal(position, fault.Position);
        Assert.Equal(found, fault.Found);
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4096*a", true)]
    [InlineData("4095*a + b", true)]
    [InlineData("64*(64*a)", true)]
    [InlineData("4096*a + b", false)]
    [InlineData("64*(64*a | b)", false)]
    [InlineData("4096*(4096*(4096*(4096*(4096*(4096*a)))))", false)]
    public void At_most_4096_panels_are_read(string text, bool accepted)
    {
        Assert.Equal(accepted, WiringText.TryParse(text, out Wiring? wiring, out WiringTextFault? fault));
        Assert.True(accepted ? wiring!.Panels.Count() == 4096 : fault!.Expected == "at most 4096 panels in all");
    }

    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    [InlineData(1_000_000, false)]
    public void At_most_64_brackets_stand_open_at_once(int depth, bool accepted)
    {
        string text = new string('(', depth) + "a" + new string(')', depth);
        Assert.Equal(accepted, WiringText.TryParse(text, out _, out WiringTextFault? fault));
        Assert.True(accepted || fault is { Position: 64, Found: "'('", Expected: "at most 64 brackets open at once" });
    }

    [Fact]
    public void Brackets_one_after_another_are_not_nested()
    {
        string text = string.Join(" + ", Enumerable.Repeat("(a | b)", 200));
        Assert.True(WiringText.TryParse(text, out Wiring? wiring, out _));
        Assert.Equal("200*(a | b)", WiringText.Print(wiring));
    }

    [Fact]
    public void A_long_wrong_word_is_shortened_in_the_fault()
    {
        Assert.False(WiringText.TryParse("a " + new string('x', 1_000_000), out _, out WiringTextFault? fault));
        Assert.Equal(new string('x', 30) + "...", fault.Found);
    }
}

using Arraywright.Electrical;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

/// <summary>The words are by hand; a wiring is read in its canonical order, what is simple first.</summary>
public sealed class WiringWordsTests
{
    [Theory]
    [InlineData("a", "One panel by itself.")]
    [InlineData("3*a", "One string: 3 panels in a row.")]
    [InlineData("2*a | 2*b", "2 strings side by side, each of 2 panels in a row.")]
    [InlineData("2*a | 2*b | 3*a", "3 strings side by side: 2 of 2 panels in a row and 1 of 3 panels in a row.")]
    [InlineData("a + (a | b) + 2*a", "One string: 4 places in a row (3 panels in a row, then 2 panels side by side).")]
    [InlineData("a | (a | b) + a | 2*a", "3 strings side by side: 1 of 1 panel, 1 of 2 panels in a row and 1 of 2 places in a row (1 panel, then 2 panels side by side).")]
    [InlineData("(2*a | 2*b) + a", "One string: 2 places in a row (1 panel, then 2 strings side by side, each of 2 panels in a row, in one place).")]
    public void A_wiring_is_told_with_like_strings_together(string wiring, string expected)
    {
        Assert.True(WiringText.TryParse(wiring, out Wiring? read, out _));
        Assert.Equal(expected, WiringWords.Describe(read));
    }
}

using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

/// <summary>The expected pictures are drawn by hand.</summary>
public sealed class WiringPictureTests
{
    [Fact]
    public void A_single_panel_has_its_two_leads_on_the_input() => Draws("a", "    in + ──[+ a −]── − in");

    [Fact]
    public void A_string_runs_from_left_to_right() => Draws("a + b + c", "    in + ──[+ a −]──[+ b −]──[+ c −]── − in");

    [Fact]
    public void Strings_side_by_side_are_stacked_between_two_rails() => Draws(
        "a + b | c | a + a",
        """
            in + ──┬─[+ c −]──────────┬── − in
                   ├─[+ a −]──[+ a −]─┤
                   └─[+ a −]──[+ b −]─┘
        """);

    [Fact]
    public void A_string_that_must_have_a_fuse_has_it_at_its_plus_end() => Assert.Equal(
        """
            in + ──┬─[+ b −]───────────────────────┬── − in
                   ├─(fuse 12 A)──[+ a −]──[+ a −]─┤
                   └─(fuse 12 A)──[+ a −]──[+ a −]─┘
        """,
        Draw("b | 2*a | 2*a", null, 12, 12));

    [Fact]
    public void Panels_side_by_side_in_a_string_have_rails_of_their_own() => Draws(
        "a + (b | c)",
        """
            in + ──[+ a −]──┬─[+ b −]─┬── − in
                            └─[+ c −]─┘
        """);

    [Fact]
    public void Seven_long_names_in_a_row_are_drawn_with_letters()
    {
        string picture = Draw("7*cheese-dairy-240");
        Assert.Contains("[+ A −]──[+ A −]", picture, StringComparison.Ordinal);
        Assert.Contains("A is cheese-dairy-240.", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_too_wide_for_any_picture_is_told_as_a_list() => Draws(
        "16*a | 15*a + (b | c) | 16*a",
        """
            side by side, all + together, all − together:
              2 times this:
                in a row, − of each to + of the next:
                  16 × a
              in a row, − of each to + of the next:
                15 × a
                side by side, all + together, all − together:
                  1 × b
                  1 × c
        """);

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(9)]
    [InlineData(16)]
    public void Every_panel_of_a_small_array_is_in_its_picture(int count)
    {
        int strings = count < 4 ? 1 : 4;
        string picture = Draw(string.Join(" | ", Enumerable.Range(0, strings).Select(index => ((count + index) / strings).ToString(CultureInfo.InvariantCulture) + "*shed-120")));
        Assert.Equal(count, picture.Split("[+ ").Length - 1);
    }

    private static void Draws(string wiring, string expected) => Assert.Equal(expected, Draw(wiring));

    private static string Draw(string text, params double?[] fusesA)
    {
        Assert.True(WiringText.TryParse(text, out Wiring? wiring, out _));
        StringWriter writer = new() { NewLine = "\n" };
        WiringPicture.Write(writer, wiring, [.. fusesA], "in", TerminalStyle.Plain);
        return writer.ToString().TrimEnd('\n');
    }
}

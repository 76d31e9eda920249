using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class LossLadderTests
{
    [Fact]
    public void Each_bar_shows_what_is_left_and_what_was_just_taken()
    {
        // 62 columns: 2 + "into the unit" 13 + 2 + "under 1 W" 9 + 2 leave 34 for 400 W: 304 W are 25.8 cells.
        Assert.Equal(
            """
              label              400 W  ██████████████████████████████████
              heat              − 96 W  ██████████████████████████░░░░░░░░
              mismatch       under 1 W  ██████████████████████████
              a gain            + 96 W  ██████████████████████████░░░░░░░░
              into the unit      400 W  ██████████████████████████████████

            """,
            Ladder(62, new("label", 400), new("heat", 96), new("mismatch", 0.1), new("a gain", -96), new("into the unit", 400)));
    }

    [Fact]
    public void An_input_that_takes_nothing_has_no_bar_at_the_end() =>
        Assert.EndsWith("into the unit      0 W\n", Ladder(60, new("label", 400), new("not started", 400), new("into the unit", 0)), StringComparison.Ordinal);

    private static string Ladder(int width, params LossStep[] steps)
    {
        StringWriter writer = new() { NewLine = "\n" };
        LossLadder.Write(writer, steps, new TerminalStyle(width, Color: false));
        return writer.ToString();
    }
}

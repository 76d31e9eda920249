using Arraywright.Files.Text;

namespace Arraywright.Files.Tests;

public sealed class QuotedTests
{
    /// <summary>Sheep are two UTF-16 units each; the family is four faces joined into one sign of eleven.</summary>
    [Theory]
    [InlineData("🐑-120", "\"🐑-120\"")]
    [InlineData("👨‍👩‍👧‍👦", "\"👨‍👩‍👧‍👦\"")]
    [InlineData("a\u202Eb\u001b[2Jc", "\"a\uFFFDb\uFFFD[2Jc\"")]
    public void A_whole_sign_is_shown_and_nothing_that_a_terminal_obeys(string text, string expected) => Assert.Equal(expected, Quoted.Text(text));

    [Theory]
    [InlineData(59, "🐑")]
    [InlineData(58, "👨‍👩‍👧‍👦")]
    [InlineData(59, "e\u0301")]
    public void A_long_text_is_cut_between_signs(int before, string sign)
    {
        string kept = new('x', before);
        Assert.Equal($"\"{kept}…\"", Quoted.Text($"{kept}{sign} and more"));
    }

    [Fact]
    public void Half_a_sign_is_shown_as_unreadable() => Assert.Equal("\"half \uFFFD of one\"", Quoted.Text("half \ud83d of one"));

    [Fact]
    public void A_name_that_has_an_emoji_is_told_which()
    {
        PlanReading reading = PlanFile.Read("panels: [{ name: 🌞-120, voc: 22.9 V, isc: 6.72 A }]\n", "plan.yaml");
        string message = string.Join('\n', reading.Faults.Select(fault => fault.ToString()));
        Assert.Contains("\"🌞\" cannot stand in a name", message, StringComparison.Ordinal);
        Assert.DoesNotContain("\uFFFD", message, StringComparison.Ordinal);
    }
}

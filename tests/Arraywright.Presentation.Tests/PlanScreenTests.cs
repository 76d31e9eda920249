using Arraywright.Presentation.Terminal;
using Arraywright.Testing;

namespace Arraywright.Presentation.Tests;

public sealed class PlanScreenTests
{
    public static TheoryData<string> Names => ["go", "ask", "stop", "two-inputs"];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_is_the_one_last_read_in_review(string name) => Golden.Matches($"plan-{name}.txt", Page(name, TerminalStyle.Plain));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_quick_answer_is_the_one_last_read_in_review(string name)
    {
        StringWriter writer = new() { NewLine = "\n" };
        new QuickScreen(writer, TerminalStyle.Plain).Write(Result(name));
        Golden.Matches($"quick-{name}.txt", writer.ToString());
    }

    [Theory]
    [InlineData(400, true)]
    [InlineData(300, false)] // Less than the 360.2 W of the first.
    public void A_design_that_takes_more_once_the_maker_agrees_is_pointed_at(double peakW, bool isSaid)
    {
        Design asking = SampleResults.Ask.Designs[0] with { Rank = 2, PeakPowerW = peakW };
        StringWriter writer = new() { NewLine = "\n" };
        new PlanScreen(writer, TerminalStyle.Plain).Write(SampleResults.Go with { Designs = [SampleResults.Go.Designs[0], asking] });
        Assert.Equal(isSaid, writer.ToString().Contains("Number 2 below would take 400 W, if the maker agrees:", StringComparison.Ordinal));
    }

    [Fact]
    public void Beside_a_stopped_input_the_other_waits()
    {
        Design two = SampleResults.TwoInputs.Designs[0];
        Assignment stopped = SampleResults.Stop.Designs[0].Assignments[0];
        StringWriter writer = new() { NewLine = "\n" };
        new PlanScreen(writer, TerminalStyle.Plain).Write(SampleResults.TwoInputs with { Designs = [two with { Assignments = [stopped, two.Assignments[1]] }] });
        Assert.Contains("The wiring judged, not to be connected: store-a\n", writer.ToString(), StringComparison.Ordinal);
        Assert.Contains("How to connect, once the stop is cleared: store-b\n", writer.ToString(), StringComparison.Ordinal);
    }

    private static string Page(string name, TerminalStyle style)
    {
        StringWriter writer = new() { NewLine = "\n" };
        new PlanScreen(writer, style).Write(Result(name));
        return writer.ToString();
    }

    private static PlanResult Result(string name) => name switch
    {
        "go" => SampleResults.Go,
        "ask" => SampleResults.Ask,
        "stop" => SampleResults.Stop,
        _ => SampleResults.TwoInputs,
    };
}

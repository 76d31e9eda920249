using System.Text.Json;
using Arraywright.Cli.Verbs;
using Arraywright.Presentation.Tests;

namespace Arraywright.Cli.Tests;

/// <summary>What a finished result becomes, whatever computed it.</summary>
public sealed class PrintingTests
{
    [Fact]
    public void The_exit_status_is_1_for_stop_and_0_for_a_question()
    {
        Assert.Equal(0, Print(SampleResults.Go, default).Exit);
        Assert.Equal(0, Print(SampleResults.Ask, default).Exit);
        Assert.Equal(1, Print(SampleResults.Stop, default).Exit);
    }

    [Fact]
    public void Json_is_all_there_is_on_standard_output_even_when_quiet()
    {
        (_, string output, string error) = Print(SampleResults.Go, new Manners(Json: true, Quiet: true, NoColor: false));
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Equal("go", document.RootElement.GetProperty("verdict").GetString());
        Assert.Empty(error);
    }

    [Fact]
    public void Quiet_is_the_verdict_alone()
    {
        string output = Print(SampleResults.Stop, new Manners(Json: false, Quiet: true, NoColor: false)).Output;
        Assert.StartsWith("STOP: ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Colour_is_only_for_a_terminal_and_can_be_refused_there()
    {
        Assert.DoesNotContain('\e', Print(SampleResults.Go, default).Output);
        Assert.Contains('\e', Print(SampleResults.Go, default, terminal: true).Output);
        Assert.DoesNotContain('\e', Print(SampleResults.Go, new Manners(Json: false, Quiet: false, NoColor: true), terminal: true).Output);
    }

    private static (int Exit, string Output, string Error) Print(PlanResult result, Manners manners, bool terminal = false)
    {
        StringWriter output = new() { NewLine = "\n" };
        StringWriter error = new() { NewLine = "\n" };
        using Host host = new() { Output = output, Error = error, OutputTakesColor = terminal };
        int exit = PlanVerb.Print(host, result, manners, 0.25);
        return (exit, output.ToString(), error.ToString());
    }
}

namespace Arraywright.Cli.Tests;

public sealed class FailureTests
{
    [Fact]
    public void An_internal_failure_is_short_says_what_to_report_and_shows_no_trace()
    {
        (int exit, string error) = Fail(trace: false);
        Assert.Equal(3, exit);
        Assert.Contains("InvalidOperationException: the disk is made of cheese", error, StringComparison.Ordinal);
        Assert.Contains("Please report", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trace_is_shown_when_asked_for() => Assert.Contains("   at ", Fail(trace: true).Error, StringComparison.Ordinal);

    [Fact]
    public void A_reader_that_went_away_is_no_failure()
    {
        using Host host = new() { Output = new BrokenWriter(new IOException("Broken pipe", 32)), Error = TextWriter.Null };
        Assert.Equal(0, CommandLine.Run(["schema"], host));
    }

    [Fact]
    public void A_full_disk_is_a_failure_said_plainly()
    {
        StringWriter error = new() { NewLine = "\n" };
        using Host host = new() { Output = new BrokenWriter(new IOException("No space left on device", 28)), Error = error };
        Assert.Equal(3, CommandLine.Run(["schema"], host));
        Assert.Equal("arraywright: cannot write the answer: No space left on device\n", error.ToString());
    }

    private static (int Exit, string Error) Fail(bool trace)
    {
        StringWriter error = new() { NewLine = "\n" };
        using Host host = new() { Output = new BrokenWriter(new InvalidOperationException("the disk is made of cheese")), Error = error, Trace = trace };
        return (CommandLine.Run(["schema"], host), error.ToString());
    }

    private sealed class BrokenWriter(Exception failure) : StringWriter
    {
        public override void Write(string? value) => throw failure;
    }
}

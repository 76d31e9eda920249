using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class ReportVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-report-").FullName;

    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name + ".yaml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Target(string name) => Path.Combine(_folder, name);

    [Theory]
    [InlineData("shed.html", "<!DOCTYPE html>")]
    [InlineData("shed.PDF", "%PDF-1.7")]
    public void It_writes_the_file_its_name_asks_for_the_same_each_time_and_says_the_verdict(string name, string begins)
    {
        (int exit, string output, string error) = Session.Run("report", Example("hay-barn-power"), "-o", Target(name));
        Assert.Equal((0, ""), (exit, error));
        Assert.Matches("^(GO|ASK FIRST): ", output);
        byte[] first = File.ReadAllBytes(Target(name));
        Assert.StartsWith(begins, System.Text.Encoding.Latin1.GetString(first), StringComparison.Ordinal);
        Assert.Equal(0, Session.Run("report", Example("hay-barn-power"), "-o", Target(name)).Exit);
        Assert.Equal(first, File.ReadAllBytes(Target(name)));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Its_json_says_what_was_written_and_the_verdict_in_it()
    {
        (int exit, string output, _) = Session.Run("report", Example("high-pasture-stop"), "-o", Target("stop.html"), "--json");
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(1, exit);
        Assert.Equal("stop", json.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(Target("stop.html"), json.RootElement.GetProperty("file").GetString());
        Assert.Contains("class=\"verdict", File.ReadAllText(Target("stop.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_is_reported_and_told_by_the_exit_status()
    {
        (int exit, string output, _) = Session.Run("report", Example("high-pasture-stop"), "-o", Target("stop.html"));
        Assert.Equal(1, exit);
        Assert.StartsWith("STOP: ", output, StringComparison.Ordinal);
        Assert.Contains("must not be connected", File.ReadAllText(Target("stop.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("shed.doc")]
    [InlineData("shed")]
    public void Another_ending_is_refused_before_anything_is_done(string name)
    {
        (int exit, string output, string error) = Session.Run("report", Example("lambing-shed"), "-o", Target(name));
        Assert.Equal((2, ""), (exit, output));
        Assert.Equal($"arraywright: --output: found \"{Target(name)}\"; expected a file whose name ends in .html or .pdf\nTry: arraywright report --help\n", error);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Without_a_file_it_asks_for_one() =>
        Assert.Contains("--output", Session.Run("report", Example("lambing-shed")).Error, StringComparison.Ordinal);

    [Fact]
    public void A_date_that_is_none_is_refused() =>
        Assert.Equal(
            (2, "", "arraywright: --date: found \"06-21\"; expected a date such as 2026-06-21\nTry: arraywright report --help\n"),
            Session.Run("report", Example("lambing-shed"), "-o", Target("shed.html"), "--date", "06-21"));

    [Fact]
    public void Where_it_cannot_write_it_says_why_and_leaves_what_is_there()
    {
        Directory.CreateDirectory(Target("taken.html"));
        File.WriteAllText(Path.Combine(Target("taken.html"), "old"), "old");
        (int exit, string output, string error) = Session.Run("report", Example("lambing-shed"), "-o", Target("taken.html"));
        Assert.Equal((2, ""), (exit, output));
        Assert.StartsWith($"arraywright: cannot write \"{Target("taken.html")}\": ", error, StringComparison.Ordinal);
        Assert.Equal(["old"], Directory.GetFiles(Target("taken.html")).Select(Path.GetFileName));
        Assert.Empty(Directory.GetFiles(_folder));

        (exit, _, error) = Session.Run("report", Example("lambing-shed"), "-o", Target("nowhere/shed.pdf"));
        Assert.Equal(2, exit);
        Assert.Contains("its folder is not there", error, StringComparison.Ordinal);
    }
}

using System.CommandLine;

namespace Arraywright.Cli.Tests;

public sealed class CommandLineTests
{
    [Fact]
    public void Without_a_verb_it_tells_what_verbs_there_are()
    {
        (int exit, string output, string error) = Session.Run();
        Assert.Equal(0, exit);
        Assert.Contains("\n  plan ", output, StringComparison.Ordinal);
        Assert.Empty(error);
    }

    [Theory]
    [InlineData("plna", "plan")]
    [InlineData("chekc", "check")]
    [InlineData("Quick", "quick")]
    [InlineData("net-list", "netlist")]
    public void An_unknown_verb_is_wrong_input_and_the_nearest_is_suggested(string typed, string meant)
    {
        (int exit, string output, string error) = Session.Run(typed, "shed.yaml");
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Equal($"arraywright: there is no verb \"{typed}\"; did you mean \"{meant}\"?\nTry: arraywright --help\n", error);
    }

    [Fact]
    public void A_verb_like_none_is_not_guessed() =>
        Assert.Equal("arraywright: there is no verb \"xylophone\"\nTry: arraywright --help\n", Session.Run("xylophone").Error);

    [Fact]
    public void An_unknown_option_is_wrong_input_and_the_nearest_is_suggested()
    {
        (int exit, string output, string error) = Session.Run("plan", "shed.yaml", "--jsn");
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Equal("arraywright: plan has no option \"--jsn\"; did you mean \"--json\"?\nTry: arraywright plan --help\n", error);
    }

    [Fact]
    public void A_missing_plan_is_asked_for() =>
        Assert.Equal(
            (2, "", "arraywright: check needs PLAN: the plan file; - reads it from standard input\nTry: arraywright check --help\n"),
            Session.Run("check"));

    [Theory]
    [InlineData("--irradiance", "NaN", "0 to 1500, in W/m2")]
    [InlineData("--irradiance", "-1", "0 to 1500, in W/m2")]
    [InlineData("--irradiance", "1e3", "0 to 1500, in W/m2")]
    [InlineData("--irradiance", "800 W/m2", "0 to 1500, in W/m2")]
    [InlineData("--cell", "111", "-60 to 110, in C")]
    [InlineData("--cell", "25,5", "-60 to 110, in C")]
    public void Conditions_outside_sense_are_wrong_input(string option, string value, string range)
    {
        (int exit, string output, string error) = Session.Run("plan", "shed.yaml", option, value);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Equal($"arraywright: {option}: found \"{value}\"; expected a number from {range}, without its unit\nTry: arraywright plan --help\n", error);
    }

    [Fact]
    public void Several_wrong_conditions_are_all_told_at_once()
    {
        string error = Session.Run("curve", "shed.yaml", "--irradiance", "9999", "--air", "x").Error;
        Assert.Contains("--irradiance: found \"9999\"", error, StringComparison.Ordinal);
        Assert.Contains("--air: found \"x\"", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_and_air_temperature_exclude_each_other() =>
        Assert.Equal(2, Session.Run("plan", "shed.yaml", "--cell", "25", "--air", "-5").Exit);

    [Fact]
    public void Wind_without_air_would_do_nothing_and_is_refused() =>
        Assert.Contains("it needs --air", Session.Run("plan", "shed.yaml", "--wind", "3").Error, StringComparison.Ordinal);

    [Fact]
    public void A_file_named_with_an_at_sign_is_not_read_as_options() =>
        Assert.Contains("found no such file", Session.Run("plan", "@nothing.yaml").Error, StringComparison.Ordinal);

    [Fact]
    public void The_version_is_one_line() => Assert.Matches("^arraywright [0-9]+\\.[0-9]+\\.[0-9]+\n$", Session.Run("--version").Output);

    [Fact]
    public void Every_verb_that_prints_a_result_has_the_common_manners()
    {
        using Host host = new() { Output = TextWriter.Null, Error = TextWriter.Null };
        foreach (Command verb in CommandLine.Build(host).Subcommands.Where(verb => verb.Name is "plan" or "check" or "curve" or "ask" or "quick"))
        {
            Assert.Superset(new HashSet<string>(["--json", "--quiet", "--no-color"]), verb.Options.Select(option => option.Name).ToHashSet());
        }
    }
}

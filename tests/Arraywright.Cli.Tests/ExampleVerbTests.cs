using Arraywright.Cli.Verbs;
using Arraywright.Files;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class ExampleVerbTests
{
    [Fact]
    public void Every_example_of_the_repository_comes_with_the_command_unchanged()
    {
        string[] files = [.. Directory.GetFiles(Path.Combine(Repository.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal)];
        Assert.True(files.Length >= 6);
        Assert.Equal(files.Select(file => Path.GetFileNameWithoutExtension(file)), ExampleVerb.Names);
        Assert.All(files, file => Assert.Equal(File.ReadAllText(file), Session.Run("example", Path.GetFileNameWithoutExtension(file)).Output));
    }

    [Fact]
    public void Each_example_has_an_expected_exit_status_for_plan_check_and_year_in_the_table_that_the_test_script_reads() =>
        Assert.Equal(
            ExampleVerb.Names.SelectMany(name => new[] { $"{name} plan", $"{name} check", $"{name} year" }),
            File.ReadAllLines(Path.Combine(Repository.Root, "tests", "exit-codes.txt")).Select(line => line[..line.LastIndexOf(' ')]));

    [Fact]
    public void The_list_names_each_with_what_it_shows()
    {
        (int exit, string output, _) = Session.Run("example");
        Assert.Equal(0, exit);
        Assert.All(ExampleVerb.Names, name => Assert.Matches($"(^|\n)  {name} +[A-Z]", output));
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void An_unknown_example_is_wrong_input_and_the_nearest_is_suggested() =>
        Assert.Equal((2, "", "arraywright: there is no example \"lambing-shet\"; did you mean \"lambing-shed\"?\n"), Session.Run("example", "lambing-shet"));

    [Fact]
    public void The_schema_and_the_starter_plan_are_those_of_the_library()
    {
        Assert.Equal(PlanSchema.Text, Session.Run("schema").Output);
        Assert.Equal(StarterPlan.Text, Session.Run("new").Output);
    }
}

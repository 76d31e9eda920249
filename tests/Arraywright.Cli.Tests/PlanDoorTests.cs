namespace Arraywright.Cli.Tests;

/// <summary>What every verb over a plan does with one that is wrong.</summary>
public sealed class PlanDoorTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public static TheoryData<string> Verbs => ["plan", "check", "curve", "ask", "netlist"];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Verbs))]
    public void All_faults_of_a_plan_are_told_with_their_places_and_nothing_is_printed(string verb)
    {
        string path = PathOf("shed.yaml");
        File.WriteAllText(path, "plan: Shed\ngoal: yeer\npanels:\n  - name: a\n    voc: 22.9\n    isc: 6,72 A\ninputs:\n  - name: in\n    max_voltage: 50 A\n");
        (int exit, string output, string error) = Session.Run(verb, path);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.All(
            new[] { ":2:7: ", ":5:10: ", ":6:10: ", ":9:18: " },
            place => Assert.Contains(path + place, error, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_plan_that_is_not_there_is_wrong_input(string verb)
    {
        (int exit, string output, string error) = Session.Run(verb, PathOf("none.yaml"));
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("no such file", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_without_a_stated_wiring_says_what_is_missing_and_which_verb_searches()
    {
        string path = PathOf("shed.yaml");
        File.WriteAllText(path, Session.Run("new").Output);
        (int exit, string output, string error) = Session.Run("check", path);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("no input states a wiring", error, StringComparison.Ordinal);
        Assert.Contains("arraywright plan", error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_input_that_the_plan_does_not_have_is_wrong_input()
    {
        string path = PathOf("shed.yaml");
        File.WriteAllText(path, Session.Run("new").Output);
        (int exit, _, string error) = Session.Run("curve", path, "--input", "hut-stor");
        Assert.Equal(2, exit);
        Assert.Equal("arraywright: --input: the plan has no input \"hut-stor\"; did you mean \"hut-store\"?\n", error);
    }

    [Theory]
    [InlineData("16x", true)] // 16 × 22.9 V are 366 V and more.
    [InlineData("2x", false)] // In the cold a little over 50 V.
    public void A_quick_answer_says_when_the_voltage_can_kill(string count, bool isSaid) =>
        Assert.Equal(isSaid, Session.Run("quick", count, "22.9V 6.72A 18.9V 6.35A", "--onto", "450V 15A 2000W").Output.Contains("that can kill", StringComparison.Ordinal));

    [Fact]
    public void A_quick_question_without_an_input_or_with_a_bare_number_is_wrong_input()
    {
        Assert.Contains("quick needs --onto", Session.Run("quick", "4x", "22.9V 6.72A").Error, StringComparison.Ordinal);
        (int exit, string output, string error) = Session.Run("quick", "4x", "22.9V 6.72A", "--onto", "50");
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("--onto:1:1: found \"50\"", error, StringComparison.Ordinal);
    }

    private string PathOf(string name) => Path.Combine(_folder, name);
}

using Arraywright.Files;

namespace Arraywright.Cli.Tests;

public sealed class NewVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_new_file_holds_the_starter_plan_and_standard_output_nothing()
    {
        (int exit, string output, string error) = Session.Run("new", PathOf("shed.yaml"));
        Assert.Equal(0, exit);
        Assert.Empty(output);
        Assert.Contains("arraywright plan", error, StringComparison.Ordinal);
        Assert.Equal(StarterPlan.Text, File.ReadAllText(PathOf("shed.yaml")));
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_only_by_force()
    {
        File.WriteAllText(PathOf("shed.yaml"), "mine");
        (int exit, _, string error) = Session.Run("new", PathOf("shed.yaml"));
        Assert.Equal(2, exit);
        Assert.Contains("it is there already; --force replaces it", error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(PathOf("shed.yaml")));
        Assert.Equal(0, Session.Run("new", PathOf("shed.yaml"), "--force").Exit);
        Assert.Equal(StarterPlan.Text, File.ReadAllText(PathOf("shed.yaml")));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_wrong_input()
    {
        (int exit, _, string error) = Session.Run("new", PathOf("none/shed.yaml"));
        Assert.Equal(2, exit);
        Assert.StartsWith("arraywright: cannot write ", error, StringComparison.Ordinal);
    }

    private string PathOf(string name) => Path.Combine(_folder, name);
}

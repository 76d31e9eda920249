namespace Arraywright.Files.Tests;

public sealed class AtomicFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_new_file_holds_the_whole_text_and_nothing_is_left_beside_it()
    {
        AtomicFile.Write(PathOf("plan.yaml"), "goal: peak °\n", replace: false);
        Assert.Equal("goal: peak °\n", File.ReadAllText(PathOf("plan.yaml")));
        Assert.Equal((byte)'g', File.ReadAllBytes(PathOf("plan.yaml"))[0]);
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_file_that_is_there_stays_as_it_was_unless_it_may_be_replaced()
    {
        File.WriteAllText(PathOf("plan.yaml"), "mine");
        Assert.Throws<IOException>(() => AtomicFile.Write(PathOf("plan.yaml"), "new", replace: false));
        Assert.Equal("mine", File.ReadAllText(PathOf("plan.yaml")));
        Assert.Single(Directory.GetFileSystemEntries(_folder));
        AtomicFile.Write(PathOf("plan.yaml"), "new", replace: true);
        Assert.Equal("new", File.ReadAllText(PathOf("plan.yaml")));
    }

    [Fact]
    public void Interrupted_it_leaves_the_old_file_and_no_half_of_a_new_one()
    {
        File.WriteAllText(PathOf("plan.yaml"), "mine");
        Assert.Throws<OperationCanceledException>(() => AtomicFile.Write(PathOf("plan.yaml"), "new", replace: true, new CancellationToken(canceled: true)));
        Assert.Equal("mine", File.ReadAllText(PathOf("plan.yaml")));
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said_to_be_missing() =>
        Assert.ThrowsAny<IOException>(() => AtomicFile.Write(PathOf("none/plan.yaml"), "new", replace: false));

    private string PathOf(string name) => Path.Combine(_folder, name);
}

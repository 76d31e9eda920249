using System.Xml.Linq;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class PictureOptionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public static TheoryData<string> Verbs => ["curve", "day", "year"];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Every_example_is_drawn_and_the_answer_still_printed(string verb)
    {
        foreach (string example in Repository.Examples)
        {
            string file = PathOf($"{Path.GetFileNameWithoutExtension(example)}.svg");
            (int exit, string output, string error) = Run(verb, example, file);
            Assert.Equal(example.Contains("stop", StringComparison.Ordinal) ? 1 : 0, exit);
            Assert.Empty(error);
            Assert.NotEmpty(output);
            Assert.Equal("svg", XDocument.Load(file).Root!.Name.LocalName);
        }

        Assert.Equal(Repository.Examples.Length, Directory.GetFileSystemEntries(_folder).Length);
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void A_png_has_its_size_its_letters_and_its_curves(string verb)
    {
        string file = PathOf("chart.PNG");
        Assert.Equal("", Run(verb, Repository.Examples.Single(path => path.Contains("hay-barn", StringComparison.Ordinal)), file).Error);
        PngReading png = new(File.ReadAllBytes(file));
        Assert.Equal(1440, png.Width);
        Assert.InRange(png.Height, 900, 2000);
        Assert.Equal(255, png.Lightness(0, 0));
        int dark = 0;
        for (int x = 0; x < png.Width / 2; x++)
        {
            dark += Enumerable.Range(36, 48).Any(y => png.Lightness(x, y) < 60) ? 1 : 0;
        }

        Assert.InRange(dark, 200, 700);
        Assert.InRange(Enumerable.Range(png.Height / 3, png.Height / 3).Count(y => Enumerable.Range(0, png.Width).Any(x => png.Lightness(x, y) is > 60 and < 200)), 100, png.Height);
    }

    [Fact]
    public void Signs_that_the_font_of_the_png_lacks_are_told_of_and_kept_by_the_svg()
    {
        string plan = PathOf("plan.yaml");
        File.WriteAllText(plan, File.ReadAllText(Repository.Examples.Single(path => path.Contains("lambing", StringComparison.Ordinal))).Replace("plan: Lambing shed", "plan: שלום <b>", StringComparison.Ordinal));
        (int exit, _, string error) = Session.Run("curve", plan, "--quiet", "--chart", PathOf("c.png"));
        Assert.Equal(0, exit);
        Assert.Contains("shows \"?\" for signs of the names that its font lacks", error, StringComparison.Ordinal);
        Assert.Empty(Session.Run("curve", plan, "--quiet", "--chart", PathOf("c.svg")).Error);
        Assert.Contains(XDocument.Load(PathOf("c.svg")).Descendants(), element => element.Value == "שלום <b>, north field");
    }

    [Theory]
    [InlineData("chart.pdf")]
    [InlineData("chart")]
    [InlineData("")]
    public void Another_ending_is_wrong_input_and_nothing_is_computed(string name)
    {
        (int exit, string output, string error) = Session.Run("curve", Repository.Examples[0], "--chart", name);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains($"--chart: found \"{name}\"; expected a file whose name ends in .svg or .png", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none/chart.svg", "its folder is not there")]
    [InlineData("none/chart.png", "its folder is not there")]
    public void A_folder_that_takes_no_file_is_wrong_input(string name, string told)
    {
        (int exit, string output, string error) = Run("curve", Repository.Examples[0], PathOf(name));
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains(told, error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_whole()
    {
        File.WriteAllText(PathOf("chart.svg"), new string('x', 100_000));
        Assert.Equal(0, Run("curve", Repository.Examples[0], PathOf("chart.svg")).Exit);
        Assert.Equal("svg", XDocument.Load(PathOf("chart.svg")).Root!.Name.LocalName);
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    private static (int Exit, string Output, string Error) Run(string verb, string plan, string file) =>
        Session.Run([verb, plan, "--quiet", "--chart", file, .. verb == "day" ? new[] { "--date", "06-21" } : []]);

    private string PathOf(string name) => Path.Combine(_folder, name);
}

using System.Xml.Linq;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class DrawingTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Parts_draws_every_example_both_ways_and_still_prints_its_answer()
    {
        foreach (string example in Repository.Examples)
        {
            string plain = Session.Run("parts", example, "--quiet").Output;
            (_, string output, string error) = Session.Run("parts", example, "--quiet", "--diagram", PathOf("d.svg"), "--arrangement", PathOf("a.svg"));
            Assert.Equal(plain, output);
            Assert.Empty(error);
            foreach (string file in new[] { "d.svg", "a.svg" })
            {
                XElement root = XDocument.Load(PathOf(file)).Root!;
                Assert.Equal("svg", root.Name.LocalName);
                Assert.Contains("Joints in the order of connecting", root.Descendants().First(element => element.Name.LocalName == "desc").Value, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void What_parts_has_against_a_wiring_stands_on_both_drawings_and_all_its_pieces()
    {
        string example = Repository.Examples.Single(path => path.Contains("beekeeper", StringComparison.Ordinal));
        Session.Run("parts", example, "--quiet", "--diagram", PathOf("d.svg"), "--arrangement", PathOf("a.svg"));
        foreach (string file in new[] { "d.svg", "a.svg" })
        {
            string text = string.Join(' ', XDocument.Load(PathOf(file)).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value));
            Assert.Contains("ASK FIRST: settle this before you buy.", text, StringComparison.Ordinal);
            Assert.All(new[] { "run", "switch", "adapter", "branch connector", "old-180", "hive-100" }, piece => Assert.Contains(piece, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_drawing_as_png_has_its_size_and_its_leads()
    {
        string example = Repository.Examples.Single(path => path.Contains("lambing", StringComparison.Ordinal));
        Assert.Equal("", Session.Run("parts", example, "--quiet", "--diagram", PathOf("d.png"), "--arrangement", PathOf("a.png")).Error);
        foreach (string file in new[] { "d.png", "a.png" })
        {
            PngReading png = new(File.ReadAllBytes(PathOf(file)));
            Assert.Equal(1200, png.Width);
            Assert.InRange(png.Height, 1500, 3500);
            Assert.Equal(255, png.Lightness(0, 0));

            // Leads of plus are neither black nor white.
            Assert.InRange(Enumerable.Range(0, png.Height).Count(y => Enumerable.Range(0, png.Width / 4).Any(x => png.Lightness(x, y) is > 80 and < 160)), 300, png.Height);
        }
    }

    [Fact]
    public void Another_ending_is_wrong_input_and_a_folder_that_takes_no_file_too()
    {
        (int exit, string output, string error) = Session.Run("parts", Repository.Examples[0], "--diagram", PathOf("d.pdf"));
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("--diagram: found", error, StringComparison.Ordinal);
        (exit, output, error) = Session.Run("parts", Repository.Examples[0], "--arrangement", PathOf("none/a.svg"));
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("its folder is not there", error, StringComparison.Ordinal);
    }

    private string PathOf(string name) => Path.Combine(_folder, name);
}

using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class TiltVerbTests
{
    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name + ".yaml");

    [Fact]
    public void The_page_fits_80_columns_and_says_what_the_planned_facing_loses()
    {
        (int exit, string output, string error) = Session.Run("tilt", Example("sawmill-growing"), "--date", "03-20");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Best for the year is", output, StringComparison.Ordinal);
        Assert.Contains("November to January", output, StringComparison.Ordinal);
        Assert.Contains("15 days about March 20", output, StringComparison.Ordinal);
        Assert.Contains("more than\n  the best single tilt", output, StringComparison.Ordinal);
        Assert.Contains("built-in climate", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_has_its_spans_and_the_best_is_no_worse_than_the_plan()
    {
        (int exit, string output, _) = Session.Run("tilt", Example("milk-house-current"), "--json");
        Assert.Equal(0, exit);
        JsonElement tilt = JsonDocument.Parse(output).RootElement;
        Assert.Equal(2, tilt.GetProperty("spans").GetArrayLength());
        foreach (JsonElement span in tilt.GetProperty("spans").EnumerateArray())
        {
            double best = span.GetProperty("best").GetProperty("delivered_kwh").GetDouble();
            double own = span.GetProperty("as_planned").GetProperty("delivered_kwh").GetDouble();
            Assert.True(best >= own);
            Assert.Equal(100 * (1 - (own / best)), span.GetProperty("loss_percent").GetDouble(), 1e-6);
        }

        Assert.Equal(10, tilt.GetProperty("by_tilt").GetArrayLength());
        Assert.Matches("^\\d\\d-\\d\\d$", tilt.GetProperty("two_tilts").GetProperty("flat_from").GetString());
    }

    [Fact]
    public void A_plan_whose_panels_all_have_a_facing_of_their_own_has_nothing_to_turn()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.yaml");
        try
        {
            File.WriteAllText(path, File.ReadAllText(Example("lambing-shed")).Replace("    cells: 36\n", "    cells: 36\n    tilt: 30 deg\n", StringComparison.Ordinal));
            (int exit, string output, string error) = Session.Run("tilt", path);
            Assert.Equal(2, exit);
            Assert.Empty(output);
            Assert.Contains("nothing to turn together", error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }
}

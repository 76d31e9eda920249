using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class GrowVerbTests
{
    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name + ".yaml");

    [Fact]
    public void The_json_has_its_curves_and_what_each_panel_adds_adds_up()
    {
        (int exit, string output, string error) = Session.Run("grow", Example("sawmill-growing"), "--json");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        JsonElement grow = JsonDocument.Parse(output).RootElement;
        foreach (string name in new[] { "format", "plan", "verdict", "assumed", "cautions", "weather_source", "currency", "best", "kinds", "ideal" })
        {
            Assert.True(grow.TryGetProperty(name, out _), name);
        }

        Assert.Equal("EUR", grow.GetProperty("currency").GetString());
        Assert.Equal(3, grow.GetProperty("kinds").GetArrayLength());
        foreach (JsonElement kind in grow.GetProperty("kinds").EnumerateArray())
        {
            JsonElement[] points = [.. kind.GetProperty("points").EnumerateArray()];
            double gained = points.Sum(point => point.GetProperty("gain_kwh").GetDouble());
            Assert.Equal(points[^1].GetProperty("delivered_kwh").GetDouble() - points[0].GetProperty("delivered_kwh").GetDouble(), gained, 1e-6);
            Assert.All(points, point => Assert.Equal("go", point.GetProperty("verdict").GetString()));
        }

        Assert.Equal("saw-store", grow.GetProperty("ideal")[0].GetProperty("input").GetString());
    }

    [Fact]
    public void The_page_fits_80_columns_and_names_its_weather_for_every_example()
    {
        foreach (string example in Repository.Examples)
        {
            string output = Session.Run("grow", example).Output;
            Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.Contains("built-in climate", output, StringComparison.Ordinal);
            Assert.Contains("Which kind comes nearest", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Quiet_is_the_answer_alone_and_a_stop_says_so()
    {
        (int exit, string output, _) = Session.Run("grow", Example("sawmill-growing"), "--quiet");
        Assert.Equal(0, exit);
        Assert.StartsWith("GO: 2 more loft-215 are worth it", output, StringComparison.Ordinal);
        Assert.DoesNotContain("assumed", output, StringComparison.Ordinal);
        (int stopped, string told, _) = Session.Run("grow", Example("high-pasture-stop"), "--quiet");
        Assert.Equal(1, stopped);
        Assert.StartsWith("STOP: nothing may be connected", told, StringComparison.Ordinal);
    }

    [Fact]
    public void One_kind_so_many_and_another_share_are_heeded_and_written_as_comma_separated_text()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.csv");
        try
        {
            Assert.Equal(0, Session.Run("grow", Example("sawmill-growing"), "--of", "yard-120", "--most", "3", "--worth", "90%", "--csv", path, "--quiet").Exit);
            string[] lines = File.ReadAllLines(path);
            Assert.StartsWith("panel,more,verdict,delivered_kwh,", lines[0], StringComparison.Ordinal);
            Assert.Equal(5, lines.Length);
            Assert.All(lines, line => Assert.Equal(9, line.Split(',').Length));
            Assert.All(lines.Skip(1), line => Assert.StartsWith("yard-120,", line, StringComparison.Ordinal));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("--of", "loft-251", "did you mean \"loft-215\"?")]
    [InlineData("--most", "0", "a whole number from 1 to 100")]
    [InlineData("--worth", "0.25", "a share from 1 % to 100 %")]
    public void What_cannot_be_meant_is_wrong_input(string option, string value, string told)
    {
        (int exit, string output, string error) = Session.Run("grow", Example("sawmill-growing"), option, value);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains(told, error, StringComparison.Ordinal);
    }
}

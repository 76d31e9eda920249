using System.Globalization;
using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class StepOptionTests
{
    private static readonly string Shed = Path.Combine(Repository.Root, "examples", "lambing-shed.yaml");

    [Fact]
    public void Minutes_bring_what_hours_bring_and_every_one_is_told()
    {
        JsonElement Day(params string[] more)
        {
            (int exit, string output, _) = Session.Run(["day", Shed, "--date", "06-21", "--no-spread", "--json", .. more]);
            Assert.Equal(0, exit);
            return JsonDocument.Parse(output).RootElement;
        }

        JsonElement hours = Day(), minutes = Day("--step", "1");
        Assert.Equal(24, hours.GetProperty("steps").GetArrayLength());
        Assert.Equal(24 * 60, minutes.GetProperty("steps").GetArrayLength());
        double byHours = hours.GetProperty("delivered_kwh").GetDouble();
        Assert.Equal(byHours, minutes.GetProperty("delivered_kwh").GetDouble(), 0.02 * byHours);
        double[] ends = [.. minutes.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("ends_at_hour").GetDouble())];
        Assert.All(ends.Zip(ends.Skip(1)), pair => Assert.Equal(1 / 60.0, pair.Second - pair.First, 1e-6));
    }

    [Fact]
    public void The_page_of_a_day_of_minutes_has_a_row_an_hour()
    {
        string[] rows = [.. Session.Run("day", Shed, "--date", "06-21", "--step", "1").Output.Split('\n').Where(line => line.Contains(" °C ", StringComparison.Ordinal) && line.Contains(" W ", StringComparison.Ordinal))];
        Assert.InRange(rows.Length, 15, 20);
        Assert.All(rows, row => Assert.True(int.TryParse(row.Trim()[..2], NumberStyles.None, CultureInfo.InvariantCulture, out _), row));
    }

    [Theory]
    [InlineData("7")]
    [InlineData("0")]
    [InlineData("1.5")]
    [InlineData("x")]
    public void Steps_that_do_not_divide_an_hour_are_refused(string minutes)
    {
        (int exit, _, string error) = Session.Run("year", Shed, "--step", minutes);
        Assert.Equal(2, exit);
        Assert.Contains($"--step: found \"{minutes}\"; expected whole minutes that divide an hour", error, StringComparison.Ordinal);
    }
}

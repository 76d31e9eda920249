using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

public sealed class YearVerbTests
{
    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name + ".yaml");

    [Fact]
    public void The_json_has_the_contracts_names_and_its_ladder_closes()
    {
        (int exit, string output, string error) = Session.Run("year", Example("milk-house-current"), "--json");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        JsonElement year = JsonDocument.Parse(output).RootElement;
        foreach (string name in new[] { "format", "plan", "verdict", "assumed", "cautions", "delivered_kwh", "clipped_kwh", "losses", "months", "hours_limited", "battery" })
        {
            Assert.True(year.TryGetProperty(name, out _), name);
        }

        double level = 0;
        foreach (JsonElement step in year.GetProperty("losses").EnumerateArray())
        {
            double kWh = step.GetProperty("kwh").GetDouble();
            switch (step.GetProperty("stage").GetString())
            {
                case "label":
                    level = kWh;
                    break;
                case "into the unit":
                    // Ten steps of twelve digits each: the sum is off by their rounding.
                    Assert.Equal(level, kWh, 1e-8);
                    Assert.Equal(kWh, year.GetProperty("delivered_kwh").GetDouble(), 1e-9);
                    break;
                case "used or stored":
                    Assert.Equal(level, kWh, 1e-8);
                    break;
                default:
                    level -= kWh;
                    break;
            }
        }

        Assert.Equal(12, year.GetProperty("months").GetArrayLength());
        Assert.Equal(year.GetProperty("delivered_kwh").GetDouble(), year.GetProperty("months").EnumerateArray().Sum(month => month.GetProperty("delivered_kwh").GetDouble()), 1e-6);
    }

    [Fact]
    public void The_page_fits_80_columns_and_names_its_weather()
    {
        foreach (string example in Repository.Examples)
        {
            string output = Session.Run("year", example).Output;
            Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.Contains("built-in climate", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Quiet_is_one_sentence_and_a_stop_says_so()
    {
        (int exit, string output, _) = Session.Run("year", Example("high-pasture-stop"), "--quiet");
        Assert.Equal(1, exit);
        Assert.Contains("do not connect it", output, StringComparison.Ordinal);
        Assert.DoesNotContain("assumed", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_months_are_written_as_comma_separated_text()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.csv");
        try
        {
            Assert.Equal(0, Session.Run("year", Example("lambing-shed"), "--csv", path, "--quiet").Exit);
            string[] lines = File.ReadAllLines(path);
            Assert.Equal(13, lines.Length);
            Assert.StartsWith("month,delivered_kwh,", lines[0], StringComparison.Ordinal);
            Assert.All(lines, line => Assert.Equal(7, line.Split(',').Length));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_weather_file_that_is_not_there_is_wrong_input()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.yaml");
        try
        {
            File.WriteAllText(path, File.ReadAllText(Example("lambing-shed")).Replace("coldest: -14 C", "coldest: -14 C\n  weather: nowhere.epw", StringComparison.Ordinal));
            (int exit, string output, string error) = Session.Run("year", path);
            Assert.Equal(2, exit);
            Assert.Empty(output);
            Assert.Contains("no such file", error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_plan_without_a_place_has_no_year()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.yaml");
        try
        {
            Session.Run("quick", "2x", "22.9V 6.72A 18.9V 6.35A", "--onto", "60V 10A 400W", "--save", path);
            (int exit, _, string error) = Session.Run("year", path);
            Assert.Equal(2, exit);
            Assert.Contains("names no place", error, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_days_json_has_its_steps_and_they_add_up()
    {
        (int exit, string output, string error) = Session.Run("day", Example("milk-house-current"), "--date", "06-21", "--clear", "--json");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        JsonElement day = JsonDocument.Parse(output).RootElement;
        Assert.Equal(24, day.GetProperty("steps").GetArrayLength());
        double sum = day.GetProperty("steps").EnumerateArray().Sum(step => step.GetProperty("power_w").GetDouble());
        Assert.Equal(day.GetProperty("delivered_kwh").GetDouble(), sum / 1000, 1e-9);
        Assert.Contains("current", day.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("limited_by").GetString()));
        Assert.InRange(day.GetProperty("sunrise_hour").GetDouble(), 3, 5);
    }

    [Fact]
    public void A_days_page_fits_80_columns_for_every_example_and_season()
    {
        foreach (string example in Repository.Examples)
        {
            foreach (string date in new[] { "06-21", "12-21" })
            {
                string output = Session.Run("day", example, "--date", date).Output;
                Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
                Assert.Contains("Sunrise", output, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("13-40", "expected a day such as 06-21")]
    [InlineData("02-29", "the weather has no February 29")]
    public void A_day_that_is_not_there_is_wrong_input(string date, string told)
    {
        (int exit, string output, string error) = Session.Run("day", Example("lambing-shed"), "--date", date);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains(told, error, StringComparison.Ordinal);
    }
}

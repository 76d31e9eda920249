using System.Text;
using Arraywright.Climate;
using Arraywright.Files;
using Arraywright.Files.Weather;
using Arraywright.Page.Tests.Browser;
using Arraywright.Planning;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

public sealed class WeatherTests(Chromium chromium)
{
    private static LocatorAssertionsToContainTextOptions Patient { get; } = new() { Timeout = Visit.PatienceMs };

    [Fact]
    public async Task A_plan_whose_weather_file_is_not_here_gets_no_verdict_and_with_it_the_commands()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        string text = Repository.Example("lambing-shed").Replace("place:\n", "place:\n  weather: ../weather/shed.csv\n", StringComparison.Ordinal).Replace("  coldest: -14 C\n", "", StringComparison.Ordinal);
        Plan named = Assert.IsType<Plan>(PlanFile.Read(text, "plan").Plan);
        byte[] file = Encoding.UTF8.GetBytes(Colder(named));
        WeatherReading reading = WeatherFile.ReadBytes(file, "shed.csv", named.Place);
        Assert.True(DesignTemperatures.For(named with { WeatherYear = reading.Year }).ColdestAirC < DesignTemperatures.For(named).ColdestAirC);
        PlanResult result = Planner.Answer(named with { WeatherYear = reading.Year! }, PlannerOptions.Default, null, stop);

        await using Visit visit = await chromium.VisitAsync();
        await visit.OpenFileAsync("shed.yaml", Encoding.UTF8.GetBytes(text));
        await Assertions.Expect(visit.Verdict).ToContainTextAsync("\"shed.csv\", which this page has not been given", Patient);
        Assert.DoesNotContain("GO", await visit.Verdict.InnerTextAsync(), StringComparison.Ordinal);

        await visit.Page.Locator("#weather-file").SetInputFilesAsync(new FilePayload { Name = "shed.csv", MimeType = "text/csv", Buffer = file });
        await Assertions.Expect(visit.Verdict).Not.ToContainTextAsync("has not been given", Patient);
        await visit.AnsweredAsync();
        await visit.GoAsync("file");
        Assert.Equal(text, await visit.Page.Locator("#plan-text").InputValueAsync());
        Assert.Equal(ResultJson.Write(result, seconds: null), Encoding.UTF8.GetString(await visit.SavedAsync("#save-json")));

        // A visit later it is still on the device.
        await visit.Page.ReloadAsync();
        await visit.ReadyAsync();
        await visit.GoAsync("plan");
        await visit.AnsweredAsync();
        await Assertions.Expect(visit.Verdict).Not.ToContainTextAsync("has not been given", Patient);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Leave it out" }).ClickAsync();
        await visit.Page.Locator("#weather-file").SetInputFilesAsync(new FilePayload { Name = "broken.csv", MimeType = "text/csv", Buffer = "when,sun\nnever,much\n"u8.ToArray() });
        await Assertions.Expect(visit.Verdict).ToContainTextAsync("broken.csv:1", Patient);
    }

    /// <summary>The made year of the place, every hour so much colder that the answer must follow it.</summary>
    private static string Colder(Plan plan)
    {
        WeatherYear year = Assert.IsType<WeatherYear>(SyntheticYear.For(plan));
        return WeatherCsvWriter.Write(new WeatherYear(year.Place, [.. year.Steps.Select(step => step with { AirC = step.AirC - 20 })], year.StepH, year.UtcOffsetH, "made for a test", []));
    }
}

using System.Text;
using Arraywright.Files;
using Arraywright.Page.Tests.Browser;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Tests;

public sealed class ExampleTests(Chromium chromium)
{
    [Fact]
    public async Task The_page_answers_every_example_as_the_command_does_to_the_last_digit()
    {
        await using Visit visit = await chromium.VisitAsync();
        foreach (string name in Repository.Examples)
        {
            await visit.TakeExampleAsync(name);
            Plan plan = Assert.IsType<Plan>(PlanFile.Read(Repository.Example(name), "plan").Plan);
            PlanResult result = Planner.Answer(plan, PlannerOptions.Default, null, TestContext.Current.CancellationToken);

            Assert.Equal(Said.Plain(VerdictSentence.Of(result)), Said.Plain((await visit.Verdict.InnerTextAsync()).Replace("\n", ": ", StringComparison.Ordinal)));
            string shown = string.Concat(await visit.Page.Locator(".findings").AllInnerTextsAsync());
            foreach ((string figure, string limit) in Figures(result))
            {
                Assert.Contains(figure, shown, StringComparison.Ordinal);
                Assert.Contains(limit, shown, StringComparison.Ordinal);
            }

            await visit.GoAsync("file");
            Assert.Equal(ResultJson.Write(result, seconds: null), Encoding.UTF8.GetString(await visit.SavedAsync("#save-json")));
        }
    }

    [Fact]
    public async Task Every_example_opened_and_saved_is_the_same_file_byte_for_byte()
    {
        await using Visit visit = await chromium.VisitAsync();
        foreach (string name in Repository.Examples)
        {
            byte[] file = await File.ReadAllBytesAsync(Repository.ExamplePath(name), TestContext.Current.CancellationToken);
            await visit.GoAsync("start");
            await visit.OpenFileAsync($"{name}.yaml", file);
            await visit.Page.Locator("#f-panels-0-voc").WaitForAsync();
            await visit.GoAsync("file");
            Assert.Equal(file, await visit.SavedAsync("#save"));
        }
    }

    [Fact]
    public async Task What_the_command_wrote_is_written_the_same_after_an_edit_and_its_undoing_by_hand()
    {
        await using Visit visit = await chromium.VisitAsync();
        string written = PlanWriter.Write(PlanFile.Read(Repository.Example("lambing-shed"), "plan").Plan!);
        await visit.OpenFileAsync("shed.yaml", Encoding.UTF8.GetBytes(written));
        await visit.Page.Locator("#f-panels-0-count").FillAsync("3");
        await visit.Page.Locator("#f-panels-0-count").FillAsync("4");
        await visit.GoAsync("file");
        Assert.Equal(written, Encoding.UTF8.GetString(await visit.SavedAsync("#save")));
    }

    private static IEnumerable<(string Value, string Limit)> Figures(PlanResult result) =>
        result.Designs[0].Assignments.SelectMany(assignment => assignment.Findings).Select(finding => (FindingsTable.Value(finding), FindingsTable.Limit(finding)));
}

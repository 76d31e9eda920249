using Arraywright.Files;
using Arraywright.Page.Tests.Browser;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Tests;

public sealed class FirefoxTests
{
    private const string Answered = "document.querySelector('#answer') && document.querySelector('#answer').getAttribute('aria-busy') !== 'true' && document.querySelector('#answer .verdict') && document.querySelector('.picture svg') ? document.querySelector('#answer .verdict').innerText : ''";

    [Fact]
    public async Task In_firefox_the_page_answers_every_example_as_the_command_does()
    {
        Assert.SkipWhen(Firefox.Missing is not null, $"Firefox tests: {Firefox.Missing}");
        Assert.SkipWhen(!File.Exists(Path.Combine(Repository.PublishedPage, "index.html")), "Firefox tests: the page is not published: ./test does it");
        await using PageServer server = await PageServer.StartAsync(Repository.PublishedPage);
        await using Firefox firefox = await Firefox.StartAsync();
        await firefox.OpenAsync(server.Address);
        foreach (string name in Repository.Examples)
        {
            await firefox.UntilAsync("document.querySelector('main#main h1') ? 'there' : ''");
            await firefox.RunAsync("document.querySelector(\"nav a[href='#start']\").click()");
            await firefox.UntilAsync($"document.querySelector(\"[data-example='{name}']\") ? 'there' : ''");
            await firefox.RunAsync($"document.querySelector(\"[data-example='{name}']\").click()");
            Plan plan = Assert.IsType<Plan>(PlanFile.Read(Repository.Example(name), "plan").Plan);
            PlanResult result = Planner.Answer(plan, PlannerOptions.Default, null, TestContext.Current.CancellationToken);
            await firefox.UntilAsync($"document.querySelector('h1').innerText === {System.Text.Json.JsonSerializer.Serialize(plan.Name)} ? 'there' : ''");
            string verdict = await firefox.UntilAsync(Answered);
            Assert.Equal(Said.Plain(VerdictSentence.Of(result)), Said.Plain(verdict.Replace("\n", ": ", StringComparison.Ordinal)));
            string shown = await firefox.RunAsync("[...document.querySelectorAll('.findings')].map(list => list.innerText).join(' ')");
            Assert.All(result.Designs[0].Assignments.SelectMany(assignment => assignment.Findings), finding => Assert.Contains(FindingsTable.Value(finding), shown, StringComparison.Ordinal));
        }
    }
}

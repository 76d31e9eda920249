using System.Text.RegularExpressions;
using Arraywright.Cli.Tests;

namespace Arraywright.Host.Tests;

/// <summary>What the interface answers is what the command prints.</summary>
public sealed partial class AnswerTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private readonly RunningHost _host = shared.Host;

    public static TheoryData<string, string> Questions
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string example in Answers.Examples)
            {
                foreach (string verb in (string[])["plan", "check", "curve", "day", "year", "ask", "netlist"])
                {
                    all.Add(example, verb);
                }
            }

            all.Add("lambing-shed", "tilt");
            all.Add("sawmill-growing", "grow");
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public async Task An_answer_is_the_commands_byte_for_byte(string example, string verb)
    {
        (string query, string[] options) = verb switch
        {
            "day" => ("?date=06-21", ["--date", "06-21", "--json"]),
            "grow" => ("?most=2&worth=30%25", ["--most", "2", "--worth", "30%", "--json"]),
            "netlist" => ("", Array.Empty<string>()),
            _ => ("", ["--json"]),
        };
        (int exit, string printed, _) = Session.Run([verb, Answers.PathOf(example), .. options]);
        using HttpResponseMessage answer = await _host.AskAsync(verb + query, Answers.Plan(example));
        Assert.InRange(exit, 0, 1);
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal(verb == "netlist" ? "text/plain" : "application/json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal(WithoutSeconds(printed), WithoutSeconds(await Answers.TextAsync(answer)));
    }

    [Fact]
    public async Task A_quick_question_is_answered_as_the_command_does()
    {
        string printed = Session.Run("quick", "4x", "22.9V 6.72A 18.9V 6.35A", "--onto", "50V 10A 400W", "--json").Output;
        using HttpResponseMessage answer = await _host.AskAsync("quick", """{"panels": ["4x", "22.9V 6.72A 18.9V 6.35A"], "onto": ["50V 10A 400W"]}""", "application/json");
        Assert.Equal(WithoutSeconds(printed), WithoutSeconds(await Answers.TextAsync(answer)));
    }

    [Theory]
    [InlineData("check", "irradiance=800&air=12&wind=3", "--irradiance 800 --air 12 --wind 3")]
    [InlineData("curve", "cell=60&input=store-a", "--cell 60 --input store-a")]
    [InlineData("year", "no-spread=true&step=30", "--no-spread --step 30")]
    [InlineData("day", "date=2026-12-21&clear=true", "--date 2026-12-21 --clear")]
    public async Task Options_in_the_address_are_those_of_the_command(string verb, string query, string options)
    {
        string printed = Session.Run([verb, Answers.PathOf("lambing-shed"), .. options.Split(' '), "--json"]).Output;
        using HttpResponseMessage answer = await _host.AskAsync($"{verb}?{query}", Answers.Plan("lambing-shed"));
        Assert.NotEmpty(printed);
        Assert.Equal(printed, await Answers.TextAsync(answer));
    }

    [Fact]
    public async Task A_plan_may_be_JSON()
    {
        const string Plan = """{"plan": "Shed", "panels": [{"name": "a", "count": 2, "voc": "22.9 V", "isc": "6.72 A", "power": "120 W"}], "inputs": [{"name": "b", "max_voltage": "60 V", "wiring": "a + a"}]}""";
        using HttpResponseMessage answer = await _host.AskAsync("check", Plan, "application/json; charset=UTF-8");
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal("Shed", (await Answers.JsonAsync(answer)).GetProperty("plan").GetString());
    }

    [Fact]
    public async Task The_schema_is_the_commands()
    {
        using HttpResponseMessage answer = await _host.GetAsync("api/schema");
        Assert.Equal(Session.Run("schema").Output, await Answers.TextAsync(answer));
    }

    private static string WithoutSeconds(string json) => Seconds().Replace(json, "\"seconds\":0");

    [GeneratedRegex("\"seconds\": ?[0-9.eE+-]+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Seconds();
}

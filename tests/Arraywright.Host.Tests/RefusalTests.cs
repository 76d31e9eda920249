using System.Text;
using System.Text.Json;

namespace Arraywright.Host.Tests;

/// <summary>What is wrong is told, where it stands, and nothing else happens.</summary>
public sealed class RefusalTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private readonly RunningHost _host = shared.Host;

    public static TheoryData<string, string> HostilePlans => new()
    {
        { "nothing", "" },
        { "no mapping", "just words" },
        { "broken", "plan: [1, 2\ninputs: }" },
        { "tabs", "plan: a\n\tpanels: b" },
        { "deep lists", string.Concat(Enumerable.Repeat("[", 100_000)) },
        { "deep keys", string.Concat(Enumerable.Range(0, 400).Select(level => new string(' ', level) + "a:\n")) },
        { "many laughs", "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c,*c]" },
        { "merge", "base: &b {x: 1}\nplan:\n  <<: *b" },
        { "not a number", Answers.Small("a").Replace("22.9 V", ".nan V", StringComparison.Ordinal) },
        { "infinite", Answers.Small("a").Replace("22.9 V", "1e999 V", StringComparison.Ordinal) },
        { "huge", Answers.Small("a").Replace("22.9 V", new string('9', 5000) + " V", StringComparison.Ordinal) },
        { "below nought", Answers.Small("a").Replace("count: 2", "count: -2", StringComparison.Ordinal) },
        { "a million panels", Answers.Small("a").Replace("count: 2", "count: 1000000", StringComparison.Ordinal) },
        { "deep wiring", Answers.Small("a").Replace("wiring: shed-120 + shed-120", "wiring: " + new string('(', 5000) + "shed-120", StringComparison.Ordinal) },
        { "tag", "plan: !!python/object:os.system ls" },
        { "zero byte", "plan: a\0b" },
        { "long key", new string('k', 900_000) + ": 1" },
        { "two documents", Answers.Small("a") + "\n---\nplan: b" },
    };

    [Theory]
    [MemberData(nameof(HostilePlans))]
    public async Task A_hostile_plan_is_refused_with_the_place_of_each_fault(string name, string plan)
    {
        Assert.NotNull(name);
        using HttpResponseMessage answer = await _host.AskAsync("check", plan);
        Assert.Equal(422, (int)answer.StatusCode);
        JsonElement faults = (await Answers.ProblemAsync(answer)).GetProperty("faults");
        Assert.InRange(faults.GetArrayLength(), 1, 201);
        Assert.All(faults.EnumerateArray(), fault =>
        {
            Assert.Equal("plan", fault.GetProperty("file").GetString());
            Assert.True(fault.GetProperty("line").GetInt32() >= 1);
            Assert.True(fault.GetProperty("column").GetInt32() >= 1);
            Assert.InRange(fault.GetProperty("found").GetString()!.Length, 1, 400);
            Assert.NotEqual("", fault.GetProperty("expected").GetString());
        });
    }

    [Theory]
    [InlineData("/etc/passwd")]
    [InlineData("../../weather/some.epw")]
    [InlineData("-")]
    public async Task A_plan_that_is_sent_names_no_file_here(string path)
    {
        string plan = Answers.Plan("lambing-shed").Replace("coldest: -14 C", $"coldest: -14 C\n  weather: \"{path}\"", StringComparison.Ordinal);
        using HttpResponseMessage answer = await _host.AskAsync("year", plan);
        Assert.Equal(422, (int)answer.StatusCode);
        JsonElement fault = Assert.Single((await Answers.ProblemAsync(answer)).GetProperty("faults").EnumerateArray());
        Assert.Equal($"\"{path}\"", fault.GetProperty("found").GetString());
        Assert.Contains("names no file", fault.GetProperty("expected").GetString(), StringComparison.Ordinal);
        Assert.Equal(plan.Split('\n').ToList().FindIndex(line => line.Contains("weather:", StringComparison.Ordinal)) + 1, fault.GetProperty("line").GetInt32());
    }

    [Theory]
    [InlineData("check?irradience=800", "did you mean \"irradiance\"?")]
    [InlineData("check?irradiance=many", "irradiance: found \"many\"; expected a number from 0 to 1500")]
    [InlineData("check?irradiance=NaN", "irradiance: found \"NaN\"")]
    [InlineData("check?irradiance=1e9", "irradiance: found \"1e9\"")]
    [InlineData("check?cell=20&cell=30", "cell: found it 2 times")]
    [InlineData("check?cell=20&air=30", "exclude each other")]
    [InlineData("check?wind=2", "it needs air")]
    [InlineData("ask?cell=20", "takes none")]
    [InlineData("day", "date is missing")]
    [InlineData("day?date=13-40", "expected a day such as 06-21")]
    [InlineData("year?step=7", "divide an hour")]
    [InlineData("year?no-spread=yes", "expected true or false")]
    [InlineData("grow?most=0", "a whole number from 1 to 100")]
    [InlineData("grow?of=", "expected one of the plan")]
    [InlineData("check?json=true", "there is no option \"json\"")]
    public async Task A_wrong_option_is_told(string question, string told)
    {
        using HttpResponseMessage answer = await _host.AskAsync(question, Answers.Small("a"));
        Assert.Equal(400, (int)answer.StatusCode);
        Assert.Contains(told, (await Answers.ProblemAsync(answer)).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_wrong_option_is_told_at_once()
    {
        using HttpResponseMessage answer = await _host.AskAsync("check?irradiance=x&cell=y&nothing=1", Answers.Small("a"));
        Assert.Equal(3, (await Answers.ProblemAsync(answer)).GetProperty("detail").GetString()!.Split('\n').Length);
    }

    [Fact]
    public async Task What_a_sound_plan_lacks_is_told()
    {
        using HttpResponseMessage check = await _host.AskAsync("check", Answers.Small("a").Replace(", wiring: shed-120 + shed-120", "", StringComparison.Ordinal));
        Assert.Equal(422, (int)check.StatusCode);
        Assert.Contains("no input states a wiring", (await Answers.ProblemAsync(check)).GetProperty("detail").GetString(), StringComparison.Ordinal);
        using HttpResponseMessage year = await _host.AskAsync("year", Answers.Small("a"));
        Assert.Contains("the plan names no place", (await Answers.ProblemAsync(year)).GetProperty("detail").GetString(), StringComparison.Ordinal);
        using HttpResponseMessage curve = await _host.AskAsync("curve?input=store-b", Answers.Small("a"));
        Assert.Contains("did you mean \"store-a\"?", (await Answers.ProblemAsync(curve)).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"panels\": \"4x\", \"onto\": []}")]
    [InlineData("{\"panels\": [4], \"onto\": [\"50V\"]}")]
    [InlineData("{\"panels\": [\"4x 22.9V 6.72A\"], \"onto\": [\"50V\"], \"file\": \"x\"}")]
    [InlineData("{\"panels\": [\"4x 22.9V 6.72A\"], \"onto\": [\"50\"]}")]
    [InlineData("{\"panels\": [\"4x 22.9V 6.72A\"], \"panels\": [], \"onto\": [\"50V\"]}")]
    [InlineData("[[[[[[[[[[]]]]]]]]]]")]
    public async Task A_wrong_quick_question_is_told(string body)
    {
        using HttpResponseMessage answer = await _host.AskAsync("quick", body, "application/json");
        Assert.Equal(422, (int)answer.StatusCode);
        Assert.True((await Answers.ProblemAsync(answer)).GetProperty("faults").GetArrayLength() > 0);
    }

    [Theory]
    [InlineData("")]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    [InlineData("application/yaml; charset=utf-16")]
    public async Task Another_type_is_refused(string type)
    {
        using HttpResponseMessage answer = await _host.AskAsync("check", Encoding.UTF8.GetBytes(Answers.Small("a")), type);
        Assert.Equal(415, (int)answer.StatusCode);
        Assert.Contains("application/yaml", (await Answers.ProblemAsync(answer)).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_method_or_question_is_refused()
    {
        using HttpResponseMessage method = await _host.GetAsync("api/check");
        Assert.Equal(405, (int)method.StatusCode);
        Assert.Equal("POST", Assert.Single(method.Content.Headers.Allow));
        await Answers.ProblemAsync(method);
        using HttpResponseMessage none = await _host.AskAsync("weather", Answers.Small("a"));
        Assert.Equal(404, (int)none.StatusCode);
        await Answers.ProblemAsync(none);
    }
}

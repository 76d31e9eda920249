namespace Arraywright.Host.Tests;

/// <summary>Many at once: nobody is turned away, and each gets the answer to what they asked.</summary>
public sealed class LoadTests
{
    [Fact]
    public async Task Five_hundred_at_once_get_the_same_bytes()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        string plan = Answers.Plan("lambing-shed");
        string[] answers = await Task.WhenAll(Enumerable.Range(0, 500).Select(async _ =>
        {
            using HttpResponseMessage answer = await host.AskAsync("check", plan);
            Assert.Equal(200, (int)answer.StatusCode);
            return await Answers.TextAsync(answer);
        }));
        Assert.Single(answers.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Five_hundred_different_ones_at_once_each_get_their_own()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        await Task.WhenAll(Enumerable.Range(0, 500).Select(async i =>
        {
            using HttpResponseMessage answer = await host.AskAsync("check", Answers.Small($"shed {i}"));
            Assert.Equal(200, (int)answer.StatusCode);
            Assert.Equal($"shed {i}", (await Answers.JsonAsync(answer)).GetProperty("plan").GetString());
        }));
    }
}

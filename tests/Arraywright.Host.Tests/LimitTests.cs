using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Arraywright.Host.Api;
using Microsoft.Extensions.DependencyInjection;

namespace Arraywright.Host.Tests;

/// <summary>How much, how slowly, how long and how often one may ask.</summary>
public sealed class LimitTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_body_over_a_megabyte_is_refused(bool isChunked)
    {
        await using RunningHost host = await RunningHost.StartAsync();
        byte[] body = Encoding.UTF8.GetBytes("# " + new string('x', PlanBody.MostBytes));
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("api/check", UriKind.Relative)) { Content = new ByteArrayContent(body) };
        request.Content.Headers.TryAddWithoutValidation("Content-Type", "application/yaml");
        request.Headers.TransferEncodingChunked = isChunked;
        using HttpResponseMessage answer = await host.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(413, (int)answer.StatusCode);
        await Answers.ProblemAsync(answer);
    }

    [Fact]
    public async Task A_plan_of_just_a_megabyte_is_read()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        string plan = Answers.Small("a") + "\n#";
        using HttpResponseMessage answer = await host.AskAsync("check", plan + new string('x', PlanBody.MostBytes - Encoding.UTF8.GetByteCount(plan)));
        Assert.Equal(200, (int)answer.StatusCode);
    }

    [Fact]
    public async Task A_body_that_trickles_is_not_waited_for()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        using TcpClient client = new();
        await client.ConnectAsync(IPAddress.Loopback, host.Client.BaseAddress!.Port, TestContext.Current.CancellationToken);
        NetworkStream line = client.GetStream();
        await line.WriteAsync("POST /api/check HTTP/1.1\r\nHost: localhost\r\nContent-Type: text/yaml\r\nContent-Length: 100000\r\n\r\nplan:"u8.ToArray(), TestContext.Current.CancellationToken);
        using StreamReader reader = new(line);
        Assert.Equal("HTTP/1.1 408 Request Timeout", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_search_that_is_cut_short_gives_its_best_so_far_and_says_so_or_nothing()
    {
        // Too short nothing is found, too long all is: the limit is lengthened until something is cut short.
        for (double limitS = 0.05; limitS < 60; limitS *= 1.5)
        {
            await using RunningHost host = await RunningHost.StartAsync(new HostSettings { LimitS = limitS });
            using HttpResponseMessage answer = await host.AskAsync("plan", Answers.DifferentPanels(40));
            if (answer.StatusCode == HttpStatusCode.ServiceUnavailable)
            {
                Assert.Equal("it took too long", (await Answers.ProblemAsync(answer)).GetProperty("title").GetString());
                continue;
            }

            Assert.Equal(200, (int)answer.StatusCode);
            JsonElement search = (await Answers.JsonAsync(answer)).GetProperty("search");
            Assert.True(search.GetProperty("stopped_early").GetBoolean());
            Assert.False(search.GetProperty("proved").GetBoolean());
            return;
        }

        Assert.Fail("Nothing was ever cut short.");
    }

    [Fact]
    public async Task What_has_no_best_so_far_is_told_that_it_took_too_long()
    {
        await using RunningHost host = await RunningHost.StartAsync(new HostSettings { LimitS = 0.001 });
        using HttpResponseMessage answer = await host.AskAsync("year", Answers.Plan("lambing-shed"));
        Assert.Equal(503, (int)answer.StatusCode);
        Assert.Contains("0 s", (await Answers.ProblemAsync(answer)).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_too_many_wait_already_one_is_told_to_come_again()
    {
        await using RunningHost host = await RunningHost.StartAsync(new HostSettings { MostWaiting = 0, LimitS = 60 });
        Lanes lanes = host.App.Services.GetRequiredService<Lanes>();
        Question check = QuestionTable.All.Single(question => question.Verb == "check");
        List<IDisposable> turns = [];
        for (int i = 0; i < Environment.ProcessorCount; i++)
        {
            turns.Add(await lanes.EnterAsync(check, TestContext.Current.CancellationToken));
        }

        using (HttpResponseMessage answer = await host.AskAsync("check", Answers.Small("a")))
        {
            Assert.Equal(503, (int)answer.StatusCode);
            Assert.Equal(TimeSpan.FromSeconds(5), answer.Headers.RetryAfter?.Delta);
            await Answers.ProblemAsync(answer);
        }

        turns.ForEach(turn => turn.Dispose());
        using HttpResponseMessage again = await host.AskAsync("check", Answers.Small("a"));
        Assert.Equal(200, (int)again.StatusCode);
    }

    [Fact]
    public async Task One_client_that_asks_too_fast_is_told_when_to_come_again_and_others_are_not()
    {
        await using RunningHost host = await RunningHost.StartAsync(new HostSettings { IsBehindProxy = true, RatePerS = 1 });
        List<HttpStatusCode> statuses = [];
        for (int i = 0; i < 12; i++)
        {
            using HttpResponseMessage answer = await Forwarded(host, "203.0.113.7");
            statuses.Add(answer.StatusCode);
            if (answer.StatusCode == HttpStatusCode.TooManyRequests)
            {
                Assert.True(answer.Headers.RetryAfter?.Delta >= TimeSpan.FromSeconds(1));
                await Answers.ProblemAsync(answer);
            }
        }

        Assert.Equal(HttpStatusCode.OK, statuses[0]);
        Assert.Contains(HttpStatusCode.TooManyRequests, statuses);
        using HttpResponseMessage other = await Forwarded(host, "203.0.113.8");
        Assert.Equal(200, (int)other.StatusCode);
    }

    [Theory]
    [InlineData("127.0.0.1", "")]
    [InlineData("::1", "")]
    [InlineData("::ffff:127.0.0.1", "")]
    [InlineData("192.0.2.5", "192.0.2.5")]
    [InlineData("::ffff:192.0.2.5", "192.0.2.5")]
    [InlineData("2001:db8:1:2:3:4:5:6", "20010DB800010002")]
    public void A_client_is_an_address_or_a_network_of_the_sixth_version(string address, string client) =>
        Assert.Equal(client, ClientRate.Client(IPAddress.Parse(address)));

    private static Task<HttpResponseMessage> Forwarded(RunningHost host, string client)
    {
        HttpRequestMessage request = new(HttpMethod.Post, new Uri("api/check", UriKind.Relative)) { Content = new StringContent(Answers.Small("a"), Encoding.UTF8, "application/yaml") };
        request.Headers.Add("X-Forwarded-For", client);
        return host.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}

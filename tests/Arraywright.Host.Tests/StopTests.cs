using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text;

namespace Arraywright.Host.Tests;

/// <summary>Asked to end, it ends what is under way first.</summary>
public sealed class StopTests
{
    [Fact]
    public async Task A_question_under_way_is_answered_and_no_new_one_is_heard()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        Task<HttpResponseMessage> asked = host.AskAsync("plan", Answers.DifferentPanels(40));
        await Task.Delay(300, TestContext.Current.CancellationToken);
        Task stopped = host.App.StopAsync(TestContext.Current.CancellationToken);
        using HttpResponseMessage answer = await asked;
        Assert.Contains(answer.StatusCode, (HttpStatusCode[])[HttpStatusCode.OK, HttpStatusCode.ServiceUnavailable]);
        Assert.NotEmpty(await Answers.TextAsync(answer));
        await stopped;
        using HttpClient late = new() { BaseAddress = host.Client.BaseAddress };
        await Assert.ThrowsAsync<HttpRequestException>(() => late.GetAsync(new Uri("health", UriKind.Relative), TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("-TERM")]
    [InlineData("-INT")]
    public async Task A_signal_ends_the_process_with_the_answer_given_and_status_0(string signal)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signal to send to a process without a console.");
        using Process process = Start("--port=0");
        string greeting = (await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))!;
        Assert.StartsWith("Arraywright is at http://127.0.0.1:", greeting, StringComparison.Ordinal);
        using HttpClient client = new() { BaseAddress = new Uri(greeting.Split(' ')[3]), Timeout = TimeSpan.FromMinutes(2) };
        using StringContent plan = new(Answers.DifferentPanels(40), Encoding.UTF8, "application/yaml");
        Task<HttpResponseMessage> asked = client.PostAsync(new Uri("api/plan", UriKind.Relative), plan, TestContext.Current.CancellationToken);
        await Task.Delay(1000, TestContext.Current.CancellationToken);
        using (Process kill = Process.Start("kill", [signal, process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
        }

        using HttpResponseMessage answer = await asked;
        Assert.NotEmpty(await Answers.TextAsync(answer));
        Assert.True(process.WaitForExit(60_000));
        Assert.Equal(0, process.ExitCode);
    }

    [Theory]
    [InlineData("--port=many", "expected arguments as `arraywright serve` passes them")]
    [InlineData("--listen=192.0.2.1", "cannot listen on 192.0.2.1")]
    public async Task What_cannot_be_served_is_told_and_is_wrong_input(string argument, string told)
    {
        using Process process = Start(argument);
        string error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Contains(told, error, StringComparison.Ordinal);
        Assert.Equal(2, process.ExitCode);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_told()
    {
        await using RunningHost host = await RunningHost.StartAsync();
        using Process process = Start($"--port={host.Client.BaseAddress!.Port}");
        string error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Contains("is taken; expected a free one", error, StringComparison.Ordinal);
        Assert.Equal(2, process.ExitCode);
    }

    [Fact]
    public void The_greeting_warns_where_others_may_ask()
    {
        StringWriter own = new(), open = new();
        Greeting.Print(own, new HostSettings(), new Uri("http://127.0.0.1:8080/"));
        Greeting.Print(open, new HostSettings { Listen = IPAddress.Any }, new Uri("http://0.0.0.0:8080/"));
        Assert.Equal("Arraywright is at http://127.0.0.1:8080/ - Ctrl-C ends it.\n", own.ToString().ReplaceLineEndings("\n"));
        Assert.Contains("Nothing is encrypted", open.ToString(), StringComparison.Ordinal);
        Assert.All(open.ToString().Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    private static Process Start(params string[] args) => Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Arraywright.Host.dll"), .. args])
    {
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;
}

using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Arraywright.Files.Weather;

namespace Arraywright.Files.Tests.Weather;

/// <summary>Against a server on this machine that misbehaves; never the internet.</summary>
public sealed class PowerClientTests : IDisposable
{
    private static readonly string Good = MadeWeather.PowerJson();
    private static readonly PowerOptions Quick = new() { FirstPause = TimeSpan.FromMilliseconds(5), LongestPause = TimeSpan.FromSeconds(1.5), Timeout = TimeSpan.FromSeconds(20), MostTries = 3 };

    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Cache => Path.Combine(_folder, "cache");

    private async Task<PowerFetch> Fetch(PowerServer server, PowerOptions? options = null, CancellationToken cancellation = default)
    {
        using HttpClient http = new();
        return await new PowerClient(http, Cache, (options ?? Quick) with { Address = server.Address }, TimeProvider.System).FetchYearAsync(54.6, -3.1, 2021, cancellation);
    }

    [Fact]
    public async Task A_year_is_fetched_once_and_then_taken_from_disk()
    {
        using PowerServer server = new(PowerServer.Json(Good));
        PowerFetch first = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        PowerFetch second = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((false, true), (first.FromCache, second.FromCache));
        Assert.Equal(first.Reading!.Year!.Steps, second.Reading!.Year!.Steps);
        (Uri url, string? agent) = Assert.Single(server.Requests);
        Assert.Equal("?parameters=ALLSKY_SFC_SW_DWN,ALLSKY_SFC_SW_DNI,ALLSKY_SFC_SW_DIFF,T2M,WS10M&community=RE&latitude=54.600&longitude=-3.100&start=20210101&end=20211231&format=JSON&time-standard=UTC", url.Query);
        Assert.StartsWith("arraywright/", agent, StringComparison.Ordinal);
        Assert.Equal("power_54.600_-3.100_2021.json", Path.GetFileName(Assert.Single(Directory.GetFiles(Cache))));
    }

    public static TheoryData<string> Passing => ["500", "503", "429", "408", "broken off", "cut off", "stuck"];

    [Theory]
    [MemberData(nameof(Passing))]
    public async Task What_may_pass_is_waited_out(string trouble)
    {
        using PowerServer server = new(
            trouble switch
            {
                "broken off" => PowerServer.BrokenOff(Good, 100_000),
                "cut off" => PowerServer.CutOff(Good, 100_000),
                "stuck" => PowerServer.Stuck(),
                _ => PowerServer.Status(int.Parse(trouble)),
            },
            PowerServer.Json(Good));
        PowerFetch fetch = await Fetch(server, trouble == "stuck" ? Quick with { Timeout = TimeSpan.FromMilliseconds(700) } : Quick, TestContext.Current.CancellationToken);
        Assert.Null(fetch.Trouble);
        Assert.Equal(8760, fetch.Reading!.Year!.Steps.Length);
        Assert.Equal(2, server.Requests.Count);

        // A server that hangs does not see that its client gave up.
        Assert.True(trouble == "stuck" || server.MostAtOnce == 1);
    }

    [Theory]
    [InlineData(500, "the service answers 500", 3)]
    [InlineData(429, "asked too often (429)", 3)]
    [InlineData(404, "the service answers 404", 1)]
    [InlineData(422, "the service answers 422", 1)]
    public async Task What_does_not_pass_is_told_and_not_asked_for_ever(int status, string says, int requests)
    {
        using PowerServer server = new(PowerServer.Status(status));
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Contains(says, fetch.Trouble, StringComparison.Ordinal);
        Assert.Null(fetch.Reading);
        Assert.Equal(requests, server.Requests.Count);
        Assert.False(Directory.Exists(Cache));
    }

    [Fact]
    public async Task The_wait_that_the_service_asks_for_is_kept()
    {
        using PowerServer server = new(PowerServer.Status(429, "1"), PowerServer.Json(Good));
        long start = Stopwatch.GetTimestamp();
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.NotNull(fetch.Reading);
        Assert.True(Stopwatch.GetElapsedTime(start) > TimeSpan.FromSeconds(0.95));
    }

    /// <summary>Two waits of 1 s are each within the longest pause of 1.5 s; doubled they would not be.</summary>
    [Fact]
    public async Task A_wait_that_is_asked_for_again_and_again_is_not_doubled()
    {
        using PowerServer server = new(PowerServer.Status(503, "0"), PowerServer.Status(429, "1"), PowerServer.Status(429, "1"), PowerServer.Json(Good));
        PowerFetch fetch = await Fetch(server, Quick with { MostTries = 4 }, TestContext.Current.CancellationToken);
        Assert.Null(fetch.Trouble);
        Assert.Equal(4, server.Requests.Count);
    }

    [Fact]
    public async Task A_slow_answer_is_waited_for()
    {
        using PowerServer server = new(PowerServer.Slow(Good, 20));
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(8760, fetch.Reading!.Year!.Steps.Length);
        Assert.Single(server.Requests);
    }

    [Fact]
    public async Task A_longer_wait_ends_the_run_and_is_told()
    {
        using PowerServer server = new(PowerServer.Status(429, "3600"));
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("it asks to wait 3600 s", fetch.Trouble, StringComparison.Ordinal);
        Assert.Single(server.Requests);
    }

    [Fact]
    public async Task A_page_of_some_network_is_not_taken_for_weather()
    {
        using PowerServer server = new(PowerServer.Page("<html>Log in to the valley's network</html>"));
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("text/html, not JSON", fetch.Trouble, StringComparison.Ordinal);
        Assert.Single(server.Requests);
        Assert.False(Directory.Exists(Cache));
    }

    [Fact]
    public async Task An_answer_of_fill_values_is_refused_and_not_kept()
    {
        using PowerServer server = new(PowerServer.Json(MadeWeather.PowerJson(change: (_, _, _) => -999)));
        PowerFetch fetch = await Fetch(server, cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("cannot be used", fetch.Trouble, StringComparison.Ordinal);
        Assert.NotEmpty(fetch.Reading!.Faults);
        Assert.Single(server.Requests);
        Assert.False(Directory.Exists(Cache));
    }

    [Fact]
    public async Task A_spoilt_file_on_disk_is_fetched_anew()
    {
        Directory.CreateDirectory(Cache);
        string path = Path.Combine(Cache, "power_54.600_-3.100_2021.json");
        await File.WriteAllTextAsync(path, Good[..50_000], TestContext.Current.CancellationToken);
        using PowerServer server = new(PowerServer.Json(Good));
        Assert.False((await Fetch(server, cancellation: TestContext.Current.CancellationToken)).FromCache);
        Assert.Equal(Good, await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_told()
    {
        await File.WriteAllTextAsync(Cache, "a file in the way", TestContext.Current.CancellationToken);
        using PowerServer server = new(PowerServer.Json(Good));
        Assert.Contains("cannot be kept", (await Fetch(server, cancellation: TestContext.Current.CancellationToken)).Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Offline_is_called_offline()
    {
        int port;
        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        using HttpClient http = new();
        PowerClient client = new(http, Cache, Quick with { Address = new Uri($"http://127.0.0.1:{port}/api/") }, TimeProvider.System);
        PowerFetch fetch = await client.FetchYearAsync(54.6, -3.1, 2021, TestContext.Current.CancellationToken);
        Assert.Contains("seems to be offline", fetch.Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cancelling_leaves_nothing_behind()
    {
        using PowerServer server = new(PowerServer.Stuck());
        using CancellationTokenSource stop = new(TimeSpan.FromMilliseconds(200));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Fetch(server, cancellation: stop.Token));
        Assert.False(Directory.Exists(Cache));
    }
}

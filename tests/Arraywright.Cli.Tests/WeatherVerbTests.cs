using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using Arraywright.Files.Tests.Weather;

namespace Arraywright.Cli.Tests;

/// <summary>Against a server on this machine; never the internet.</summary>
public sealed class WeatherVerbTests : IDisposable
{
    private const string Plan = """
        plan: Lambing shed
        place: { latitude: 54.6, longitude: -3.1, elevation: 210 m }
        panels:
          - { name: shed-120, count: 2, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
        inputs:
          - { name: store-a, max_voltage: 60 V, max_current: 12 A, max_power: 400 W }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("arraywright-").FullName;

    public WeatherVerbTests() => File.WriteAllText(PathOf("shed.yaml"), Plan);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string PathOf(string name) => Path.Combine(_folder, name);

    private (int Exit, string Output, string Error) Weather(Uri service, params string[] more) =>
        Session.Run(["weather", PathOf("shed.yaml"), "--service", service.AbsoluteUri, "--cache", PathOf("cache"), .. more]);

    [Fact]
    public void It_writes_a_file_that_the_plan_can_name_and_says_which_line_to_add()
    {
        using PowerServer server = new(PowerServer.Json(MadeWeather.PowerJson(2020)), PowerServer.Json(MadeWeather.PowerJson(2021, change: (name, begins, value) => name == "T2M" && begins.DayOfYear == 30 ? -8.5 : value)));
        (int exit, string output, string error) = Weather(server.Address, "--years", "2020..2021");
        Assert.Empty(error);
        Assert.Equal(0, exit);
        Assert.Contains("coldest hour −8.5 °C", output, StringComparison.Ordinal);
        Assert.EndsWith("Add to the plan, under \"place:\":\n  weather: shed-weather.csv\n", output, StringComparison.Ordinal);

        File.WriteAllText(PathOf("shed.yaml"), Plan.Replace("210 m }", "210 m, weather: shed-weather.csv }", StringComparison.Ordinal));
        (exit, output, error) = Session.Run("year", PathOf("shed.yaml"), "--json");
        Assert.Empty(error);
        Assert.Equal(0, exit);
        Assert.Contains("a typical year of 2020 to 2021 from NASA POWER", output, StringComparison.Ordinal);

        // -8.5 °C less 7 K is -15.5, so -16 °C; the built-in climate says what it says, and the colder is taken: both are shown.
        output = Session.Run("plan", PathOf("shed.yaml"), "--json").Output;
        Assert.Contains("coldest hour −8.5 °C", output, StringComparison.Ordinal);
        Assert.Contains("7 K = −16 °C", output, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_it_wrote_as_JSON_and_in_one_line()
    {
        using PowerServer server = new(PowerServer.Json(MadeWeather.PowerJson(2020)));
        (int exit, string output, string error) = Weather(server.Address, "--years", "2020", "--json");
        Assert.Empty(error);
        Assert.Equal(0, exit);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(1, json.RootElement.GetProperty("format").GetInt32());
        Assert.Equal("Lambing shed", json.RootElement.GetProperty("plan").GetString());
        Assert.Equal(PathOf("shed-weather.csv"), json.RootElement.GetProperty("file").GetString());
        Assert.Equal("shed-weather.csv", json.RootElement.GetProperty("weather").GetString());
        Assert.Contains("the year 2020 from NASA POWER", json.RootElement.GetProperty("weather_source").GetString(), StringComparison.Ordinal);
        Assert.Equal(1, json.RootElement.GetProperty("step_h").GetDouble());

        Assert.Equal("weather: shed-weather.csv\n", Weather(server.Address, "--years", "2020", "--quiet").Output);
    }

    [Fact]
    public void A_run_that_broke_off_goes_on_where_it_stopped()
    {
        using PowerServer server = new(PowerServer.Json(MadeWeather.PowerJson(2020)), PowerServer.Status(404), PowerServer.Json(MadeWeather.PowerJson(2021)));
        (int exit, _, string error) = Weather(server.Address, "--years", "2020..2021");
        Assert.Equal(2, exit);
        Assert.Contains("no weather for 2021: the service answers 404", error, StringComparison.Ordinal);
        Assert.Contains("are kept", error, StringComparison.Ordinal);
        Assert.False(File.Exists(PathOf("shed-weather.csv")));

        Assert.Equal(0, Weather(server.Address, "--years", "2020..2021", "-o", PathOf("other.csv")).Exit);
        Assert.Equal(["20200101", "20210101", "20210101"], server.Requests.Select(request => request.Url.Query.Split("start=")[1][..8]));
        Assert.True(File.Exists(PathOf("other.csv")));
    }

    [Fact]
    public void Offline_it_says_so_and_what_happens_without_it()
    {
        int port;
        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        (int exit, string output, string error) = Weather(new Uri($"http://127.0.0.1:{port}/"), "--years", "2021");
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("seems to be offline", error, StringComparison.Ordinal);
        Assert.Contains("built-in climate", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--years", "1999..2005")]
    [InlineData("--years", "2010..2005")]
    [InlineData("--years", "2001..2999")]
    [InlineData("--years", "last")]
    [InlineData("--service", "ftp://somewhere/")]
    [InlineData("--service", "nowhere")]
    public void A_wrong_option_is_told_with_what_was_found(string option, string value)
    {
        (int exit, _, string error) = Session.Run("weather", PathOf("shed.yaml"), option, value);
        Assert.Equal(2, exit);
        Assert.StartsWith($"arraywright: {option}: found \"{value}\"; expected ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_a_place_has_no_weather()
    {
        File.WriteAllLines(PathOf("shed.yaml"), Plan.Split('\n').Where(line => !line.StartsWith("place", StringComparison.Ordinal)));
        (int exit, _, string error) = Session.Run("weather", PathOf("shed.yaml"));
        Assert.Equal(2, exit);
        Assert.Contains("the plan names no place", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_whose_weather_file_cannot_be_read_is_wrong_input_for_every_verb()
    {
        File.WriteAllText(PathOf("shed.yaml"), Plan.Replace("210 m }", "210 m, weather: none.csv }", StringComparison.Ordinal));
        (int exit, string output, string error) = Session.Run("plan", PathOf("shed.yaml"));
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains("found no such file", error, StringComparison.Ordinal);
    }

    /// <summary>The made-up sun has its middle at 12 h; a clock an hour ahead of the longitude's makes it early. All its days are alike warm: 10.5 °C less 7 K is 3 °C, rounded down.</summary>
    [Fact]
    public void A_doubt_about_the_file_and_all_that_is_known_of_the_cold_reach_the_result()
    {
        File.WriteAllText(PathOf("farm.csv"), MadeWeather.Csv(MadeWeather.CsvRows(), remarks: "# latitude: 54.6\n# longitude: 0\n# utc offset: 1 h\n# source: the farm's own mast\n"));
        File.WriteAllText(PathOf("shed.yaml"), Plan.Replace("-3.1, elevation: 210 m }", "0, elevation: 210 m, coldest: -12 C, weather: farm.csv }", StringComparison.Ordinal).Replace("max_power: 400 W", "max_power: 400 W, wiring: 2*shed-120", StringComparison.Ordinal));

        (int exit, string output, string error) = Session.Run("check", PathOf("shed.yaml"), "--json");

        Assert.Empty(error);
        Assert.Equal(0, exit);
        JsonElement root = JsonDocument.Parse(output).RootElement;
        JsonElement cold = root.GetProperty("cold");
        Assert.Equal((-12, -12, 3), (cold.GetProperty("air_c").GetDouble(), cold.GetProperty("plan_c").GetDouble(), cold.GetProperty("weather_file_c").GetDouble()));
        Assert.Equal("the farm's own mast (file farm.csv)", cold.GetProperty("weather_source").GetString());
        Assert.Equal(10.5, cold.GetProperty("daylight_air_c").GetDouble());
        Assert.InRange(cold.GetProperty("daylight_cell_c").GetDouble(), 10.5, 13);
        JsonElement assignment = root.GetProperty("designs")[0].GetProperty("assignments")[0];
        Assert.InRange(assignment.GetProperty("voc_weather_year_v").GetDouble(), 42, assignment.GetProperty("voc_cold_v").GetDouble());
        string[] assumed = [.. root.GetProperty("assumed").EnumerateArray().Select(one => $"{one.GetProperty("what")}: {one.GetProperty("value")} {one.GetProperty("why")}")];
        Assert.Contains(assumed, text => text.StartsWith("weather file: The sun of ", StringComparison.Ordinal) && text.Contains("minutes early (first in line ", StringComparison.Ordinal));
        Assert.Contains(assumed, text => text.StartsWith("coldest air temperature: −12.0 °C, as the plan says", StringComparison.Ordinal) && text.Contains("the farm's own mast", StringComparison.Ordinal));

        string page = Session.Run("check", PathOf("shed.yaml")).Output;
        Assert.Contains("highest in the weather file", page, StringComparison.Ordinal);
        Assert.Contains("minutes early", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_weather_file_the_voltage_of_its_year_is_that_of_the_made_year_and_says_so()
    {
        string output = Session.Run("plan", PathOf("shed.yaml"), "--json").Output;
        JsonElement root = JsonDocument.Parse(output).RootElement;
        JsonElement assignment = root.GetProperty("designs")[0].GetProperty("assignments")[0];
        Assert.InRange(assignment.GetProperty("voc_weather_year_v").GetDouble(), 0.95 * assignment.GetProperty("voc_stc_v").GetDouble(), assignment.GetProperty("voc_cold_v").GetDouble());
        Assert.Contains("built-in climate", assignment.GetProperty("voc_weather_year_source").GetString(), StringComparison.Ordinal);
        Assert.Contains("built-in climate", root.GetProperty("cold").GetProperty("daylight_source").GetString(), StringComparison.Ordinal);
        Assert.Contains("highest in a usual year", Session.Run("plan", PathOf("shed.yaml")).Output, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("cold").GetProperty("weather_file_c").ValueKind);
        Assert.Equal(JsonValueKind.Number, root.GetProperty("cold").GetProperty("climate_c").ValueKind);
    }
}

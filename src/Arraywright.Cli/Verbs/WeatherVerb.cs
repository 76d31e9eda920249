using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Arraywright.Climate;
using Arraywright.Files;
using Arraywright.Files.Weather;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>Real weather for the place of a plan.</summary>
internal static class WeatherVerb
{
    private const int FirstYear = 2001;
    private const int MostYears = 30;

    /// <summary>The hours of a year are whole some months after its end.</summary>
    private const int NewestYearsAgo = 2;

    private const int UsualYears = 5;

    public static Command Create(Host host)
    {
        Command command = new("weather", "Fetches hours of weather for the plan's place, and makes a typical year of them.");
        Option<string> output = new("--output", "-o") { Description = "the file to write; else beside the plan, its name with -weather.csv. One that is there is replaced", HelpName = "FILE" };
        Option<string> years = new("--years") { Description = $"the years to fetch, {FirstYear} at the earliest; else five, two years ago being the last", HelpName = "A..B" };
        Option<string> cache = new("--cache") { Description = "the folder that keeps what was fetched", HelpName = "FOLDER" };
        Option<string> service = new("--service") { Description = "another address of the service", HelpName = "URL" };
        command.Add(output);
        command.Add(years);
        command.Add(cache);
        command.Add(service);
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse =>
        {
            host.WatchForInterrupt();
            string planPath = options.Path(parse);
            return Work.With(host, PlanFile.Load(planPath), plan =>
            {
                if (plan.Place is not { } place)
                {
                    host.Error.WriteLine($"arraywright: {planPath}: the plan names no place; expected \"place:\" with a latitude and a longitude");
                    return ExitCode.WrongInput;
                }

                if (Years(parse.GetValue(years), host) is not { } range || Address(parse.GetValue(service), host) is not { } address)
                {
                    return ExitCode.WrongInput;
                }

                Manners manners = options.Manners(parse);
                return Fetched(host, manners, place, range, address, parse.GetValue(cache) ?? UsualCache()) is { } weather
                    ? Save(host, manners, plan, weather, planPath, parse.GetValue(output) ?? UsualOutput(planPath))
                    : ExitCode.WrongInput;
            });
        });
        return command;
    }

    /// <summary>The typical year; null, with the reasons told, when a year did not come.</summary>
    private static WeatherYear? Fetched(Host host, Manners manners, Place place, (int First, int Last) range, Uri address, string cacheFolder)
    {
        using HttpClient http = new() { Timeout = Timeout.InfiniteTimeSpan };
        PowerClient client = new(http, cacheFolder, new PowerOptions { Address = address }, TimeProvider.System);
        (ImmutableArray<WeatherYear> fetched, _) = Work.UnderBar(host, manners, (bar, stop) => FetchAsync(host, client, place, range, bar, stop).GetAwaiter().GetResult());
        string which = range.First == range.Last ? $"the year {range.First}" : $"a typical year of {range.First} to {range.Last}";
        return fetched.IsEmpty ? null : TypicalYear.Of(fetched, $"{which} from NASA POWER: sun from satellites on a grid of 1 degree, air from a weather model on one of half a degree");
    }

    /// <summary>All years; none when one did not come.</summary>
    private static async Task<ImmutableArray<WeatherYear>> FetchAsync(Host host, PowerClient client, Place place, (int First, int Last) range, IProgress<double> bar, CancellationToken stop)
    {
        int count = range.Last - range.First + 1;
        var years = ImmutableArray.CreateBuilder<WeatherYear>(count);
        for (int year = range.First; year <= range.Last; year++)
        {
            bar.Report((double)(year - range.First) / count);
            PowerFetch fetch = await client.FetchYearAsync(place.LatitudeDeg, place.LongitudeDeg, year, stop).ConfigureAwait(false);
            if (fetch.Reading?.Year is not { } weather)
            {
                host.Error.WriteLine($"arraywright: no weather for {year}: {fetch.Trouble}");
                host.Error.WriteLine(years.Count == 0
                    ? "Without it, a plan is reckoned with the built-in climate."
                    : $"The {years.Count} years before it are kept: the same command goes on from there.");
                return [];
            }

            years.Add(weather);
        }

        return years.MoveToImmutable();
    }

    private static int Save(Host host, Manners manners, Plan plan, WeatherYear weather, string planPath, string path)
    {
        int saved = Work.Save(host, path, WeatherCsvWriter.Write(weather), replace: true);
        if (saved == ExitCode.Done)
        {
            string fromPlan = Path.GetRelativePath(Folder(planPath), path).Replace('\\', '/');
            CultureInfo plain = CultureInfo.InvariantCulture;
            host.Print(manners.Json ? WeatherJson.Write(plan, weather, path, fromPlan)
                : manners.Quiet ? $"weather: {fromPlan}\n"
                : string.Create(plain, $"Wrote {path}: {weather.GlobalKWhPerM2:0} kWh/m² a year on the flat, coldest hour {Figures.Number(weather.ColdestAirC, 1)} °C.\nAdd to the plan, under \"place:\":\n  weather: {fromPlan}\n"));
        }

        return saved;
    }

    private static (int First, int Last)? Years(string? text, Host host)
    {
        int newest = TimeProvider.System.GetLocalNow().Year - 1;
        if (text is null)
        {
            int last = newest + 1 - NewestYearsAgo;
            return (last - UsualYears + 1, last);
        }

        string[] ends = text.Split("..");
        if (ends.Length <= 2 && Year(ends[0], out int first) && Year(ends[^1], out int end) && first >= FirstYear && end >= first && end <= newest && end - first < MostYears)
        {
            return (first, end);
        }

        host.Error.WriteLine($"arraywright: --years: found \"{text}\"; expected years from {FirstYear} to {newest}, at most {MostYears}, such as 2019..2023 or 2020");
        return null;
    }

    private static bool Year(string text, out int year) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out year);

    private static Uri? Address(string? text, Host host)
    {
        if (text is null)
        {
            return PowerOptions.Service;
        }

        if (Uri.TryCreate(text, UriKind.Absolute, out Uri? address) && address.Scheme is "http" or "https")
        {
            return address;
        }

        host.Error.WriteLine($"arraywright: --service: found \"{text}\"; expected an address that begins with https://");
        return null;
    }

    private static string Folder(string planPath) => planPath == "-" ? "." : Path.GetDirectoryName(Path.GetFullPath(planPath)) ?? ".";

    private static string UsualOutput(string planPath) =>
        planPath == "-" ? "weather.csv" : Path.Combine(Path.GetDirectoryName(planPath) ?? "", Path.GetFileNameWithoutExtension(planPath) + "-weather.csv");

    private static string UsualCache() => Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "arraywright", "weather");
}

using System.Globalization;
using System.Net;
using System.Net.Http.Headers;

namespace Arraywright.Files.Weather;

/// <summary>One year fetched, or why not.</summary>
/// <param name="Year">The year.</param>
/// <param name="Reading">The weather or its faults; null when nothing came.</param>
/// <param name="FromCache">Whether it was on disk already.</param>
/// <param name="Trouble">Why nothing came, as a sentence; null when something did.</param>
public sealed record PowerFetch(int Year, WeatherReading? Reading, bool FromCache, string? Trouble);

/// <summary>Fetches hours of weather from the open service NASA POWER, a year at a time, and keeps each year on disk.</summary>
/// <remarks>
/// One request at a time, a pause between them; a refusal for too many requests or a failure of the service is waited out, Retry-After honoured. What was
/// fetched is never fetched again, so that a broken-off run goes on where it stopped. An answer is kept only when it is a whole sound year.
/// </remarks>
/// <param name="http">The connection; the caller's, and not disposed of.</param>
/// <param name="cacheFolder">Where years are kept; made when missing.</param>
/// <param name="options">How to ask.</param>
/// <param name="clock">The clock for pauses.</param>
public sealed class PowerClient(HttpClient http, string cacheFolder, PowerOptions options, TimeProvider clock)
{
    /// <summary>Largest answer taken, bytes; a year has about one megabyte.</summary>
    private const int MostBytes = 32 << 20;

    private bool _hasAsked;

    /// <summary>Fetches one year of a place.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing half is left on disk.</exception>
    public async Task<PowerFetch> FetchYearAsync(double latitudeDeg, double longitudeDeg, int year, CancellationToken cancellation)
    {
        string path = CachePath(latitudeDeg, longitudeDeg, year);
        if (Kept(path) is { } kept)
        {
            return new PowerFetch(year, kept, FromCache: true, null);
        }

        TimeSpan pause = options.FirstPause;
        for (int attempt = 1; ; attempt++)
        {
            if (_hasAsked)
            {
                await Task.Delay(pause, clock, cancellation).ConfigureAwait(false);
            }

            _hasAsked = true;
            Answer answer = await AskAsync(Address(latitudeDeg, longitudeDeg, year), cancellation).ConfigureAwait(false);
            if (answer.Body is { } body)
            {
                WeatherReading reading = NasaPowerReader.ReadHourly(body, Path.GetFileName(path));
                if (reading.Year is not null)
                {
                    return Keep(path, body, cancellation) is { } refused ? Failed(refused) : new PowerFetch(year, reading, FromCache: false, null);
                }

                if (answer.IsWhole)
                {
                    return new PowerFetch(year, reading, FromCache: false, $"the service's answer for {year} cannot be used: {reading.Faults[0]}");
                }
            }

            string trouble = answer.Trouble ?? "the answer was cut off";
            if (answer.WaitFor > options.LongestPause)
            {
                return Failed($"{trouble}; it asks to wait {answer.WaitFor.Value.TotalSeconds:0} s: try again later, what was fetched is kept");
            }

            if (!answer.MayPass || attempt >= options.MostTries)
            {
                return Failed(trouble);
            }

            TimeSpan doubled = options.FirstPause * (1 << (attempt - 1));
            pause = answer.WaitFor > doubled ? answer.WaitFor.Value : doubled;
        }

        PowerFetch Failed(string trouble) => new(year, null, FromCache: false, trouble);
    }

    /// <summary>Where a year is kept: places within a thousandth of a degree share a file.</summary>
    internal string CachePath(double latitudeDeg, double longitudeDeg, int year) =>
        Path.Combine(cacheFolder, string.Create(CultureInfo.InvariantCulture, $"power_{latitudeDeg:0.000}_{longitudeDeg:0.000}_{year}.json"));

    /// <summary>A year that was kept; null where there is none, or it cannot be read or used: then it is fetched anew.</summary>
    private static WeatherReading? Kept(string path)
    {
        try
        {
            return File.Exists(path) && NasaPowerReader.ReadHourly(File.ReadAllBytes(path), Path.GetFileName(path)) is { Year: not null } sound ? sound : null;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private string? Keep(string path, byte[] body, CancellationToken cancellation)
    {
        try
        {
            Directory.CreateDirectory(cacheFolder);
            AtomicFile.Write(path, body, replace: true, cancellation);
            return null;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return $"what was fetched cannot be kept in {cacheFolder}: {refused.Message}";
        }
    }

    private Uri Address(double latitudeDeg, double longitudeDeg, int year) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"{options.Address}?parameters={NasaPowerReader.HourlyParameters}&community=RE&latitude={latitudeDeg:0.000}&longitude={longitudeDeg:0.000}&start={year}0101&end={year}1231&format=JSON&time-standard=UTC"));

    private async Task<Answer> AskAsync(Uri address, CancellationToken cancellation)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, address);
        request.Headers.UserAgent.Add(new ProductInfoHeaderValue("arraywright", typeof(PowerClient).Assembly.GetName().Version?.ToString(3)));
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        using CancellationTokenSource patience = new(options.Timeout, clock);
        using var both = CancellationTokenSource.CreateLinkedTokenSource(cancellation, patience.Token);
        try
        {
            using HttpResponseMessage response = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, both.Token).ConfigureAwait(false);
            return response.IsSuccessStatusCode ? await TakeAsync(response, both.Token).ConfigureAwait(false) : Refusal(response);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return new Answer { Trouble = $"no answer from {address.Host} within {options.Timeout.TotalSeconds:0.#} s", MayPass = true };
        }
        catch (HttpRequestException offline)
        {
            bool unknown = offline.HttpRequestError is HttpRequestError.NameResolutionError or HttpRequestError.ConnectionError;
            return new Answer
            {
                Trouble = unknown ? $"{address.Host} cannot be reached: this machine seems to be offline ({offline.Message})" : $"the connection to {address.Host} broke ({offline.Message})",
                MayPass = !unknown,
            };
        }
        catch (IOException broken)
        {
            return new Answer { Trouble = $"the answer of {address.Host} broke off ({broken.Message})", MayPass = true };
        }
    }

    private static async Task<Answer> TakeAsync(HttpResponseMessage response, CancellationToken cancellation)
    {
        string type = response.Content.Headers.ContentType?.MediaType ?? "no type";
        if (!type.Contains("json", StringComparison.OrdinalIgnoreCase))
        {
            return new Answer { Trouble = $"the answer is {type}, not JSON: a page in between, such as the log-in of a network, may have answered" };
        }

        Stream stream = await response.Content.ReadAsStreamAsync(cancellation).ConfigureAwait(false);
        await using (stream.ConfigureAwait(false))
        {
            using MemoryStream body = new();
            byte[] buffer = new byte[64 * 1024];
            int read;
            while ((read = await stream.ReadAsync(buffer, cancellation).ConfigureAwait(false)) > 0)
            {
                if (body.Length + read > MostBytes)
                {
                    return new Answer { Trouble = $"the answer is larger than {MostBytes >> 20} MiB: a year has about one" };
                }

                body.Write(buffer, 0, read);
            }

            // Without a length the end of the answer says nothing; JSON that does not close was cut off.
            byte[] whole = body.ToArray();
            return new Answer { Body = whole, IsWhole = whole.AsSpan().TrimEnd(" \r\n\t"u8).EndsWith("}"u8), MayPass = true };
        }
    }

    private Answer Refusal(HttpResponseMessage response)
    {
        RetryConditionHeaderValue? retry = response.Headers.RetryAfter;
        TimeSpan? wait = retry?.Delta ?? (retry?.Date is { } date ? date - clock.GetUtcNow() : null);
        int code = (int)response.StatusCode;
        return new Answer
        {
            Trouble = response.StatusCode == HttpStatusCode.TooManyRequests
                ? "the service says it is asked too often (429)"
                : $"the service answers {code} {response.ReasonPhrase}",
            MayPass = response.StatusCode is HttpStatusCode.TooManyRequests or HttpStatusCode.RequestTimeout || code >= 500,
            WaitFor = wait,
        };
    }

    /// <summary>What came of one request.</summary>
    private readonly record struct Answer
    {
        public byte[]? Body { get; init; }

        public bool IsWhole { get; init; }

        public string? Trouble { get; init; }

        /// <summary>Whether asking again may help.</summary>
        public bool MayPass { get; init; }

        public TimeSpan? WaitFor { get; init; }
    }
}

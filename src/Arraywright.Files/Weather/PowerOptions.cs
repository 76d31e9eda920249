namespace Arraywright.Files.Weather;

/// <summary>How the service is asked: patiently.</summary>
public sealed record PowerOptions
{
    /// <summary>The documented path of the open service for hours at a point.</summary>
    public static Uri Service { get; } = new("https://power.larc.nasa.gov/api/temporal/hourly/point");

    /// <summary>Where to ask.</summary>
    public Uri Address { get; init; } = Service;

    /// <summary>How often one year is asked for before giving up, at least 1.</summary>
    public int MostTries { get; init; } = 5;

    /// <summary>Pause before the second try; it doubles each time. Also the pause between years.</summary>
    public TimeSpan FirstPause { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>Longest pause: a service that asks for a longer one is left alone.</summary>
    public TimeSpan LongestPause { get; init; } = TimeSpan.FromMinutes(2);

    /// <summary>Patience with one answer.</summary>
    public TimeSpan Timeout { get; init; } = TimeSpan.FromMinutes(2);
}

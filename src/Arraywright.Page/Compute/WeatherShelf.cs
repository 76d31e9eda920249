using Arraywright.Files;
using Arraywright.Files.Weather;

namespace Arraywright.Page.Compute;

/// <summary>The weather files that the worker was given. Kept read, since reading 8,760 hours takes longer than answering.</summary>
internal sealed class WeatherShelf
{
    private static readonly char[] Separators = ['/', '\\'];

    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);
    private (string Name, Place Place, WeatherReading Reading)? _last;

    /// <summary>The name alone of a weather file: a page knows no folders.</summary>
    public static string NameOf(string path) => path[(path.LastIndexOfAny(Separators) + 1)..];

    /// <summary>Takes a file, in place of one of the same name.</summary>
    public void Put(string name, byte[] bytes)
    {
        _files[name] = bytes;
        _last = null;
    }

    /// <summary>The weather file that a plan names and that is not here; null where nothing is missing.</summary>
    public string? Lacking(Plan plan) => plan.Place?.Weather is { } path && NameOf(path) is var name && !_files.ContainsKey(name) ? name : null;

    /// <summary>The plan with the weather of the file that it names, which is here.</summary>
    /// <returns>The plan, or the faults that keep the file from being used. Never a plan that names weather and lacks it: its cold would be guessed too mild.</returns>
    public (Plan? Plan, IReadOnlyList<Fault> Faults) With(Plan plan)
    {
        if (plan.Place is not { Weather: { } path } place)
        {
            return (plan, []);
        }

        string name = NameOf(path);
        if (_last is not { } last || last.Name != name || last.Place != place)
        {
            _last = last = (name, place, WeatherFile.ReadBytes(_files[name], name, place));
        }

        return (last.Reading.Year is { } year ? plan with { WeatherYear = year } : null, last.Reading.Faults);
    }
}

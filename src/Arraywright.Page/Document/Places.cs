using System.Globalization;

namespace Arraywright.Page.Document;

/// <summary>A town to begin from; whoever stands elsewhere corrects it.</summary>
internal sealed record NamedPlace(string Name, string Country, double LatitudeDeg, double LongitudeDeg, double ElevationM);

/// <summary>The built-in list of towns, so that a place by name needs no signal.</summary>
internal static class Places
{
    public static IReadOnlyList<NamedPlace> All { get; } = [.. Resources.Text("places.csv").Split('\n').Where(line => line.Length > 0 && line[0] != '#').Select(Read)];

    /// <summary>The place whose name somebody typed; null where there is none.</summary>
    public static NamedPlace? Find(string typed) => All.FirstOrDefault(place => string.Equals(Label(place), typed.Trim(), StringComparison.OrdinalIgnoreCase))
        ?? All.FirstOrDefault(place => string.Equals(place.Name, typed.Trim(), StringComparison.OrdinalIgnoreCase));

    public static string Label(NamedPlace place) => $"{place.Name}, {place.Country}";

    private static NamedPlace Read(string line)
    {
        string[] cells = line.Split(',');
        return new NamedPlace(cells[0], cells[1], Number(cells[2]), Number(cells[3]), Number(cells[4]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

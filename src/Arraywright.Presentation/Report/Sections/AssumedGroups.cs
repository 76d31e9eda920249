using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What was assumed of several panels in the same words, told once: "k0, k1 and k2 tolerance: 3 %", its figures from the least to the most.</summary>
internal static partial class AssumedGroups
{
    /// <summary>The assumptions in their order, each group where its first stood.</summary>
    public static IEnumerable<Assumption> Of(IEnumerable<Assumption> assumed, IReadOnlyList<PanelStock> panels) => assumed
        .Select(one => (Panel: panels.FirstOrDefault(stock => one.What.StartsWith(stock.Panel.Name + " ", StringComparison.Ordinal))?.Panel.Name, One: one))
        .GroupBy(entry => entry.Panel is { } panel ? (entry.One.What[panel.Length..], entry.One.Value, Number().Replace(entry.One.Why, "#")) : (entry.One.What, entry.One.Value, entry.One.Why))
        .Select(alike => alike.First().Panel is null ? alike.First().One : new Assumption(
            Named([.. alike.Select(entry => entry.Panel!)], panels) + alike.Key.Item1,
            alike.First().One.Value,
            Merged([.. alike.Select(entry => entry.One.Why)])));

    private static string Named(string[] names, IReadOnlyList<PanelStock> panels) =>
        names.Length == 1 ? names[0]
        : names.Length == panels.Count ? $"all panels ({names[0]} to {names[^1]})"
        : $"{string.Join(", ", names[..^1])} and {names[^1]}";

    /// <summary>Texts that differ in figures only as one: where a figure differs, the least and the most of it.</summary>
    private static string Merged(string[] texts)
    {
        MatchCollection[] figures = [.. texts.Select(text => Number().Matches(text))];
        StringBuilder merged = new(texts[0]);
        for (int at = figures[0].Count - 1; at >= 0; at--)
        {
            string[] each = [.. figures.Select(one => one[at].Value).Distinct().OrderBy(figure => double.Parse(figure, CultureInfo.InvariantCulture))];
            if (each.Length > 1)
            {
                Match first = figures[0][at];
                merged.Remove(first.Index, first.Length).Insert(first.Index, $"{each[0]} to {each[^1]}");
            }
        }

        return merged.ToString();
    }

    [GeneratedRegex(@"\d+(\.\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();
}

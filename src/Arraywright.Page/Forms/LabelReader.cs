using System.Globalization;
using System.Text.RegularExpressions;

namespace Arraywright.Page.Forms;

/// <summary>Finds the figures of a panel's label in a text copied from a datasheet or read off by a phone.</summary>
/// <remarks>
/// Each figure counts by the name in front of it. Where no name is there, of two voltages the larger is Voc, of two currents the larger Isc,
/// as in a one-line question. What is read is put into fields for a person to compare, never used unseen.
/// </remarks>
internal static partial class LabelReader
{
    private static readonly (string Key, Regex Pattern)[] Named =
    [
        ("voc", Voc()), ("vmp", Vmp()), ("isc", Isc()), ("imp", Imp()), ("power", Power()), ("max_system_voltage", SystemVoltage()), ("max_series_fuse", Fuse()),
    ];

    /// <summary>What was read, as the plan file writes it, each key once.</summary>
    public static IReadOnlyList<Entry> Read(string text)
    {
        string rest = text.Length > 10_000 ? text[..10_000] : text;
        List<Entry> found = [];
        foreach ((string key, Regex pattern) in Named)
        {
            Match match = pattern.Match(rest);
            if (match.Success)
            {
                found.Add(new Entry(key, $"{Number(match.Groups["n"].Value)} {match.Groups["u"].Value.ToUpperInvariant()}"));
                rest = rest.Remove(match.Index, match.Length).Insert(match.Index, ";");
            }
        }

        AddPair(found, rest, "V", "voc", "vmp");
        AddPair(found, rest, "A", "isc", "imp");
        if (!found.Exists(entry => entry.Key == "power") && Bare().Matches(rest).FirstOrDefault(match => match.Groups["u"].Value is "W" or "w") is { } watts)
        {
            found.Add(new Entry("power", $"{Number(watts.Groups["n"].Value)} W"));
        }

        AddSlope(found, text, "voc_temperature", VocSlope());
        AddSlope(found, text, "isc_temperature", IscSlope());
        AddSlope(found, text, "power_temperature", PowerSlope());
        return found;
    }

    private static void AddPair(List<Entry> found, string text, string unit, string larger, string smaller)
    {
        if (found.Exists(entry => entry.Key == larger || entry.Key == smaller))
        {
            return;
        }

        string[] figures = [.. Bare().Matches(text).Where(match => string.Equals(match.Groups["u"].Value, unit, StringComparison.OrdinalIgnoreCase))
            .Select(match => Number(match.Groups["n"].Value)).OrderByDescending(figure => double.Parse(figure, CultureInfo.InvariantCulture))];
        if (figures.Length is 1 or 2)
        {
            found.Add(new Entry(larger, $"{figures[0]} {unit}"));
            if (figures.Length == 2)
            {
                found.Add(new Entry(smaller, $"{figures[1]} {unit}"));
            }
        }
    }

    private static void AddSlope(List<Entry> found, string text, string key, Regex pattern)
    {
        if (pattern.Match(text) is { Success: true } match)
        {
            found.Add(new Entry(key, $"{Number(match.Groups["n"].Value)} %/K"));
        }
    }

    private static string Number(string text) => text.Replace(',', '.').Replace('\u2212', '-').Replace('\u2013', '-').Replace(" ", "", StringComparison.Ordinal).TrimStart('+');

    private const RegexOptions How = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;
    private const int MostMs = 250;
    private const string Gap = @"[^0-9;\n]{0,40}?(?<n>\d{1,4}(?:[.,]\d{1,3})?)\s*";

    [GeneratedRegex(@"(?:V\s*_?oc|open[- ]circuit\s+voltage|Leerlaufspannung)\b" + Gap + "(?<u>V)", How, MostMs)]
    private static partial Regex Voc();

    [GeneratedRegex(@"(?:V\s*_?mpp?|U\s*_?mpp?|(?:voltage at (?:max\w*|nominal) power)|(?:optimum operating|max\w*\.? power|operating)\s+voltage|Nennspannung)\b" + Gap + "(?<u>V)", How, MostMs)]
    private static partial Regex Vmp();

    [GeneratedRegex(@"(?:I\s*_?sc|short[- ]circuit\s+current|Kurzschlussstrom)\b" + Gap + "(?<u>A)", How, MostMs)]
    private static partial Regex Isc();

    [GeneratedRegex(@"(?:I\s*_?mpp?|(?:current at (?:max\w*|nominal) power)|(?:optimum operating|max\w*\.? power|operating)\s+current|Nennstrom)\b" + Gap + "(?<u>A)", How, MostMs)]
    private static partial Regex Imp();

    [GeneratedRegex(@"(?:P\s*_?max|P\s*_?mpp?|(?:rated|nominal|max\w*|peak)\.?\s+power|Nennleistung)\b" + Gap + "(?<u>W)", How, MostMs)]
    private static partial Regex Power();

    [GeneratedRegex(@"(?:max\w*\.?\s+)?system\s*(?:voltage)?\b" + Gap + "(?<u>V)", How, MostMs)]
    private static partial Regex SystemVoltage();

    [GeneratedRegex(@"(?:max\w*\.?\s+)?(?:series\s+)?fuse(?:\s+rating)?\b" + Gap + "(?<u>A)", How, MostMs)]
    private static partial Regex Fuse();

    [GeneratedRegex(@"(?:Voc|open[- ]circuit\s+voltage)[^\n;]{0,40}?(?<n>[-\u2212\u2013]\s?0?[.,]\d{1,4})\s*%\s*/", How, MostMs)]
    private static partial Regex VocSlope();

    [GeneratedRegex(@"(?:Isc|short[- ]circuit\s+current)[^\n;]{0,40}?(?<n>\+?\s?0?[.,]\d{1,4})\s*%\s*/", How, MostMs)]
    private static partial Regex IscSlope();

    [GeneratedRegex(@"(?:Pmax|Pmpp?|power)[^\n;]{0,40}?(?<n>[-\u2212\u2013]\s?0?[.,]\d{1,4})\s*%\s*/", How, MostMs)]
    private static partial Regex PowerSlope();

    [GeneratedRegex(@"(?<![\w.,])(?<n>\d{1,4}(?:[.,]\d{1,3})?)\s*(?<u>[VAW])(?![\w/])", How, MostMs)]
    private static partial Regex Bare();

    /// <summary>A figure with the key it belongs to.</summary>
    internal readonly record struct Entry(string Key, string Value);
}

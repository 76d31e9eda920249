using System.Text.Json;
using System.Text.RegularExpressions;
using Arraywright.Page.Forms;
using Arraywright.Page.Shell;
using Arraywright.Page.Views;

namespace Arraywright.Page.Tests;

/// <summary>A language file has every word of the page, and no word that the page has lost.</summary>
public sealed partial class LanguageTests
{
    [Fact]
    public void German_has_every_word_of_the_page_and_no_other()
    {
        Dictionary<string, string> german = JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(Path.Combine(Page, "Words", "de.json")))!;
        HashSet<string> english = [.. Written(), .. FieldNames.All, .. RuleWords.Words, .. Screen.All.Select(screen => screen.Title)];
        Assert.DoesNotContain(english, word => !german.ContainsKey(word));
        Assert.DoesNotContain(german.Keys, word => !english.Contains(word));
        Assert.DoesNotContain(german, pair => string.IsNullOrWhiteSpace(pair.Value));
    }

    private static string Page => Path.Combine(Repository.Root, "src", "Arraywright.Page");

    /// <summary>Every text that stands in the source as one to be looked up.</summary>
    private static IEnumerable<string> Written() => Directory.EnumerateFiles(Page, "*.*", SearchOption.AllDirectories)
        .Where(path => Path.GetExtension(path) is ".razor" or ".cs")
        .SelectMany(path => Looked().Matches(File.ReadAllText(path)).SelectMany(call => Texts().Matches(call.Value)))
        .Select(text => Regex.Unescape(text.Groups["text"].Value))
        .Concat(Chosen)
        .Where(text => text.Length > 0);

    /// <summary>Words that reach the page by a value: options of the plan's own keys, levels, choices, what an answer's amount is of.</summary>
    private static readonly string[] Chosen =
    [
        "year", "day", "peak", "open rack", "close roof", "flat on ground", "none", "label", "manual", "maker", "iron phosphate", "nickel", "lead",
        "crystalline silicon", "mono perc", "multicrystalline", "topcon", "heterojunction", "back contact", "cadmium telluride", "cigs", "amorphous silicon",
        "go", "ask", "stop", "note", "STOP", "GO", "ASK FIRST", "a year", "power",
        "The year", "One day", "Tilt and direction", "More panels", "Parts to buy", "Report and order of connection", "Letter to the maker", "Circuit for a simulator",
        "How many", "or power (Pmax)", "Highest voltage", "Printed current", "Printed power",
    ];

    [GeneratedRegex("""\bT\((?>[^()"]|"(?:[^"\\]|\\.)*"|\([^()]*\))*\)""", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Looked();

    [GeneratedRegex(""" "(?<text>(?:[^"\\]|\\.)*)" """, RegexOptions.IgnorePatternWhitespace | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Texts();
}

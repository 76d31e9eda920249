using System.Text.RegularExpressions;

namespace Arraywright.Presentation.Report;

/// <summary>Finds names within texts.</summary>
public static class NamePattern
{
    /// <summary>A pattern of whole names, not of their like within longer ones; null for no name. Names are of letters, digits and hyphens.</summary>
    public static Regex? Of(IEnumerable<string> names)
    {
        string[] longestFirst = [.. names.OrderByDescending(name => name.Length).Select(Regex.Escape)];
        return longestFirst.Length == 0 ? null : new Regex($@"(?<![\p{{L}}\p{{Nd}}-])({string.Join('|', longestFirst)})(?![\p{{L}}\p{{Nd}}-])", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(5));
    }
}

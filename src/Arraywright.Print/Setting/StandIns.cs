using System.Text.RegularExpressions;
using Arraywright.Presentation.Report;

namespace Arraywright.Print.Setting;

/// <summary>What stands for names that the font cannot show, so that no two look alike: "[panel A]" for the first kind of panel. No name has brackets.</summary>
/// <param name="names">The names.</param>
/// <param name="isKnown">Whether the font has every sign of a text.</param>
internal sealed class StandIns(IEnumerable<ReportName> names, Func<string, bool> isKnown)
{
    private const char Cut = '…';

    private readonly Dictionary<string, string> _of = names
        .Where(name => !isKnown(name.Text))
        .ToDictionary(name => name.Text, name => $"[{name.Kind}{TiedFigures.Tie}{Letter(name.Number)}]", StringComparer.Ordinal);

    private readonly Regex? _names = NamePattern.Of(names.Select(name => name.Text).Where(name => !isKnown(name)));

    /// <summary>All of them, in the order of the plan.</summary>
    public IReadOnlyCollection<string> All => _of.Values;

    /// <summary>The text with every such name replaced.</summary>
    public string In(string text) => _names?.Replace(text, name => _of[name.Value]) ?? text;

    /// <summary>The same of a text in a drawing, where a name may be cut short or broken over lines: its beginning becomes the stand-in, what follows goes.</summary>
    public string InDrawing(string text)
    {
        string piece = text.TrimEnd(Cut, ' ');
        if (_names is null || isKnown(piece) || _of.ContainsKey(piece) || !_of.Keys.Any(name => name.Contains(piece, StringComparison.Ordinal)))
        {
            return In(text);
        }

        string[] begun = [.. _of.Keys.Where(name => name.StartsWith(piece, StringComparison.Ordinal))];
        return begun switch
        {
            [] => "",
            [var only] => _of[only],
            _ => text,
        };
    }

    /// <summary>A to Z, then AA: panels are numbered where they lie, so kinds have letters.</summary>
    private static string Letter(int number) =>
        number > 26 ? Letter((number - 1) / 26) + Letter(((number - 1) % 26) + 1) : ((char)('A' + number - 1)).ToString();
}

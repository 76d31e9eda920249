using Arraywright.Files.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Arraywright.Files.Yaml;

/// <summary>Says in plain words why a text is not YAML.</summary>
internal static class YamlTrouble
{
    public static void Add(YamlException trouble, string text, List<YamlNode> openBrackets, FaultList faults)
    {
        int line = Math.Max(1, (int)trouble.Start.Line), column = Math.Max(1, (int)trouble.Start.Column);
        string there = RestOfLine(text, line, column);
        (string expected, string hint) = Explain(trouble.Message, there, openBrackets);
        faults.Add(line, column, there.Length == 0 ? "the end of the line" : Quoted.Text(there), expected, hint);
    }

    /// <param name="last">What was read last; null at the beginning.</param>
    /// <param name="openBrackets">Brackets still open, the innermost last.</param>
    /// <param name="faults">Where the fault goes.</param>
    public static void AddWithoutPlace(ParsingEvent? last, List<YamlNode> openBrackets, FaultList faults)
    {
        if (openBrackets.Count > 0)
        {
            faults.Add(openBrackets[^1], "an opening bracket without its end", "a closing bracket, \"]\" or \"}\"", "close it before the next key");
            return;
        }

        int line = Math.Max(1, (int)(last?.End.Line ?? 1)), column = Math.Max(1, (int)(last?.End.Column ?? 1));
        faults.Add(line, column, "something that is not YAML from here on", "\"key: value\"", "put text that begins with a special character in quotes");
    }

    private static (string Expected, string Hint) Explain(string message, string there, List<YamlNode> openBrackets)
    {
        if (message.Contains("quoted scalar", StringComparison.Ordinal))
        {
            return message.Contains("unexpected", StringComparison.Ordinal) || message.Contains("indentation", StringComparison.Ordinal)
                ? ("text in quotes with a closing quotation mark", "close the quotes on the same line")
                : ("text in quotes", "a backslash means something special in double quotes; use single quotes");
        }

        if (openBrackets.Count > 0)
        {
            return ("values between brackets, with commas between them", $"the bracket opened on line {openBrackets[^1].Line} is not closed properly");
        }

        if (message.Contains("invalid mapping", StringComparison.Ordinal))
        {
            return ("one \"key: value\" a line", "put text that has a colon in quotes, and begin keys of one group in the same column");
        }

        if (message.Contains("sequence entries", StringComparison.Ordinal))
        {
            return ("list items that begin with \"- \", each on its own line in the same column", "begin the list on the line after its key");
        }

        if (message.Contains("'-' indicator", StringComparison.Ordinal))
        {
            return ("a key in the column of those above it, or \"- \" in the column of the list", "check how far the line is indented");
        }

        if (there.StartsWith('|') || there.StartsWith('>'))
        {
            return ("a value", $"put a value that begins with \"{there[0]}\" in quotes");
        }

        return message.Contains("cannot start", StringComparison.Ordinal)
            ? ("a value", "put text that begins with a special character in quotes")
            : ("\"key: value\"", "keys of one group begin in the same column, with a colon and a space after the key");
    }

    private static string RestOfLine(string text, int line, int column)
    {
        ReadOnlySpan<char> rest = text;
        for (int i = 1; i < line; i++)
        {
            int end = rest.IndexOf('\n');
            rest = end < 0 ? [] : rest[(end + 1)..];
        }

        int stop = rest.IndexOfAny('\r', '\n');
        rest = stop < 0 ? rest : rest[..stop];
        return column > rest.Length ? "" : rest[(column - 1)..].Trim().ToString();
    }
}

namespace Arraywright.Presentation.Terminal;

/// <summary>Breaks running text into lines.</summary>
public static class TextFlow
{
    private const int LongestUnit = 5;

    /// <summary>The text in lines of at most <paramref name="width"/> characters, broken at spaces; a longer word stands alone.</summary>
    public static List<string> Lines(string text, int width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in Words(text))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line);
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The words, a number kept with its unit: "49.96 V" is one.</summary>
    private static List<string> Words(string text)
    {
        List<string> words = [];
        foreach (string word in Printable(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            bool unit = word.Length <= LongestUnit && !char.IsAsciiDigit(word[0]);
            if (unit && words.Count > 0 && char.IsAsciiDigit(words[^1][^1]))
            {
                words[^1] = $"{words[^1]} {word}";
                continue;
            }

            words.Add(word);
        }

        return words;
    }

    /// <summary>Without control characters: a name in a plan must not steer the terminal. Line breaks become spaces.</summary>
    private static string Printable(string text) => text.AsSpan().ContainsAnyExceptInRange(' ', '~')
        ? string.Concat(text.Select(c => char.IsControl(c) || char.IsWhiteSpace(c) ? ' ' : c))
        : text;

    /// <summary>Writes the text with its first line after <paramref name="lead"/> and the others indented as far.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="lead">Indentation, or a mark such as "  * ".</param>
    /// <param name="text">The text.</param>
    /// <param name="width">Columns of the whole line.</param>
    /// <param name="paint">Colours a broken line; null for none.</param>
    public static void Write(TextWriter writer, string lead, string text, int width, Func<string, string>? paint = null)
    {
        string before = lead;
        foreach (string line in Lines(text, width - lead.Length))
        {
            writer.WriteLine(before + (paint is null ? line : paint(line)));
            before = new string(' ', lead.Length);
        }
    }
}

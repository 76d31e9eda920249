namespace Arraywright.Files.Text;

/// <summary>Looks for characters that no plan has, before the text is parsed.</summary>
internal static class TextCheck
{
    /// <summary>The text ready to parse; null, with faults, when it holds what a plan cannot hold.</summary>
    public static string? Clean(string text, FaultList faults)
    {
        string body = text.StartsWith('\uFEFF') ? text[1..] : text;
        int before = faults.Count;
        bool bracketed = BeginsWithBracket(body);
        int line = 1, lineStart = 0;
        bool indenting = true;
        for (int i = 0; i < body.Length; i++)
        {
            char c = body[i];
            if (c == '\n' || (c == '\r' && !(i + 1 < body.Length && body[i + 1] == '\n')))
            {
                line++;
                lineStart = i + 1;
                indenting = true;
            }
            else if (c == '\t' && indenting && !bracketed)
            {
                faults.Add(line, i - lineStart + 1, "a tab", "spaces", "indent with spaces: two for each level, never the Tab key's character");
                indenting = false;
            }
            else if (IsForeign(body, i))
            {
                faults.Add(line, i - lineStart + 1, $"the invisible character U+{(int)c:X4}", "plain text", "the file is binary or damaged; write it anew as plain text (UTF-8)");
                return null;
            }
            else if (c is not (' ' or '\t' or '\r'))
            {
                indenting = false;
            }
        }

        // JSON may be indented with tabs; YAML in brackets does not mind how it is indented.
        return faults.Count > before ? null : bracketed ? body.Replace('\t', ' ') : body;
    }

    private static bool BeginsWithBracket(string text)
    {
        foreach (char c in text)
        {
            if (c is not (' ' or '\t' or '\r' or '\n'))
            {
                return c is '{' or '[';
            }
        }

        return false;
    }

    private static bool IsForeign(string text, int i) => text[i] switch
    {
        '\t' or '\n' or '\r' => false,
        '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF' => true,
        char c when char.IsHighSurrogate(c) => i + 1 >= text.Length || !char.IsLowSurrogate(text[i + 1]),
        char c when char.IsLowSurrogate(c) => i == 0 || !char.IsHighSurrogate(text[i - 1]),
        char c => char.IsControl(c),
    };
}

using System.Globalization;
using System.Text;

namespace Arraywright.Files.Text;

/// <summary>What the user wrote, as a fault shows it.</summary>
internal static class Quoted
{
    private const int Longest = 60;

    /// <summary>Joins the parts of one sign, such as a family of faces, and is obeyed by no terminal.</summary>
    private const char Joiner = '\u200d';

    /// <summary>The text in double quotes, on one line, shortened between whole signs, with nothing in it that a terminal would obey.</summary>
    public static string Text(string text)
    {
        string kept = text.Length <= Longest ? text : text[..LastEnd(text)];
        StringBuilder shown = new("\"");
        foreach (Rune rune in kept.EnumerateRunes())
        {
            shown.Append((IsShown(rune) ? rune : Rune.ReplacementChar).ToString());
        }

        return shown.Append(kept.Length == text.Length ? "\"" : "…\"").ToString();
    }

    private static bool IsShown(Rune rune) =>
        rune.Value == Joiner || Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format);

    /// <summary>Where the last sign ends that wholly fits. A single sign longer than that, a letter under a heap of accents, is cut between its parts.</summary>
    private static int LastEnd(string text)
    {
        int end = 0;
        for (int next = 0; next < text.Length && next <= Longest; next += StringInfo.GetNextTextElementLength(text, next))
        {
            end = next;
        }

        return end > 0 ? end : Longest - (char.IsHighSurrogate(text[Longest - 1]) ? 1 : 0);
    }
}

using System.Globalization;
using System.Text;

namespace Arraywright.Files.Text;

/// <summary>What the user wrote, as a fault shows it.</summary>
internal static class Quoted
{
    private const int Longest = 60;

    /// <summary>The text in double quotes, on one line, shortened, with nothing in it that a terminal would obey.</summary>
    public static string Text(string text)
    {
        StringBuilder shown = new("\"");
        foreach (char letter in text.Length <= Longest ? text : text.AsSpan(0, Longest))
        {
            shown.Append(char.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate ? '\uFFFD' : letter);
        }

        return shown.Append(text.Length <= Longest ? "\"" : "…\"").ToString();
    }
}

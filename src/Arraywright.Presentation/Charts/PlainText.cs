using System.Text;

namespace Arraywright.Presentation.Charts;

/// <summary>Text as XML can hold it.</summary>
internal static class PlainText
{
    /// <summary>The text, its control characters and halves of characters replaced by the sign for "unreadable".</summary>
    public static string Clean(string text)
    {
        if (text.AsSpan().IndexOfAnyExceptInRange(' ', '~') < 0)
        {
            return text;
        }

        StringBuilder clean = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            bool isHeld = rune.Value >= ' ' && rune.Value is not (0x7f or 0xfffe or 0xffff);
            clean.Append((isHeld ? rune : Rune.ReplacementChar).ToString());
        }

        return clean.ToString();
    }
}

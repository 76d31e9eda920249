using System.Text;

namespace Arraywright.Presentation.Report;

/// <summary>Keeps a figure and its unit on one line, and "DC" with its volts.</summary>
public static class TiedFigures
{
    /// <summary>A space that no line is broken at.</summary>
    public const char Tie = '\u00a0';

    private static readonly HashSet<string> Units = new(["V", "A", "W", "Wh", "kWh", "%", "%/K", "°C", "K", "m", "mm²", "W/m²", "kWh/m²", "Ω", "AWG"], StringComparer.Ordinal);

    /// <summary>The text, each figure tied to the unit that follows it.</summary>
    public static string Of(string text)
    {
        StringBuilder tied = new(text);
        for (int space = text.IndexOf(' ', StringComparison.Ordinal); space >= 0; space = text.IndexOf(' ', space + 1))
        {
            string next = WordAfter(text, space);
            if (space > 0 && ((char.IsAsciiDigit(text[space - 1]) && Units.Contains(next)) || (text[space - 1] == 'V' && next == "DC")))
            {
                tied[space] = Tie;
            }
        }

        return tied.ToString();
    }

    private static string WordAfter(string text, int space)
    {
        int end = text.IndexOf(' ', space + 1);
        return text[(space + 1)..(end < 0 ? text.Length : end)].TrimEnd('.', ',', ';', ':', ')', ']');
    }
}

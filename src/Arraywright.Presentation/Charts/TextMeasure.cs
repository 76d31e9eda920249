using System.Globalization;
using System.Text;
using Arraywright.Presentation.Report;
using Arraywright.Presentation.Terminal;
using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>How wide text comes out, without a font at hand, and how it is cut to a width.</summary>
internal static class TextMeasure
{
    /// <summary>Sans-serif fonts in use run up to so much wider than the one whose widths are known here.</summary>
    private const double Widest = 1.18;
    private const double WidestBold = 1.3;

    /// <summary>Width in pixels, rather too large than too small. A character past Latin 1 is taken as square, but for the minus sign, which is as wide as a plus.</summary>
    public static double Width(string text, double fontSize, bool isBold)
    {
        PortableDocumentFontFamily family = StandardFonts.Helvetica;
        StringBuilder known = new(text.Length);
        int square = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (rune.Value == TiedFigures.Tie)
            {
                known.Append(' ');
            }
            else if (rune.Value <= 255)
            {
                known.Append((char)rune.Value);
            }
            else if (rune.Value == Figures.Minus)
            {
                known.Append('+');
            }
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.Format))
            {
                square++;
            }
        }

        (isBold ? family.BoldFont : family.RegularFont).Measure(known.ToString(), fontSize, out double width, out _);
        return (isBold ? WidestBold : Widest) * (width + (square * fontSize));
    }

    /// <summary>Breaks text into lines of at most a width: at spaces where it can, between a figure and its unit or within a word where it must; what does not fit the last line ends in "…".</summary>
    public static List<string> Wrap(string text, double widthPx, double fontSize, bool isBold, int mostLines)
    {
        List<string> lines = [];
        string[] words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        string rest = TiedFigures.Of(string.Join(' ', words));
        while (rest.Length > 0)
        {
            int fits = Fitting(rest, widthPx, fontSize, isBold);
            if (fits == rest.Length)
            {
                lines.Add(rest);
                break;
            }

            if (lines.Count == mostLines - 1)
            {
                lines.Add(rest[..Fitting(rest, widthPx - Width("…", fontSize, isBold), fontSize, isBold)].TrimEnd() + "…");
                break;
            }

            int space = rest.LastIndexOf(' ', fits);
            space = space > 0 ? space : rest.LastIndexOf(TiedFigures.Tie, fits);
            lines.Add(space > 0 ? rest[..space] : rest[..fits]);
            rest = rest[(space > 0 ? space : fits)..].TrimStart();
        }

        return [.. lines.Select(line => line.Replace(TiedFigures.Tie, ' '))];
    }

    /// <summary>How many characters of the beginning fit; whole signs only, and always at least one.</summary>
    private static int Fitting(string text, double widthPx, double fontSize, bool isBold)
    {
        int fits = 0;
        TextElementEnumerator signs = StringInfo.GetTextElementEnumerator(text);
        double usedPx = 0;
        while (signs.MoveNext())
        {
            usedPx += Width(signs.GetTextElement(), fontSize, isBold);
            if (usedPx > widthPx && fits > 0)
            {
                break;
            }

            fits = signs.ElementIndex + signs.GetTextElement().Length;
        }

        return fits;
    }
}

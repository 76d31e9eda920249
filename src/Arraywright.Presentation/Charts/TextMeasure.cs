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

    /// <summary>Widths of the characters of Latin 1 at a size of 1 px, the sign for "unreadable" in place of control characters: asked once, as texts are measured by the thousand.</summary>
    private static readonly double[] Regular = WidthsOf(StandardFonts.Helvetica.RegularFont), Bold = WidthsOf(StandardFonts.Helvetica.BoldFont);

    /// <summary>Width in pixels, rather too large than too small. A character past Latin 1 is taken as square, but for the minus sign, which is as wide as a plus.</summary>
    public static double Width(ReadOnlySpan<char> text, double fontSize, bool isBold)
    {
        double[] known = isBold ? Bold : Regular;
        double width = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += rune.Value == TiedFigures.Tie ? known[' ']
                : rune.Value < known.Length ? known[rune.Value]
                : rune.Value == Figures.Minus ? known['+']
                : Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.Format ? 0
                : 1;
        }

        return (isBold ? WidestBold : Widest) * width * fontSize;
    }

    private static double[] WidthsOf(PortableDocumentFont font)
    {
        double[] widths = new double[256];
        for (int c = 0; c < widths.Length; c++)
        {
            widths[c] = 1;
            if (!char.IsControl((char)c))
            {
                font.Measure(((char)c).ToString(), 1, out widths[c], out _);
            }
        }

        return widths;
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
        double usedPx = 0;
        for (int fits = 0; fits < text.Length;)
        {
            int sign = StringInfo.GetNextTextElementLength(text, fits);
            usedPx += Width(text.AsSpan(fits, sign), fontSize, isBold);
            if (usedPx > widthPx && fits > 0)
            {
                return fits;
            }

            fits += sign;
        }

        return text.Length;
    }
}

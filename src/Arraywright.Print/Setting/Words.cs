using System.Globalization;
using Arraywright.Presentation.Report;
using PdfSharp.Drawing;

namespace Arraywright.Print.Setting;

/// <summary>A piece of a line in one font.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Font">Its font.</param>
/// <param name="LeftPt">Where it begins, from the line's left end.</param>
internal readonly record struct Run(string Text, XFont Font, double LeftPt);

/// <summary>A line of text.</summary>
/// <param name="Runs">Its pieces from left to right.</param>
/// <param name="WidthPt">Its width.</param>
internal sealed record TextLine(IReadOnlyList<Run> Runs, double WidthPt);

/// <summary>Breaks text into lines: at spaces where it can, within a word where it must. A figure keeps its unit beside it.</summary>
internal sealed class Words(Letters letters)
{
    private static readonly char[] Breaks = [' ', '\t', '\n', '\r'];

    /// <summary>Lines of at most a width.</summary>
    /// <param name="widthPt">The width.</param>
    /// <param name="texts">Texts that follow each other, each in its font.</param>
    public List<TextLine> Lines(double widthPt, params ReadOnlySpan<(string Text, XFont Font)> texts)
    {
        List<TextLine> lines = [];
        List<(string Word, XFont Font)> line = [];
        double usedPt = 0;
        foreach ((string text, XFont font) in texts)
        {
            foreach (string word in Split(letters.Known(text)))
            {
                double spacePt = line.Count == 0 ? 0 : letters.WidthPt(font, " ");
                double wordPt = letters.WidthPt(font, word);
                if (usedPt + spacePt + wordPt <= widthPt)
                {
                    usedPt += spacePt + wordPt;
                    line.Add((word, font));
                    continue;
                }

                if (line.Count > 0)
                {
                    lines.Add(Set(line));
                    line.Clear();
                }

                string rest = word;
                while (letters.WidthPt(font, rest) > widthPt && Fitting(rest, font, widthPt) is var fits && fits < rest.Length)
                {
                    lines.Add(Set([(rest[..fits], font)]));
                    rest = rest[fits..];
                }

                line.Add((rest, font));
                usedPt = letters.WidthPt(font, rest);
            }
        }

        if (line.Count > 0)
        {
            lines.Add(Set(line));
        }

        return lines;
    }

    /// <summary>Width of the longest word, pt; 0 for none.</summary>
    public double LongestPt(string text, XFont font) => Split(letters.Known(text)).Select(word => letters.WidthPt(font, word)).DefaultIfEmpty(0).Max();

    /// <summary>Words, a figure and its unit as one.</summary>
    private static IEnumerable<string> Split(string text) =>
        TiedFigures.Of(text).Split(Breaks, StringSplitOptions.RemoveEmptyEntries).Select(word => word.Replace(TiedFigures.Tie, ' '));

    /// <summary>Neighbours in the same font become one piece, so that they read as one text.</summary>
    private TextLine Set(IReadOnlyList<(string Word, XFont Font)> line)
    {
        List<Run> runs = [];
        double leftPt = 0;
        for (int first = 0, next; first < line.Count; first = next)
        {
            XFont font = line[first].Font;
            for (next = first + 1; next < line.Count && line[next].Font == font;)
            {
                next++;
            }

            string text = string.Join(' ', Enumerable.Range(first, next - first).Select(index => line[index].Word)) + (next < line.Count ? " " : "");
            runs.Add(new Run(text, font, leftPt));
            leftPt += letters.WidthPt(font, text);
        }

        return new TextLine(runs, leftPt);
    }

    /// <summary>How much of a word fits, at least one sign.</summary>
    private int Fitting(string word, XFont font, double widthPt)
    {
        int fits = 0;
        foreach (int end in Ends(word))
        {
            if (fits > 0 && letters.WidthPt(font, word[..end]) > widthPt)
            {
                break;
            }

            fits = end;
        }

        return fits;
    }

    /// <summary>Where a word may be cut: after each whole sign.</summary>
    private static IEnumerable<int> Ends(string word)
    {
        int[] starts = StringInfo.ParseCombiningCharacters(word);
        return [.. starts.Skip(1), word.Length];
    }
}

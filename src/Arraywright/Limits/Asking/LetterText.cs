using System.Text;

namespace Arraywright.Limits.Asking;

/// <summary>Plain text broken at word boundaries, so that a letter reads the same in a terminal and in a mail.</summary>
internal static class LetterText
{
    private const int Width = 76;

    /// <summary>The sentence broken into lines, all but the first set in by <paramref name="indent"/> spaces; ends with a line end.</summary>
    public static string Paragraph(string text, int indent = 0)
    {
        StringBuilder lines = new();
        int column = 0;
        foreach (string word in text.Split(' '))
        {
            if (column > 0 && column + 1 + word.Length > Width)
            {
                lines.Append('\n').Append(' ', indent);
                column = indent;
            }
            else if (lines.Length > 0)
            {
                lines.Append(' ');
                column++;
            }

            lines.Append(word);
            column += word.Length;
        }

        return lines.Append('\n').ToString();
    }

    /// <summary>Paragraphs numbered from 1.</summary>
    public static string Numbered(IEnumerable<string> questions) =>
        string.Join('\n', questions.Select((question, index) => Paragraph($"{index + 1}. {question}", 3)));
}

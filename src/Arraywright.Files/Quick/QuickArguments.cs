using System.Globalization;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;

namespace Arraywright.Files.Quick;

/// <summary>A label with its count, cut from the arguments.</summary>
internal readonly record struct CountedLabel(int Count, string Text, int Line, int Column);

/// <summary>Sorts arguments into counts and labels: <c>4x "22.9V 6.72A"</c>, <c>"4x22.9V 6.72A"</c>, or the same without quotation marks.</summary>
internal static class QuickArguments
{
    public static List<CountedLabel> Labels(IReadOnlyList<string> arguments, bool counts, FaultList faults)
    {
        List<CountedLabel> labels = [];
        (int Count, int Line)? waiting = null;
        bool isOpen = false;
        for (int i = 0; i < arguments.Count; i++)
        {
            string argument = arguments[i].Trim();
            int column = arguments[i].Length - arguments[i].TrimStart().Length + 1;
            int times = counts ? CountLength(argument) : 0;
            if (times > 0)
            {
                waiting = (Count(argument, i + 1, column, faults), i + 1);
                isOpen = false;
                int spaces = argument.Length - times - argument[times..].TrimStart().Length;
                argument = argument[(times + spaces)..];
                column += times + spaces;
            }

            if (argument.Length == 0)
            {
                continue;
            }

            // Without quotation marks each figure comes as an argument of its own; they make up one label.
            bool isOneFigure = !argument.Contains(' ', StringComparison.Ordinal);
            if (isOpen && isOneFigure)
            {
                labels[^1] = labels[^1] with { Text = labels[^1].Text + new string(' ', 1) + argument };
                continue;
            }

            labels.Add(new CountedLabel(waiting?.Count ?? 1, argument, i + 1, column));
            waiting = null;
            isOpen = isOneFigure;
        }

        if (waiting is { } left)
        {
            faults.Add(left.Line, 1, "a count without a label", "the label after it such as \"22.9V 6.72A 18.9V 6.35A\"");
        }

        return labels;
    }

    /// <summary>Length of a count with its sign, "4x" or "4 ×"; 0 when the text begins with none.</summary>
    private static int CountLength(string text)
    {
        int digits = text.AsSpan().IndexOfAnyExceptInRange('0', '9');
        if (digits <= 0)
        {
            return 0;
        }

        int sign = digits;
        while (sign < text.Length && text[sign] == ' ')
        {
            sign++;
        }

        return sign < text.Length && text[sign] is 'x' or 'X' or '\u00D7' ? sign + 1 : 0;
    }

    private static int Count(string text, int line, int column, FaultList faults)
    {
        ReadOnlySpan<char> digits = text.AsSpan(0, text.AsSpan().IndexOfAnyExceptInRange('0', '9'));
        if (int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= Caps.Panels)
        {
            return count;
        }

        faults.Add(line, column, Quoted.Text(digits.ToString()), $"a number of panels from 1 to {Caps.Panels}");
        return 1;
    }
}

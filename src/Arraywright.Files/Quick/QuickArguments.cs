using System.Globalization;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;

namespace Arraywright.Files.Quick;

/// <summary>A label with its count, put together from one or more arguments.</summary>
internal sealed class CountedLabel(int count)
{
    private readonly List<(int Start, int Line, int Column)> _parts = [];

    public int Count { get; } = count;

    /// <summary>All its figures, with a space between arguments.</summary>
    public string Text { get; private set; } = "";

    public void Add(string text, int line, int column)
    {
        Text += Text.Length > 0 ? " " : "";
        _parts.Add((Text.Length, line, column));
        Text += text;
    }

    /// <summary>The argument (from 1) and the column in it (from 1) that a position of <see cref="Text"/> comes from.</summary>
    public (int Line, int Column) PlaceOf(int position)
    {
        int part = _parts.FindLastIndex(candidate => candidate.Start <= position);
        return (_parts[part].Line, _parts[part].Column + position - _parts[part].Start);
    }
}

/// <summary>Sorts arguments into counts and labels: <c>4x "22.9V 6.72A"</c>, <c>"4x22.9V 6.72A"</c>, or the same without quotation marks.</summary>
/// <param name="allowsCount">True for panels, false for inputs.</param>
/// <param name="faults">Where the faults go.</param>
internal sealed class QuickArguments(bool allowsCount, FaultList faults)
{
    private readonly List<CountedLabel> _labels = [];
    private (int Count, int Line)? _waiting;

    /// <summary>Units of the single figures that make up the last label so far; null when it stands in quotation marks.</summary>
    private string? _units;

    public List<CountedLabel> Labels(IReadOnlyList<string> arguments)
    {
        for (int i = 0; i < arguments.Count; i++)
        {
            int start = arguments[i].Length - arguments[i].TrimStart().Length;
            int count = allowsCount ? CountLength(arguments[i].AsSpan(start)) : 0;
            if (count > 0)
            {
                RefuseWaiting();
                _waiting = (Count(arguments[i].AsSpan(start), i + 1, start + 1), i + 1);
                start += count;
                start += arguments[i].Length - start - arguments[i][start..].TrimStart().Length;
            }

            if (start < arguments[i].Length)
            {
                AddText(arguments[i][start..].TrimEnd(), i + 1, start + 1);
            }
        }

        RefuseWaiting();
        return _labels;
    }

    private void AddText(string text, int line, int column)
    {
        // Without quotation marks each figure comes as an argument of its own; those that one label can have make up one label.
        char? unit = text.Contains(' ', StringComparison.Ordinal) ? null : RangeSign(text) ?? char.ToUpperInvariant(text[^1]);
        if (_waiting is null && _units is not null && unit is { } one && _units.Count(seen => seen == one) < MostOf(one))
        {
            _units += one;
        }
        else
        {
            _labels.Add(new CountedLabel(_waiting?.Count ?? 1));
            _waiting = null;
            _units = unit?.ToString();
        }

        _labels[^1].Add(text, line, column);
    }

    /// <summary>A panel has two voltages and two currents, an input one of each; a bare number belongs to the label it stands in.</summary>
    private int MostOf(char unit) => char.IsAsciiDigit(unit) ? int.MaxValue : allowsCount && unit is 'V' or 'A' ? 2 : 1;

    private static char? RangeSign(string text) => text.Contains("..", StringComparison.Ordinal) || text.LastIndexOf('-') > 0 ? '-' : null;

    private void RefuseWaiting()
    {
        if (_waiting is { } left)
        {
            faults.Add(left.Line, 1, "a count without a label", "the label after it such as \"22.9V 6.72A 18.9V 6.35A\"");
            _waiting = null;
        }
    }

    /// <summary>Length of a count with its sign, "4x" or "4 ×"; 0 when the text begins with none.</summary>
    private static int CountLength(ReadOnlySpan<char> text)
    {
        int digits = text.IndexOfAnyExceptInRange('0', '9');
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

    private int Count(ReadOnlySpan<char> text, int line, int column)
    {
        ReadOnlySpan<char> digits = text[..text.IndexOfAnyExceptInRange('0', '9')];
        if (int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= Caps.Panels)
        {
            return count;
        }

        faults.Add(line, column, Quoted.Text(digits.ToString()), $"a number of panels from 1 to {Caps.Panels}");
        return 1;
    }
}

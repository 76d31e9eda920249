using System.Globalization;

namespace Arraywright.Electrical;

/// <summary>Reads one written wiring from left to right, one method a level of the grammar; stops at the first fault.</summary>
/// <remarks>
/// <code>
/// parallel = series { "|" series }
/// series   = times { "+" times }
/// times    = [ count "*" ] part
/// part     = name | "(" parallel ")"
/// </code>
/// The panels are counted before anything is multiplied out, so a short text cannot fill the memory; open brackets are counted too, so
/// none can exhaust the stack.
/// </remarks>
internal sealed class WiringParser(string text)
{
    private int _at;
    private int _panels;
    private int _openBrackets;

    /// <summary>The first fault; null while there is none.</summary>
    public WiringTextFault? Fault { get; private set; }

    /// <summary>The wiring as written; null when there is a <see cref="Fault"/>.</summary>
    public Wiring? Read()
    {
        Wiring? wiring = ReadParallel();
        return wiring is null || _at == text.Length ? wiring : Fail(_at, ExpectedAfterPart("the end"));
    }

    private Wiring? ReadParallel()
    {
        List<Wiring> branches = [];
        do
        {
            if (ReadSeries() is not { } branch)
            {
                return null;
            }

            branches.Add(branch);
        }
        while (Take('|'));
        return Wiring.InParallel(branches);
    }

    private Wiring? ReadSeries()
    {
        List<Wiring> parts = [];
        do
        {
            int start = SkipSpace();
            int count = TakeCount();
            int panelsBefore = _panels;
            if (count == 0 || ReadPart() is not { } part || !CountPanels((count - 1L) * (_panels - panelsBefore), start))
            {
                return null;
            }

            parts.AddRange(Enumerable.Repeat(part, count));
        }
        while (Take('+'));
        return Wiring.InSeries(parts);
    }

    /// <summary>Digits are a count only when a star follows; 1 when there is no count, 0 when it is out of range.</summary>
    private int TakeCount()
    {
        int start = _at;
        ReadOnlySpan<char> digits = TakeWord();
        if (digits.Length == 0 || digits.ContainsAnyExceptInRange('0', '9') || !Take('*'))
        {
            _at = start;
            return 1;
        }

        if (int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= WiringText.MostPanels)
        {
            return count;
        }

        Fail(start, $"a count from 1 to {WiringText.MostPanels}");
        return 0;
    }

    private Wiring? ReadPart()
    {
        int start = SkipSpace();
        ReadOnlySpan<char> name = TakeWord();
        if (name.Length > 0)
        {
            return CountPanels(1, start) ? new Wiring.Single(name.ToString()) : null;
        }

        if (!Take('('))
        {
            return Fail(start, "a panel name, a count with its star such as 3*, or '('");
        }

        if (++_openBrackets > WiringText.DeepestNesting)
        {
            return Fail(start, $"at most {WiringText.DeepestNesting} brackets open at once");
        }

        Wiring? inside = ReadParallel();
        _openBrackets--;
        return inside is null || Take(')') ? inside : Fail(_at, ExpectedAfterPart("')'"));
    }

    private bool CountPanels(long more, int start)
    {
        if (_panels + more > WiringText.MostPanels)
        {
            Fail(start, $"at most {WiringText.MostPanels} panels in all");
            return false;
        }

        _panels += (int)more;
        return true;
    }

    private string ExpectedAfterPart(string closing) =>
        $"'+', '|' or {closing}" + (_at < text.Length && text[_at] == '*' ? "; a count stands before its star, as in 3*a" : "");

    private Wiring? Fail(int position, string expected)
    {
        Fault = new WiringTextFault(position, FoundAt(position), expected);
        return null;
    }

    private string FoundAt(int position)
    {
        if (position == text.Length)
        {
            return "the end";
        }

        _at = position;
        ReadOnlySpan<char> word = TakeWord();
        if (word.Length > 0)
        {
            return word.Length > 30 ? $"{word[..30]}..." : word.ToString();
        }

        char sign = text[position];
        return char.GetUnicodeCategory(sign) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
            ? $"the character U+{(int)sign:X4}"
            : $"'{sign}'";
    }

    /// <summary>The longest run of letters, digits and hyphens from here; may be empty.</summary>
    private ReadOnlySpan<char> TakeWord()
    {
        int start = _at;
        while (_at < text.Length && (char.IsLetterOrDigit(text[_at]) || text[_at] == '-'))
        {
            _at++;
        }

        return text.AsSpan(start, _at - start);
    }

    private bool Take(char sign)
    {
        if (SkipSpace() == text.Length || text[_at] != sign)
        {
            return false;
        }

        _at++;
        return true;
    }

    private int SkipSpace()
    {
        while (_at < text.Length && char.IsWhiteSpace(text[_at]))
        {
            _at++;
        }

        return _at;
    }
}

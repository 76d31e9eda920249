using System.Globalization;

namespace Arraywright.Files.Quantities;

/// <summary>A decimal number at the beginning of a text.</summary>
/// <param name="length">How many characters it takes.</param>
/// <param name="mantissa">Sign, digits and point.</param>
/// <param name="exponent">Power of ten behind an "e"; 0 when there is none.</param>
internal readonly ref struct NumberText(int length, ReadOnlySpan<char> mantissa, int exponent)
{
    private const int LongestMantissa = 40;
    private const int LargestExponent = 9999;

    private readonly ReadOnlySpan<char> _mantissa = mantissa;

    public int Length { get; } = length;

    /// <summary>True when it has no point and no exponent.</summary>
    public bool IsWhole => exponent == 0 && !_mantissa.Contains('.');

    /// <summary>The number that <paramref name="text"/> begins with: <c>-0.28</c>, <c>.5</c>, <c>1e3</c>; the minus of typesetters (U+2212) counts as one.</summary>
    public static bool TryScan(ReadOnlySpan<char> text, out NumberText number)
    {
        int at = text.Length > 0 && text[0] is '+' or '-' or '\u2212' ? 1 : 0;
        int digits = CountDigits(text[at..]);
        at += digits;

        // "12..45" is a range: its first point belongs to no number.
        if (at < text.Length && text[at] == '.' && !(at + 1 < text.Length && text[at + 1] == '.'))
        {
            int decimals = CountDigits(text[(at + 1)..]);
            digits += decimals;
            at += decimals + 1;
        }

        int end = at;
        int exponent = digits == 0 ? 0 : ScanExponent(text[at..], ref end);
        number = new NumberText(end, text[..at], exponent);
        return digits > 0;
    }

    /// <summary>The number times a power of ten, rounded once: 2.9 shifted by −2 is the double nearest to 0.029.</summary>
    /// <returns>False when it is too long or too large for a double.</returns>
    public bool TryValue(int shift, out double value)
    {
        value = 0;
        if (_mantissa.Length > LongestMantissa)
        {
            return false;
        }

        Span<char> buffer = stackalloc char[LongestMantissa + 8];
        _mantissa.CopyTo(buffer);
        buffer[.._mantissa.Length].Replace('\u2212', '-');
        int end = _mantissa.Length;
        buffer[end++] = 'e';
        (exponent + shift).TryFormat(buffer[end..], out int written, provider: CultureInfo.InvariantCulture);
        return double.TryParse(buffer[..(end + written)], NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private static int ScanExponent(ReadOnlySpan<char> text, ref int end)
    {
        if (text.Length < 2 || text[0] is not ('e' or 'E'))
        {
            return 0;
        }

        int sign = text[1] is '+' or '-' ? 1 : 0;
        int digits = CountDigits(text[(1 + sign)..]);
        if (digits == 0)
        {
            return 0;
        }

        end += 1 + sign + digits;
        ReadOnlySpan<char> written = text.Slice(1 + sign, digits);
        int size = digits > 9 ? LargestExponent : Math.Min(LargestExponent, int.Parse(written, NumberStyles.None, CultureInfo.InvariantCulture));
        return text[1] == '-' ? -size : size;
    }

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        int count = text.IndexOfAnyExceptInRange('0', '9');
        return count < 0 ? text.Length : count;
    }
}

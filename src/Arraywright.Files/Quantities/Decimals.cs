using System.Globalization;

namespace Arraywright.Files.Quantities;

/// <summary>Writes numbers in decimal so that they read back to the same double.</summary>
internal static class Decimals
{
    /// <summary>The shortest decimal of <paramref name="value"/> that reads back exactly, with its point moved right by <paramref name="shift"/> places and no rounding.</summary>
    public static string Shifted(double value, int shift)
    {
        string shortest = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        int mark = shortest.IndexOf('E', StringComparison.Ordinal);
        ReadOnlySpan<char> mantissa = mark < 0 ? shortest : shortest.AsSpan(0, mark);
        int exponent = mark < 0 ? 0 : int.Parse(shortest.AsSpan(mark + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        int point = mantissa.IndexOf('.');
        string digits = point < 0 ? mantissa.ToString() : string.Concat(mantissa[..point], mantissa[(point + 1)..]);
        return (value < 0 ? "-" : "") + Placed(digits, (point < 0 ? mantissa.Length : point) + exponent + shift);
    }

    /// <summary>Digits with the point after the first <paramref name="point"/> of them.</summary>
    private static string Placed(string digits, int point)
    {
        string whole = point <= 0 ? "0" : digits.PadRight(point, '0')[..point].TrimStart('0');
        string fraction = (point < 0 ? new string('0', -point) + digits : digits[Math.Min(point, digits.Length)..]).TrimEnd('0');
        return (whole.Length == 0 ? "0" : whole) + (fraction.Length == 0 ? "" : "." + fraction);
    }
}

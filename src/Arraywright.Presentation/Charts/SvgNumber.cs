using System.Text;

namespace Arraywright.Presentation.Charts;

/// <summary>Coordinates as SVG has them, to a hundredth: enough for any screen and printer.</summary>
/// <remarks>A picture has thousands, and the runtime's own formatting of fractions takes most of the time of one in a browser.</remarks>
internal static class SvgNumber
{
    /// <summary>Beyond this a whole number of hundredths is not exact.</summary>
    private const double Most = 1e13;

    /// <summary>A number without needless zeros.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is no number, or one past every picture.</exception>
    public static string Of(double value) => new StringBuilder().AppendSvg(value).ToString();

    /// <summary>Points as a line or polygon has them: "x,y x,y".</summary>
    public static string Points<T>(IEnumerable<T> points, Func<T, double> x, Func<T, double> y)
    {
        StringBuilder text = new();
        foreach (T point in points)
        {
            (text.Length > 0 ? text.Append(' ') : text).AppendSvg(x(point)).Append(',').AppendSvg(y(point));
        }

        return text.ToString();
    }

    private static StringBuilder AppendSvg(this StringBuilder text, double value)
    {
        if (!(Math.Abs(value) < Most))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A picture has a coordinate that is no number.");
        }

        long hundredths = (long)Math.Round(value * 100);
        (long whole, long part) = Math.DivRem(Math.Abs(hundredths), 100);
        (hundredths < 0 ? text.Append('-') : text).Append(whole);
        if (part > 0)
        {
            text.Append('.').Append((char)('0' + (part / 10)));
        }

        return part % 10 > 0 ? text.Append((char)('0' + (part % 10))) : text;
    }
}

using System.Globalization;

namespace Arraywright.Presentation.Terminal;

/// <summary>Quantities as a person writes them: a number, a space, a unit, and no more digits than a meter shows.</summary>
public static class Figures
{
    /// <summary>A real minus sign: read aloud as "minus", and as wide as a plus.</summary>
    public const char Minus = '−';

    /// <summary>A figure with the digits usual for its unit: volts to 0.1, amps to 0.01, watts whole.</summary>
    public static string Of(double value, string unit) => $"{Number(value, Decimals(unit))} {unit}";

    /// <summary>The smallest figure that is written in this unit: "1 W", "0.1 kWh".</summary>
    public static string Least(string unit) => Decimals(unit) == 0 ? $"1 {unit}" : $"0.{new string('0', Decimals(unit) - 1)}1 {unit}";

    /// <summary>A figure held against a limit, with as many digits as it takes not to look equal to it when it is not.</summary>
    public static string Against(double value, double limit, string unit)
    {
        int decimals = Decimals(unit);
        while (decimals < 6 && value != limit && Number(value, decimals) == Number(limit, decimals))
        {
            decimals++;
        }

        return $"{Number(value, decimals)} {unit}";
    }

    /// <summary>A stated figure: its own digits, no more.</summary>
    public static string Stated(double value, string unit) => $"{Signed(value.ToString("0.###", CultureInfo.InvariantCulture))} {unit}";

    /// <summary>A figure rounded to three digits that count.</summary>
    public static double Three(double value) =>
        value == 0 ? 0 : Math.Round(value, Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15));

    /// <summary>An energy, given in kWh: small ones in Wh.</summary>
    public static string Energy(double kWh) => Math.Abs(kWh) < 1 ? $"{Number(1000 * kWh, 0)} Wh" : Of(kWh, "kWh");

    /// <summary>A share of a hundred: one decimal below 10, else whole.</summary>
    public static string Percent(double value) => $"{Number(value, Math.Abs(value) < 9.95 ? 1 : 0)} %";

    /// <summary>A count, in full up to a million, then by its power of ten.</summary>
    public static string Count(double count) => count < 1e6
        ? count.ToString("#,0", CultureInfo.InvariantCulture)
        : count.ToString("0.0e0", CultureInfo.InvariantCulture).Replace("e", " × 10^", StringComparison.Ordinal);

    /// <summary>A number of things: "1 panel", "2 panels".</summary>
    public static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>A number with a fixed count of decimals and a real minus sign; never a negative nought.</summary>
    public static string Number(double value, int decimals)
    {
        // Halves as people see them: 3.825 is 3.83, though in binary it is a little less. A custom format rounds so, "F2" does not.
        string text = value.ToString(decimals == 0 ? "0" : "0." + new string('0', decimals), CultureInfo.InvariantCulture);
        return text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text.TrimStart('-') : Signed(text);
    }

    private static string Signed(string text) => text.Replace('-', Minus);

    private static int Decimals(string unit) => unit switch
    {
        "W" or "Wh" or "W/m²" or "°C" => 0,
        "A" => 2,
        _ => 1,
    };
}

using System.Globalization;
using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>Comparing a figure with a limit, and writing both so that the text agrees with the comparison.</summary>
internal static class Figures
{
    /// <summary>Binary arithmetic may miss a sum such as 0.1 + 0.2 by a last bit; a figure this close to a limit is at it, not over.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Whether a figure is over its limit. At the limit is not over; a figure that is not a number is.</summary>
    public static bool Over(double value, double limit) => !(value <= limit * (1 + Rounding));

    /// <summary>Whether a figure is under its floor. At the floor is not under; a figure that is not a number is.</summary>
    public static bool Under(double value, double floor) => !(value >= floor * (1 - Rounding));

    /// <summary>A figure as printed on a label: no more decimals than it has, at most four.</summary>
    public static string Label(double value, string unit) => $"{Plain(value)} {unit}";

    /// <summary>The bare figure, at most four decimals.</summary>
    public static string Plain(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A temperature coefficient (1/K) without its sign.</summary>
    public static string Coefficient(double perK) => Math.Abs(perK).ToString("0.00####", CultureInfo.InvariantCulture);

    /// <summary>A fraction as a percentage.</summary>
    public static string Percent(double fraction) => (fraction * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    /// <summary>A temperature.</summary>
    public static string Celsius(double cellC) => $"{cellC.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', LabelText.Minus)} °C";

    /// <summary>A result, rounded as its unit is usually read.</summary>
    public static string Result(double value, string unit) => Rounded(value, Decimals(unit), unit);

    /// <summary>A result beside its limit: with as many decimals as it takes not to read as the limit when it is not at it.</summary>
    public static string Result(double value, double limit, string unit)
    {
        int decimals = Decimals(unit);
        while (decimals < 6 && Math.Round(value, decimals).CompareTo(limit) != Side(value, limit))
        {
            decimals++;
        }

        return Rounded(value, decimals, unit);
    }

    private static int Side(double value, double limit) => Over(value, limit) ? 1 : Under(value, limit) ? -1 : 0;

    private static int Decimals(string unit) => unit switch { "A" => 2, "W" => 0, _ => 1 };

    private static string Rounded(double value, int decimals, string unit)
    {
        string format = unit == "A" ? "0." + new string('#', decimals) : decimals == 0 ? "0" : "0." + new string('0', decimals);
        return value.ToString(format, CultureInfo.InvariantCulture) + " " + unit;
    }
}

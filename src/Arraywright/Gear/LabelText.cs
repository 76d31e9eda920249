namespace Arraywright.Gear;

/// <summary>Figures of a label as a person writes them.</summary>
internal static class LabelText
{
    /// <summary>The real minus, read aloud as "minus": one sign in all text, which the plan file takes too. A hyphen joins words.</summary>
    public const char Minus = '−';

    /// <summary>Up to four decimals, no trailing zeros; absurdly large or small figures in powers of ten.</summary>
    public static string Figure(double value) =>
        value != 0 && Math.Abs(value) is < 0.0001 or >= 1e6 ? value.ToString("0.##E+0") : value.ToString("0.####");

    /// <summary>A computed figure to about four digits, so that it does not pretend to more than the label it comes from.</summary>
    public static string Computed(double value) => Figure(Math.Round(value, Math.Abs(value) switch
    {
        >= 100 => 1,
        >= 10 => 2,
        >= 0.1 => 3,
        _ => 6,
    }));

    /// <summary>A coefficient (1/K) in %/K with its sign.</summary>
    public static string PercentPerK(double perK) => $"{Signed(perK * 100)} %/K";

    /// <summary>A range of coefficients (1/K) in %/K, the smaller change first.</summary>
    public static string PercentPerK(Band perK) => Math.Abs(perK.Low) > Math.Abs(perK.High)
        ? $"{Signed(perK.High * 100)} to {PercentPerK(perK.Low)}"
        : $"{Signed(perK.Low * 100)} to {PercentPerK(perK.High)}";

    /// <summary>A ratio or the volts of a cell, to three decimals at most.</summary>
    public static string Ratio(double ratio) => ratio.ToString("0.00#");

    private static string Signed(double value) => (value > 0 ? "+" : "") + Figure(value).Replace('-', Minus);
}

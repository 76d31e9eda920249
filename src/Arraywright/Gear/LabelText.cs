namespace Arraywright.Gear;

/// <summary>Figures of a label as a person writes them.</summary>
internal static class LabelText
{
    /// <summary>Up to four decimals, no trailing zeros; absurdly large or small figures in powers of ten.</summary>
    public static string Figure(double value) =>
        value != 0 && Math.Abs(value) is < 0.0001 or >= 1e6 ? value.ToString("0.##E+0") : value.ToString("0.####");

    /// <summary>A coefficient (1/K) in %/K with its sign.</summary>
    public static string PercentPerK(double perK) => $"{(perK > 0 ? "+" : "")}{Figure(perK * 100)} %/K";

    /// <summary>A range of coefficients (1/K) in %/K, the smaller change first.</summary>
    public static string PercentPerK(Band perK) => Math.Abs(perK.Low) > Math.Abs(perK.High)
        ? $"{PercentPerK(perK.High)} to {PercentPerK(perK.Low)}"
        : $"{PercentPerK(perK.Low)} to {PercentPerK(perK.High)}";

    /// <summary>A fraction rounded to two decimals.</summary>
    public static string Ratio(double ratio) => ratio.ToString("0.00");
}

using Arraywright.Gear;

namespace Arraywright.Climate;

/// <summary>Temperatures as a person reads them.</summary>
internal static class Degrees
{
    /// <summary>"−14 °C"; never "−0 °C".</summary>
    public static string Text(double temperatureC, int decimals = 0) =>
        $"{(Math.Round(temperatureC, decimals) + 0.0).ToString($"F{decimals}").Replace('-', LabelText.Minus)} °C";
}

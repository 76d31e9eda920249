namespace Arraywright.Files.Quantities;

/// <summary>The gauges thicker than 0: "2/0 AWG".</summary>
internal static class WireGauge
{
    /// <summary>True for a text that begins with "1/0" to "4/0".</summary>
    /// <param name="text">The text.</param>
    /// <param name="gauge">The gauge as a number: 0 for 1/0, −1 for 2/0.</param>
    public static bool TryAught(ReadOnlySpan<char> text, out int gauge)
    {
        gauge = text.Length >= 3 ? 1 - (text[0] - '0') : 0;
        return text is [>= '1' and <= '4', '/', '0', ..];
    }
}

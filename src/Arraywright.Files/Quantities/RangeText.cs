namespace Arraywright.Files.Quantities;

/// <summary>Reads a range of a quantity: <c>12..45 V</c>; <c>12 - 45 V</c>, <c>12 V to 45 V</c> as labels print it.</summary>
internal static class RangeText
{
    private static readonly string[] Separators = ["..", "\u2026", "\u2013", " to ", "-"];

    /// <summary>The two ends in the library's unit.</summary>
    public static bool TryRead(string text, Quantity quantity, out double from, out double to, out Misreading misreading)
    {
        from = 0;
        to = 0;
        misreading = new Misreading(null, "write both ends with two points between them");
        (int at, int length) = FindSeparator(text);
        if (at <= 0)
        {
            return false;
        }

        string low = text[..at].Trim(' '), high = text[(at + length)..].Trim(' ');
        if (!QuantityText.TryRead(high, quantity, out Figure highFigure, out misreading))
        {
            return false;
        }

        // The first number mostly stands without its unit, which then is that of the second.
        if (NumberText.TryScan(low, out NumberText number) && number.Length == low.Length)
        {
            NumberText.TryScan(high, out NumberText highNumber);
            low += high[highNumber.Length..];
        }

        if (!QuantityText.TryRead(low, quantity, out Figure lowFigure, out misreading))
        {
            return false;
        }

        (from, to) = (lowFigure.Value, highFigure.Value);
        misreading = new Misreading(null, "write the lower end first");
        return from < to;
    }

    private static (int At, int Length) FindSeparator(string text)
    {
        foreach (string separator in Separators)
        {
            int at = text.IndexOf(separator, StringComparison.Ordinal);
            if (at > 0)
            {
                return (at, separator.Length);
            }
        }

        return (-1, 0);
    }
}

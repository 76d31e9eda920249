namespace Arraywright.Page.Document;

/// <summary>The units a form works in: what a bare figure means, and how a figure in that unit is shown without it.</summary>
internal static class FieldUnit
{
    /// <summary>The unit a field is filled in by, as the plan file writes it.</summary>
    /// <param name="unit">The unit of the key's example.</param>
    /// <param name="isUs">Whether the person works in feet, gauges and degrees Fahrenheit.</param>
    public static string For(string unit, bool isUs) => (unit, isUs) switch
    {
        ("m", true) => "ft",
        ("mm2", true) => "AWG",
        ("C", true) => "F",
        _ => unit,
    };

    /// <summary>A figure as the field shows it: bare when it is in the field's own unit.</summary>
    public static string Shown(string? written, string unit)
    {
        string text = written ?? "";
        return unit.Length > 0 && text.EndsWith(unit, StringComparison.Ordinal) && IsNumber(text[..^unit.Length]) ? text[..^unit.Length].TrimEnd() : text;
    }

    /// <summary>A figure as the plan file has it: a bare one gets the field's unit.</summary>
    public static string Written(string typed, string unit)
    {
        string text = typed.Trim().Replace('\u2212', '-');
        return unit.Length > 0 && IsNumber(text) ? $"{text} {unit}" : text;
    }

    private static bool IsNumber(string text)
    {
        bool digits = false;
        foreach (char letter in text.Trim())
        {
            digits |= char.IsAsciiDigit(letter);
            if (!char.IsAsciiDigit(letter) && letter is not ('.' or '-' or '+'))
            {
                return false;
            }
        }

        return digits;
    }
}

namespace Arraywright.Files.Quantities;

/// <summary>Why a text is not the quantity that was expected.</summary>
/// <param name="Expected">What was expected; null for the key's own words.</param>
/// <param name="Hint">What to do.</param>
internal readonly record struct Misreading(string? Expected, string? Hint);

/// <summary>A figure read, in the library's unit.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Basis">For a slope: of what.</param>
internal readonly record struct Figure(double Value, Basis Basis);

/// <summary>Reads a quantity with its unit: <c>22.9 V</c>.</summary>
internal static class QuantityText
{
    /// <summary>A space, and the two kinds that datasheets put between number and unit.</summary>
    public const string Spaces = " \u00A0\u202F";

    public static bool TryRead(ReadOnlySpan<char> text, Quantity quantity, out Figure figure, out Misreading misreading)
    {
        figure = default;
        misreading = default;
        text = text.Trim(Spaces);
        if (!NumberText.TryScan(text, out NumberText number))
        {
            misreading = new Misreading(null, NoNumberHint(text));
            return false;
        }

        ReadOnlySpan<char> rest = text[number.Length..];
        if (WireGauge.TryAught(text, out int aught) && UnitOf(quantity, text[(text.IndexOf('/') + 2)..].Trim(Spaces)) is { Scale: Scale.WireGauge } gaugeUnit)
        {
            NumberText.TryScan(aught.ToString(), out NumberText gauge);
            gaugeUnit.TryConvert(gauge, out double areaMm2);
            figure = new Figure(areaMm2, default);
            return IsWithin(areaMm2, quantity, ref misreading);
        }

        Unit? unit = UnitOf(quantity, rest.Trim(Spaces));
        if (unit is null)
        {
            misreading = new Misreading(null, UnitHint(text, rest, quantity));
            return false;
        }

        if (unit.Scale == Scale.WireGauge && !number.IsWhole)
        {
            misreading = new Misreading(null, "a wire gauge is a whole number");
            return false;
        }

        if (!unit.TryConvert(number, out double value))
        {
            misreading = new Misreading(RangeExpected(quantity), "the number is too large or too long");
            return false;
        }

        figure = new Figure(value, unit.Basis);
        return unit.Basis == Basis.Absolute || IsWithin(value, quantity, ref misreading);
    }

    /// <summary>True when a figure lies in its quantity's range; else says which range.</summary>
    public static bool IsWithin(double value, Quantity quantity, ref Misreading misreading)
    {
        if (value >= quantity.Min && value <= quantity.Max)
        {
            return true;
        }

        misreading = new Misreading(RangeExpected(quantity), null);
        return false;
    }

    private static string RangeExpected(Quantity quantity) => $"{quantity.Name} {quantity.RangeText}";

    private static Unit? UnitOf(Quantity quantity, ReadOnlySpan<char> written)
    {
        foreach (Unit unit in quantity.Units)
        {
            if (unit.Is(written))
            {
                return unit;
            }
        }

        return null;
    }

    private static string? NoNumberHint(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> bare = text.TrimStart("+-.");
        return bare.StartsWith("nan", StringComparison.OrdinalIgnoreCase) || bare.StartsWith("inf", StringComparison.OrdinalIgnoreCase)
            ? "a figure must be a finite number; leave the key out when it is not known"
            : text.Length == 0 ? null : "begin with the number";
    }

    private static string UnitHint(ReadOnlySpan<char> text, ReadOnlySpan<char> rest, Quantity quantity)
    {
        ReadOnlySpan<char> unit = rest.Trim(Spaces);
        if (unit.Length == 0)
        {
            return $"a bare number could mean anything; add the unit, {quantity.UnitList}";
        }

        if (unit is [',', >= '0' and <= '9', ..])
        {
            return "write a decimal point, not a comma";
        }

        if (unit[0] is '.' or '_' or '/' or '-' or '+' or (>= '0' and <= '9'))
        {
            return "write one ordinary number, then its unit";
        }

        if (unit[0] is 'x' or 'X' && text.TrimStart("+-").StartsWith("0"))
        {
            return "write the number in ordinary decimals";
        }

        if (quantity.OftenConfused is { } confused && unit.Equals(confused.Unit, StringComparison.OrdinalIgnoreCase))
        {
            return confused.Hint;
        }

        return quantity.UnitList.Length == 0 ? "write the bare number" : $"the unit must be {quantity.UnitList}, not {Text.Quoted.Text(unit.ToString())}";
    }
}

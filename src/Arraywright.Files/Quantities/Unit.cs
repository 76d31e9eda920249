using Arraywright.Electrical;

namespace Arraywright.Files.Quantities;

/// <summary>How a figure in some unit becomes the figure the library works with.</summary>
internal enum Scale
{
    /// <summary>By a power of ten.</summary>
    Decimal,

    /// <summary>International feet to metres, 0.3048 exactly.</summary>
    Foot,

    /// <summary>Degrees Fahrenheit to Celsius, exactly.</summary>
    Fahrenheit,

    /// <summary>American wire gauge to mm².</summary>
    WireGauge,

    /// <summary>South and west count as negative.</summary>
    Opposite,
}

/// <summary>A unit a quantity may be written in.</summary>
/// <param name="Symbol">As written; empty for a bare number.</param>
/// <param name="Shift">Power of ten from this unit to the library's.</param>
/// <param name="Scale">How else it converts.</param>
internal sealed record Unit(string Symbol, int Shift = 0, Scale Scale = Scale.Decimal)
{
    /// <summary>What the figure is measured in after conversion, where a quantity can be given in two ways: a slope in %/K, or in V/K.</summary>
    public Basis Basis { get; init; }

    /// <summary>A second spelling of another unit: read, but not shown in lists.</summary>
    public bool IsVariant { get; init; }

    /// <summary>True when this unit is what <paramref name="written"/> says; spaces do not count.</summary>
    public bool Is(ReadOnlySpan<char> written)
    {
        int at = 0;
        foreach (char letter in written)
        {
            if (QuantityText.Spaces.Contains(letter, StringComparison.Ordinal))
            {
                continue;
            }

            if (at == Symbol.Length || Symbol[at++] != letter)
            {
                return false;
            }
        }

        return at == Symbol.Length;
    }

    /// <summary>The figure in the library's unit.</summary>
    public bool TryConvert(NumberText number, out double value)
    {
        if (!number.TryValue(Shift, out value))
        {
            return false;
        }

        value = Scale switch
        {
            Scale.Foot => value * 0.3048,
            Scale.Fahrenheit => (value - 32) * 5 / 9,
            Scale.WireGauge => GaugeMm2(value),
            Scale.Opposite => -value,
            _ => value,
        };
        value += 0.0; // Turns −0 into 0, which is written and compared the same everywhere.
        return double.IsFinite(value);
    }

    /// <summary>Cross-section of a solid wire of a gauge, mm²: d = 0.127 mm · 92^((36 − n)/39) (ASTM B258); 1/0 is 0, 2/0 is −1 and so on.</summary>
    private static double GaugeMm2(double gauge)
    {
        const double Ln92 = 4.5217885770490405;
        double diameterMm = 0.127 * Exponential.Of((36 - gauge) / 39 * Ln92);
        return Math.PI / 4 * diameterMm * diameterMm;
    }
}

/// <summary>What a temperature coefficient is relative to.</summary>
internal enum Basis
{
    /// <summary>A fraction of the quantity itself, 1/K.</summary>
    Relative,

    /// <summary>The quantity's own unit a kelvin.</summary>
    Absolute,
}

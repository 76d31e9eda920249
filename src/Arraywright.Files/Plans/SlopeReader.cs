using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;

namespace Arraywright.Files.Plans;

/// <summary>Reads a temperature coefficient, which datasheets print as a share or in volts, amps or watts a degree.</summary>
internal static class SlopeReader
{
    /// <summary>The coefficient as a fraction a kelvin.</summary>
    /// <param name="fields">The panel.</param>
    /// <param name="key">The coefficient.</param>
    /// <param name="of">The figure it is a change of.</param>
    /// <param name="ofValue">Its value; null when it is missing or at fault.</param>
    public static double? Read(Fields fields, QuantityKey key, QuantityKey of, double? ofValue)
    {
        if (fields.FigureWithBasis(key) is not { } figure)
        {
            return null;
        }

        if (figure.Basis == Basis.Relative)
        {
            return figure.Value;
        }

        if (ofValue is not { } whole)
        {
            if (!fields.Has(of) && !of.Required)
            {
                fields.Faults.Add(fields.PlaceOf(key), fields.PlaceOf(key).Described, "a coefficient in %/K", $"without \"{of.Name}\" it cannot be turned into a share");
            }

            return null;
        }

        double fraction = figure.Value / whole;
        Misreading misreading = default;
        if (QuantityText.IsWithin(fraction, key.Quantity, ref misreading))
        {
            return fraction;
        }

        fields.Faults.Add(fields.PlaceOf(key), fields.PlaceOf(key).Described, $"a temperature coefficient that is {key.Quantity.RangeText} of {of.Name}", "check its unit, and that it is for the whole panel");
        return null;
    }
}

using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;

namespace Arraywright.Files.Writing;

/// <summary>Figures as the plan file has them: in the recommended unit of their quantity, reading back exactly.</summary>
internal static class Figures
{
    /// <summary>A figure with its unit.</summary>
    public static string Of(double value, Quantity quantity)
    {
        Unit unit = quantity.Units[0];
        string number = Decimals.Shifted(value, -unit.Shift);
        return unit.Symbol.Length == 0 ? number : $"{number} {unit.Symbol}";
    }

    /// <summary>A figure with its unit.</summary>
    public static string Of(double value, QuantityKey key) => Of(value, key.Quantity);

    /// <summary>A figure with its unit; null for null.</summary>
    public static string? Of(double? value, QuantityKey key) => value is { } known ? Of(known, key.Quantity) : null;

    /// <summary>A figure that the plan states; null for one that was derived or assumed.</summary>
    public static string? Given(Sourced<double> value, QuantityKey key) => value.Origin == Origin.Given ? Of(value.Value, key) : null;

    /// <summary>A whole number that the plan states; null for one that was derived or assumed.</summary>
    public static string? Given(Sourced<int> value) => value.Origin == Origin.Given ? value.Value.ToString() : null;
}

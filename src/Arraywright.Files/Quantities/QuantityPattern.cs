using System.Text.RegularExpressions;

namespace Arraywright.Files.Quantities;

/// <summary>The written form of a quantity as a regular expression, for the schema.</summary>
internal static class QuantityPattern
{
    public const string Number = "[-+\u2212]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?";

    /// <summary>A number with any of the quantity's units.</summary>
    public static string Of(Quantity quantity) =>
        $"^({Number} *{Units(quantity)}{(Array.Exists(quantity.Units, static unit => unit.Scale == Scale.WireGauge) ? "|[1-4]/0 *AWG" : "")})$";

    /// <summary>Any of the quantity's units.</summary>
    public static string Units(Quantity quantity) =>
        $"({string.Join("|", quantity.Units.Select(static unit => Regex.Escape(unit.Symbol)))})";
}

using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>Reads prices, all in the currency of the first one read: sums of unlike money would mean nothing.</summary>
internal sealed class CurrencyRegister
{
    private (string Code, int Line)? _currency;

    /// <summary>The currency of all prices; null when there is none.</summary>
    public string? Code => _currency?.Code;

    /// <summary>A price; null when it is missing or, with a fault, wrong or in another currency.</summary>
    public double? Read(Fields fields, PriceKey key)
    {
        if (fields.Price(key) is not { } price)
        {
            return null;
        }

        _currency ??= (price.Currency, fields.PlaceOf(key).Line);
        if (price.Currency == _currency.Value.Code)
        {
            return price.Amount;
        }

        YamlNode found = fields.PlaceOf(key);
        fields.Faults.Add(found, found.Described, $"a price in {_currency.Value.Code}, like that on line {_currency.Value.Line}", "all prices of a plan are in one currency");
        return null;
    }
}

namespace Arraywright.Files.Quantities;

/// <summary>An amount of money.</summary>
/// <param name="Amount">How much.</param>
/// <param name="Currency">Its three-letter code, as ISO 4217 has them.</param>
internal readonly record struct Money(double Amount, string Currency);

/// <summary>Reads a price with its currency: <c>95 EUR</c>. Which codes there are is not checked: a price is only compared with others of the plan.</summary>
internal static class MoneyText
{
    public const double Most = 1e6;

    /// <summary>A price as a regular expression, for the schema.</summary>
    public const string Pattern = $"^{QuantityPattern.Number} *[A-Z]{{3}}$";

    public static bool TryRead(ReadOnlySpan<char> text, out Money money, out Misreading misreading)
    {
        money = default;
        text = text.Trim(QuantityText.Spaces);
        if (!NumberText.TryScan(text, out NumberText number))
        {
            misreading = new Misreading(null, text.Length == 0 ? null : "begin with the number");
            return false;
        }

        string code = text[number.Length..].Trim(QuantityText.Spaces).ToString();
        if (code is not [>= 'A' and <= 'Z', >= 'A' and <= 'Z', >= 'A' and <= 'Z'])
        {
            misreading = new Misreading(null, Hint(code));
            return false;
        }

        misreading = new Misreading($"a price from 0 to {Most:0} {code}", null);
        if (!number.TryValue(0, out double amount) || !(amount >= 0 && amount <= Most))
        {
            return false;
        }

        money = new Money(amount + 0.0, code);
        return true;
    }

    private static string Hint(string code) => code switch
    {
        "" => "a bare number could mean anything; add the three letters of the currency, such as EUR",
        [',', >= '0' and <= '9', ..] => "write a decimal point, not a comma",
        [_, _, _] when code.All(char.IsAsciiLetter) => $"write the currency in capitals: {code.ToUpperInvariant()}",
        _ => $"the currency is written in three letters, such as EUR, not {Text.Quoted.Text(code)}",
    };
}

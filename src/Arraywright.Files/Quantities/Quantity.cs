namespace Arraywright.Files.Quantities;

/// <summary>A kind of figure a plan may hold: its units and the range in which it can make sense.</summary>
/// <param name="Name">With its article: "a voltage".</param>
/// <param name="Example">As one writes it: "22.9 V".</param>
/// <param name="Min">Smallest sensible figure, in the library's unit.</param>
/// <param name="Max">Largest sensible figure, in the library's unit.</param>
/// <param name="Units">The units, the one to recommend first.</param>
internal sealed record Quantity(string Name, string Example, double Min, double Max, Unit[] Units)
{
    /// <summary>What to say to a unit that belongs to another quantity but is often met here; null for none.</summary>
    public (string Unit, string Hint)? OftenConfused { get; init; }

    /// <summary>True when a bare number will do.</summary>
    public bool MayBeBare => Units[0].Symbol.Length == 0 || Units[^1].Symbol.Length == 0;

    /// <summary>The units as a sentence lists them: "W or kW".</summary>
    public string UnitList
    {
        get
        {
            string[] shown = [.. Units.Where(static unit => unit is { IsVariant: false, Symbol.Length: > 0 }).Select(static unit => unit.Symbol)];
            return shown.Length < 2 ? string.Concat(shown) : string.Join(", ", shown[..^1]) + " or " + shown[^1];
        }
    }

    /// <summary>The range as a fault says it: "from 1 V to 2000 V".</summary>
    public string RangeText => $"from {Decimals.Shifted(Min, -Shown.Shift)}{Suffix} to {Decimals.Shifted(Max, -Shown.Shift)}{Suffix}";

    /// <summary>The same quantity with another range.</summary>
    public Quantity Within(double min, double max) => this with { Min = min, Max = max };

    private Unit Shown => Units[0];

    private string Suffix => Shown.Symbol.Length == 0 ? "" : " " + Shown.Symbol;
}

using Arraywright.Files.Quantities;

namespace Arraywright.Files.Keys;

/// <summary>Keys of a part that is owned or priced.</summary>
internal static class PartKeys
{
    public static readonly ChoiceKey Part = new(
        "part",
        ["cable", "connector", "branch connector", "fuse", "switch", "adapter", "watt meter"],
        "branch connector",
        "What it is: cable of one conductor, a connector pair, a branch connector of one pole, a fuse with its holder.")
    {
        Required = true,
    };

    public static readonly QuantityKey Size = new("size", QuantityKinds.Area, "4 mm2", "Of a cable, its cross-section.") { Otherwise = "any" };

    public static readonly CountKey Ways = new("ways", 2, 4, "2", "Of a branch connector, how many go into one.") { Otherwise = "any" };

    public static readonly QuantityKey Rating = new("rating", QuantityKinds.Current.Within(0.5, 100), "15 A", "Of a fuse, its rating.") { Otherwise = "any" };

    public static readonly CountKey Count = new("count", 1, 1000, "2", "How many are at hand.") { Otherwise = "1; cable goes by its length" };

    public static readonly QuantityKey Length = new("length", QuantityKinds.Length, "10 m", "Of a cable, metres of one conductor at hand.") { Otherwise = "needed for cable" };

    public static readonly PriceKey Price = new("price", "1.20 EUR", "Price of one, or of a metre of one conductor.") { Required = true };

    public static readonly PlanSection Owned = new("an owned part", [Part, Size, Ways, Rating, Count, Length]);

    public static readonly PlanSection Priced = new("a price of a part", [Part, Size, Ways, Rating, Price]);
}

namespace Arraywright.Files.Keys;

/// <summary>Keys of shade by the hour.</summary>
internal static class ShadeHoursKeys
{
    public static readonly HourKey From = new("from", "7:30", "Local clock hour at which the shade begins.") { Required = true };

    public static readonly HourKey To = new("to", "10:00", "Local clock hour at which it ends.") { Required = true };

    public static readonly QuantityKey Fraction = new("fraction", Quantities.QuantityKinds.Share, "60 %", "Share of the light kept off meanwhile.") { Required = true };

    public static readonly PlanSection Section = new("an hour of shade", [From, To, Fraction]);
}

/// <summary>Keys of shade on part of a panel.</summary>
internal static class ShadeGroupsKeys
{
    public static readonly SharesKey Groups = new("groups", "[80 %, 0 %]", "Share of the light kept off each bypassed group of cells, one a bypass diode.") { Required = true };

    public static readonly PlanSection Section = new("shade on part of a panel", [Groups]);
}

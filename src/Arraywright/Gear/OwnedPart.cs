namespace Arraywright.Gear;

/// <summary>What kind of part is owned or priced.</summary>
public enum PartKind
{
    /// <summary>Cable, by the metre of one conductor.</summary>
    Cable,

    /// <summary>A connector pair, plug and socket, to put on cable.</summary>
    Connector,

    /// <summary>A branch connector of one pole.</summary>
    BranchConnector,

    /// <summary>A string fuse with its in-line holder.</summary>
    Fuse,

    /// <summary>A two-pole load-break switch for direct current.</summary>
    Switch,

    /// <summary>An adapter into a unit's socket.</summary>
    Adapter,

    /// <summary>A watt meter for direct current.</summary>
    WattMeter,
}

/// <summary>Which parts are meant; null members mean any.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="AreaMm2">Of a cable, its cross-section, mm².</param>
/// <param name="Ways">Of a branch connector, how many go into one.</param>
/// <param name="RatingA">Of a fuse, its rating, A.</param>
public sealed record PartType(PartKind Kind, double? AreaMm2 = null, int? Ways = null, double? RatingA = null);

/// <summary>Parts that are at hand already.</summary>
/// <param name="Type">Which.</param>
/// <param name="Count">How many; 0 for cable.</param>
/// <param name="LengthM">Metres of cable; 0 for others.</param>
public sealed record OwnedPart(PartType Type, int Count, double LengthM);

/// <summary>What a part costs.</summary>
/// <param name="Type">Which.</param>
/// <param name="Price">Price of one, or of a metre of cable, in the plan's currency.</param>
public sealed record PartPrice(PartType Type, double Price);

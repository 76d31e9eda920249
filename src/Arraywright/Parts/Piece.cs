using System.Collections.Immutable;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Parts;

/// <summary>What a piece of the wiring is.</summary>
public enum PieceKind
{
    /// <summary>The lead that a panel comes with, one a pole.</summary>
    PanelLead,

    /// <summary>A string's own run to where strings join, one a pole.</summary>
    StringConductor,

    /// <summary>The fuse of a string, in its plus.</summary>
    StringFuse,

    /// <summary>A branch connector, two, three or four into one, one a pole.</summary>
    BranchConnector,

    /// <summary>The extension lead between the array and the run, one a pole.</summary>
    Extension,

    /// <summary>The load-break switch for direct current, both poles.</summary>
    Switch,

    /// <summary>The run to the unit, one a pole.</summary>
    Run,

    /// <summary>A watt meter in the run, both poles.</summary>
    WattMeter,

    /// <summary>The adapter from the run's connectors into the unit's own socket, both poles.</summary>
    Adapter,
}

/// <summary>Which pole a piece belongs to.</summary>
public enum Pole
{
    /// <summary>Plus.</summary>
    Plus,

    /// <summary>Minus.</summary>
    Minus,

    /// <summary>A piece that holds both.</summary>
    Both,
}

/// <summary>Where in the wiring tree a piece sits.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="Path">Which part of which part of the input's canonical wiring, each from 1; empty for the whole array.</param>
public readonly record struct PiecePlace(string Input, ImmutableArray<int> Path)
{
    /// <summary>Written with points: "store-a", "store-a/2" for its second string, "store-a/2.3" for that string's third part. Stable for one wiring.</summary>
    public string Id => Path.IsDefaultOrEmpty ? Input : $"{Input}/{string.Join('.', Path)}";

    /// <summary>Equal when input and path are.</summary>
    public bool Equals(PiecePlace other) => Input == other.Input && Path.AsSpan().SequenceEqual(other.Path.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => Id.GetHashCode(StringComparison.Ordinal);
}

/// <summary>One piece of the wiring, sized: what it must bear, what is chosen, what it costs in volts and energy.</summary>
public sealed record Piece
{
    /// <summary>What it is.</summary>
    public required PieceKind Kind { get; init; }

    /// <summary>Where it sits: the panel of a panel lead, the string of a string's run or fuse, the parallel of a branch connector, else the whole array.</summary>
    public required PiecePlace Place { get; init; }

    /// <summary>Its pole.</summary>
    public required Pole Pole { get; init; }

    /// <summary>Kind of panel of a panel lead; null otherwise.</summary>
    public string? Panel { get; init; }

    /// <summary>For a branch connector, how many go into one, 2 to 4; else 0.</summary>
    public int Ways { get; init; }

    /// <summary>For a branch connector, the branches of its parallel that it gathers, each from 1; else empty. One that gathers others lists all of theirs.</summary>
    public ImmutableArray<int> Gathers { get; init; } = [];

    /// <summary>The current it must be able to carry: short-circuit current in strong sun, with what may flow back, A.</summary>
    public required double DesignA { get; init; }

    /// <summary>The same by the labels alone, without the margin for strong sun, A; only for a panel lead, else null.</summary>
    public double? LabelA { get; init; }

    /// <summary>The voltage it must be able to bear: open circuit at the coldest, V.</summary>
    public required double VoltageV { get; init; }

    /// <summary>The rating that asks for, A; for a conductor its ampacity as laid.</summary>
    public required double NeededA { get; init; }

    /// <summary>The rating of what is chosen, A; for a conductor its ampacity as laid. Null where nothing is known of it, or nothing fits.</summary>
    public required double? RatingA { get; init; }

    /// <summary>Rating in volts that it needs at least, V: a class by which such parts are sold, or for a meter and an adapter the cold voltage in whole volts.</summary>
    public required double RatingV { get; init; }

    /// <summary>Room from what is needed to what is chosen, in % of what is needed; null where no rating is known.</summary>
    public double? MarginPercent => RatingA is { } ratingA && NeededA > 0 ? (ratingA - NeededA) / NeededA * 100 : null;

    /// <summary>Copper chosen or stated; null for a piece that is no conductor.</summary>
    public ConductorSize? Size { get; init; }

    /// <summary>One-way length of a conductor, m; null for others.</summary>
    public double? LengthM { get; init; }

    /// <summary>What the connectors at the ends of a conductor are rated for, A; null for others, or where nothing is known of it.</summary>
    public double? ConnectorA { get; init; }

    /// <summary>Connectors mated at this piece whose resistance is counted with it.</summary>
    public int Contacts { get; init; }

    /// <summary>Its copper and contacts, as the circuit has them, Ω.</summary>
    public required double Ohm { get; init; }

    /// <summary>What it carries under the conditions of <see cref="InputParts"/>, A.</summary>
    public required double CurrentA { get; init; }

    /// <summary>What it drops then, V.</summary>
    public double DropV => CurrentA * Ohm;

    /// <summary>The same in % of the volts at the input; 0 where nothing flows.</summary>
    public required double DropPercent { get; init; }

    /// <summary>What it turns into heat in a year, kWh; null where the place is not known.</summary>
    public required double? HeatKWh { get; init; }

    /// <summary>Price of this piece in the plan's currency; null when not stated.</summary>
    public double? Price { get; init; }

    /// <summary>What the rules say of it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>How it was sized, as a person would write it.</summary>
    public required string Working { get; init; }

    /// <summary>The standard, table or practice behind it.</summary>
    public required string Source { get; init; }
}

using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright.Parts;

/// <summary>The pieces of one input's array.</summary>
public sealed record InputParts
{
    /// <summary>Name of the input.</summary>
    public required string Input { get; init; }

    /// <summary>Its wiring in canonical form, which places refer to; null when nothing is connected.</summary>
    public required Wiring? Wiring { get; init; }

    /// <summary>Conditions of <see cref="Operating"/> and of every drop.</summary>
    public required Conditions Conditions { get; init; }

    /// <summary>What the input draws then.</summary>
    public required OperatingPoint Operating { get; init; }

    /// <summary>Every piece, from the panels to the unit.</summary>
    public required ImmutableArray<Piece> Pieces { get; init; }

    /// <summary>From the panels of the string that loses most to the input, V.</summary>
    public required double DropV { get; init; }

    /// <summary>The same in % of the volts at the input.</summary>
    public required double DropPercent { get; init; }

    /// <summary>Copper and contacts together, in a year, kWh; null where the place is not known.</summary>
    public required double? HeatKWh { get; init; }

    /// <summary>The pieces at one place.</summary>
    public IEnumerable<Piece> At(PiecePlace place) => Pieces.Where(piece => piece.Place == place);
}

/// <summary>Something to buy, or owned already.</summary>
/// <param name="What">As one would ask for it in a shop: "branch connector, 2 into 1".</param>
/// <param name="Rating">Least rating or size: "30 A, 600 V DC", "4 mm² (or 10 AWG)".</param>
/// <param name="Needed">Pieces needed; 0 for what goes by the metre.</param>
/// <param name="NeededM">Metres needed; null for what is counted.</param>
/// <param name="Owned">Pieces of these at hand.</param>
/// <param name="OwnedM">Metres of these at hand; null for what is counted.</param>
/// <param name="UnitPrice">Price of one piece or metre, in the plan's currency; null when not stated.</param>
public sealed record ShoppingLine(string What, string Rating, int Needed, double? NeededM, int Owned, double? OwnedM, double? UnitPrice)
{
    /// <summary>Pieces to buy.</summary>
    public int Buy => Math.Max(0, Needed - Owned);

    /// <summary>Metres to buy; null for what is counted.</summary>
    public double? BuyM => NeededM is { } neededM ? Math.Max(0, neededM - (OwnedM ?? 0)) : null;

    /// <summary>What that costs, in the plan's currency; null where no price is stated.</summary>
    public double? Price => UnitPrice * (BuyM ?? Buy);
}

/// <summary>Another way to build it.</summary>
/// <param name="What">"run in 6 mm²", "one string: no fuses, no branch connectors".</param>
/// <param name="Wirings">The wirings it has, in canonical text, one an input; empty for the same.</param>
/// <param name="ExtraPrice">What it costs more, in the plan's currency; null where prices are missing.</param>
/// <param name="GainKWh">What it brings more in a year, kWh; negative for less; null where the place is not known.</param>
/// <param name="GainPercent">The same in % of what the inputs take.</param>
public sealed record PartsAlternative(string What, ImmutableArray<string> Wirings, double? ExtraPrice, double? GainKWh, double GainPercent);

/// <summary>Everything between the panels and the units, sized: what to buy and what each piece must bear.</summary>
public sealed record PartsList
{
    /// <summary>The plan, its cable sized.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The wiring: the stated one, or the best.</summary>
    public required Design Design { get; init; }

    /// <summary>After whose rules.</summary>
    public required RuleSet Rules { get; init; }

    /// <summary>One entry an input, in plan order.</summary>
    public required ImmutableArray<InputParts> Inputs { get; init; }

    /// <summary>What to buy, cables first; empty where the verdict is stop.</summary>
    public required ImmutableArray<ShoppingLine> Shopping { get; init; }

    /// <summary>Other ways worth knowing of; none where the verdict is stop.</summary>
    public required ImmutableArray<PartsAlternative> Alternatives { get; init; }

    /// <summary>Everything filled in.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The usual cautions, and those about parts.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Every piece of every input.</summary>
    public IEnumerable<Piece> Pieces => Inputs.SelectMany(input => input.Pieces);

    /// <summary>The worst that is said of the wiring and of the parts, or worse where a label is in doubt.</summary>
    public Level Verdict => Plan.Doubted(Pieces.SelectMany(piece => piece.Findings).Select(finding => finding.Level).Append(Design.Verdict).Max());
}

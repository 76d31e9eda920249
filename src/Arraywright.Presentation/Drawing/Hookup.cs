using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Parts;

namespace Arraywright.Presentation.Drawing;

/// <summary>A place where two leads are plugged into each other.</summary>
/// <param name="Number">Its place in the order of connecting, from 1.</param>
/// <param name="From">What is plugged, such as "minus of panel 1".</param>
/// <param name="Into">Where it goes, such as "plus of panel 2".</param>
public sealed record Joint(int Number, string From, string Into);

/// <summary>Something on the way of a current that is no panel: a fuse, a cable, a switch, a branch connector, the unit's socket.</summary>
/// <param name="Kind">What it is; null for the unit's socket.</param>
/// <param name="Name">In a word or two: "fuse", "run".</param>
/// <param name="Figures">Its size, length or rating, a line each; may be empty.</param>
/// <param name="Short">The chief of them, for where there is little room.</param>
public sealed record Element(PieceKind? Kind, string Name, ImmutableArray<string> Figures, ImmutableArray<string> Short)
{
    /// <summary>The amps it must bear, by which a key is in order; 0 for a cable.</summary>
    public double NeededA { get; init; }

    /// <summary>Name and figures in one line.</summary>
    public string InFull => Figures.IsEmpty ? Name : $"{Name}, {string.Join(", ", Figures)}";
}

/// <summary>A joint and what follows it, on the way outwards from the panels.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Element">What it leads into.</param>
public sealed record Step(Joint Joint, Element Element);

/// <summary>A joint of each pole and what follows them, on the way from the array to the unit.</summary>
/// <param name="Plus">The joint of plus.</param>
/// <param name="Minus">That of minus; the same where one plug holds both.</param>
/// <param name="Element">What both lead into.</param>
public sealed record PairStep(Joint Plus, Joint Minus, Element Element);

/// <summary>A part of an array as it is plugged together, in the wiring's order.</summary>
public abstract record HookupPart
{
    private HookupPart()
    {
    }

    /// <summary>A panel.</summary>
    /// <param name="Number">Its number in the drawing, from 1.</param>
    /// <param name="Name">Name of its kind.</param>
    public sealed record Panel(int Number, string Name) : HookupPart;

    /// <summary>Parts in series, from plus to minus.</summary>
    /// <param name="Parts">The parts, at least two.</param>
    /// <param name="Joints">Minus of each part into plus of the next.</param>
    public sealed record Row(ImmutableArray<HookupPart> Parts, ImmutableArray<Joint> Joints) : HookupPart;

    /// <summary>Parts in parallel.</summary>
    /// <param name="Branches">The parts, at least two, with what belongs to each alone.</param>
    /// <param name="Plus">What joins them at plus.</param>
    /// <param name="Minus">What joins them at minus.</param>
    public sealed record Block(ImmutableArray<Branch> Branches, Connector Plus, Connector Minus) : HookupPart;
}

/// <summary>A part and what hangs on its two ends before it is joined to others.</summary>
/// <param name="Part">The part.</param>
/// <param name="Plus">From its plus outwards.</param>
/// <param name="Minus">From its minus outwards.</param>
public sealed record Branch(HookupPart Part, ImmutableArray<Step> Plus, ImmutableArray<Step> Minus);

/// <summary>A branch connector, which may gather others.</summary>
/// <param name="Element">Its name and rating.</param>
/// <param name="Legs">What goes into it, in the order of the branches.</param>
public sealed record Connector(Element Element, ImmutableArray<Leg> Legs)
{
    /// <summary>The joint at which each branch goes in, into this one or one that goes into it.</summary>
    internal IEnumerable<KeyValuePair<int, Joint>> AtBranches =>
        Legs.SelectMany(leg => leg.Inner is { } inner ? inner.AtBranches : [new(leg.Branch, leg.Joint)]);
}

/// <summary>What goes into a branch connector.</summary>
/// <param name="Joint">Where it goes in.</param>
/// <param name="Branch">The branch, from 0; −1 where another connector goes in.</param>
/// <param name="Inner">The other connector; null for a branch.</param>
public sealed record Leg(Joint Joint, int Branch, Connector? Inner);

/// <summary>The array of one input as it is plugged together: panels, pieces and joints, which both drawings show and a report tells step by step.</summary>
public sealed record Hookup
{
    /// <summary>The input and what is wired to it, judged and computed.</summary>
    public required Assignment Assignment { get; init; }

    /// <summary>The worst that is said of the wiring of this input and of its pieces.</summary>
    public required Level Verdict { get; init; }

    /// <summary>Name of the unit that the input belongs to; null when it stands alone.</summary>
    public required string? Unit { get; init; }

    /// <summary>The panels, with what their string has of its own.</summary>
    public required Branch Array { get; init; }

    /// <summary>From the array to the unit's socket, the last.</summary>
    public required ImmutableArray<PairStep> Trunk { get; init; }

    /// <summary>Every joint in the order of connecting: within each string first, then what joins strings, then towards the unit, whose socket is last.</summary>
    public required ImmutableArray<Joint> Joints { get; init; }

    /// <summary>Every branch connector.</summary>
    public IEnumerable<Element> Connectors => Blocks(Array.Part).SelectMany(block => All(block.Plus).Concat(All(block.Minus)));

    /// <summary>What branches have of their own: fuses and cables.</summary>
    public IEnumerable<Element> Own =>
        Blocks(Array.Part).SelectMany(block => block.Branches).Prepend(Array).SelectMany(branch => branch.Plus.Concat(branch.Minus)).Select(step => step.Element);

    /// <summary>Whether any parts are in series.</summary>
    internal bool HasRow => IsOrHasRow(Array.Part);

    private static bool IsOrHasRow(HookupPart part) => part is HookupPart.Row || (part is HookupPart.Block block && block.Branches.Any(branch => IsOrHasRow(branch.Part)));

    /// <summary>Every place where parts are joined in parallel.</summary>
    internal static IEnumerable<HookupPart.Block> Blocks(HookupPart part) => part switch
    {
        HookupPart.Row row => row.Parts.SelectMany(Blocks),
        HookupPart.Block block => block.Branches.SelectMany(branch => Blocks(branch.Part)).Prepend(block),
        _ => [],
    };

    /// <summary>A connector and those that go into it.</summary>
    internal static IEnumerable<Element> All(Connector connector) =>
        connector.Legs.Select(leg => leg.Inner).OfType<Connector>().SelectMany(All).Append(connector.Element);
}

using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Parts.Connecting;

/// <summary>An input that something is wired to, with the pieces between.</summary>
/// <param name="Input">The input.</param>
/// <param name="Assignment">Its wiring, judged; not null.</param>
/// <param name="Pieces">The pieces of the parts list.</param>
internal sealed record ConnectedInput(DcInput Input, Assignment Assignment, ImmutableArray<Piece> Pieces)
{
    /// <summary>Its name.</summary>
    public string Name => Input.Name;

    /// <summary>The wiring.</summary>
    public Wiring Wiring => Assignment.Wiring!;

    /// <summary>What is switched on and off, as the rest of a sentence.</summary>
    public string Unit => Input.Unit ?? $"the unit of {Name}";

    /// <summary>Whether its strings have fuses.</summary>
    public bool HasFuses => Pieces.Any(piece => piece.Kind == PieceKind.StringFuse);

    /// <summary>The branch connectors of plus that join its strings; minus has as many.</summary>
    public ImmutableArray<Piece> BetweenStrings => [.. Plus.Where(piece => piece.Place.Path.IsEmpty)];

    /// <summary>The branch connectors of plus within its strings; minus has as many.</summary>
    public ImmutableArray<Piece> WithinStrings => [.. Plus.Where(piece => !piece.Place.Path.IsEmpty)];

    private IEnumerable<Piece> Plus => Pieces.Where(piece => piece is { Kind: PieceKind.BranchConnector, Pole: Pole.Plus });
}

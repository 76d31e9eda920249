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
}

using System.Collections.Immutable;
using Arraywright.Gear;

namespace Arraywright.Parts;

/// <summary>Draws pieces together into a list for the shop, and takes off what is at hand.</summary>
internal sealed class Shopping(PriceList prices)
{
    private static readonly PieceKind[] Conductors = [PieceKind.StringConductor, PieceKind.Extension, PieceKind.Run];

    private readonly ImmutableArray<ShoppingLine>.Builder _lines = ImmutableArray.CreateBuilder<ShoppingLine>();

    /// <summary>What is at hand and already counted for a line.</summary>
    private readonly Dictionary<PartType, int> _taken = [];

    /// <summary>The list: cable, connectors, branch connectors, fuses, switches, meters, adapters. Panel leads come with the panels.</summary>
    public ImmutableArray<ShoppingLine> Of(IReadOnlyList<Piece> pieces)
    {
        _lines.Clear();
        _taken.Clear();
        foreach (IGrouping<ConductorSize, Piece> cable in pieces.Where(piece => Conductors.Contains(piece.Kind) && piece.LengthM > 0).GroupBy(piece => piece.Size!).OrderByDescending(group => group.Key.AreaMm2))
        {
            PartType part = new(PartKind.Cable, AreaMm2: cable.Key.AreaMm2);
            double neededM = cable.Sum(piece => piece.LengthM!.Value);
            _lines.Add(new ShoppingLine("solar cable, one conductor", cable.Key.BothNames, 0, neededM, 0, Math.Min(neededM, prices.OwnedM(part)), prices.Of(part)));
        }

        foreach (Piece[] alike in Alike(pieces.Where(piece => Conductors.Contains(piece.Kind) && piece.LengthM > 0), ConnectorRating))
        {
            Count("connector pair, plug and socket", alike, ConnectorRating(alike[0]), new PartType(PartKind.Connector));
        }

        foreach (Piece[] alike in Alike(Kind(pieces, PieceKind.BranchConnector).OrderBy(piece => piece.Ways), Rating))
        {
            Count($"branch connector, {PieceWords.IntoOne(alike[0].Ways)}, half for plus, half for minus", alike, Rating(alike[0]), new PartType(PartKind.BranchConnector, Ways: alike[0].Ways));
        }

        foreach (Piece[] alike in Alike(Kind(pieces, PieceKind.StringFuse), FuseRating))
        {
            Count("string fuse gPV with in-line holder", alike, FuseRating(alike[0]), new PartType(PartKind.Fuse, RatingA: alike[0].RatingA));
        }

        CountAll("DC switch, two poles", PieceKind.Switch, PartKind.Switch);
        CountAll("watt meter for direct current", PieceKind.WattMeter, PartKind.WattMeter);
        CountAll("adapter to the unit's socket", PieceKind.Adapter, PartKind.Adapter);
        return _lines.ToImmutable();

        void CountAll(string what, PieceKind kind, PartKind part)
        {
            foreach (Piece[] alike in Alike(Kind(pieces, kind), Rating))
            {
                Count(what, alike, Rating(alike[0]), new PartType(part));
            }
        }
    }

    private static IEnumerable<Piece> Kind(IReadOnlyList<Piece> pieces, PieceKind kind) => pieces.Where(piece => piece.Kind == kind);

    /// <summary>Pieces of one rating are one line, the weakest first: of what is at hand nobody knows the rating, and there it does least harm.</summary>
    private static IEnumerable<Piece[]> Alike(IEnumerable<Piece> pieces, Func<Piece, string> rating) =>
        pieces.GroupBy(piece => (piece.Ways, Rating: rating(piece))).OrderBy(group => group.Key.Ways).ThenBy(group => group.Min(piece => piece.RatingA ?? piece.NeededA)).Select(group => group.ToArray());

    private void Count(string what, Piece[] pieces, string rating, PartType part)
    {
        int taken = _taken.GetValueOrDefault(part);
        int owned = Math.Min(pieces.Length, prices.Owned(part) - taken);
        _taken[part] = taken + owned;
        _lines.Add(new ShoppingLine(what, rating, pieces.Length, null, owned, null, prices.Of(part)));
    }

    private static string Rating(Piece piece) => $"{PieceWords.Amps(piece)}, {PieceWords.Volts(piece)}";

    private static string FuseRating(Piece piece) => piece.RatingA is null ? PieceWords.Amps(piece) : $"{PieceWords.Amps(piece)}, at least {PieceWords.Volts(piece)}";

    private static string ConnectorRating(Piece piece) => $"{PieceWords.AtLeastAmps(piece.ConnectorA, piece.DesignA)}, {PieceWords.Volts(piece)}";
}

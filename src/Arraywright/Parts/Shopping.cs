using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Gear;

namespace Arraywright.Parts;

/// <summary>Draws pieces together into a list for the shop, and takes off what is at hand.</summary>
internal sealed class Shopping(PriceList prices)
{
    private static readonly PieceKind[] Conductors = [PieceKind.StringConductor, PieceKind.Extension, PieceKind.Run];

    private readonly ImmutableArray<ShoppingLine>.Builder _lines = ImmutableArray.CreateBuilder<ShoppingLine>();

    /// <summary>The list: cable, connectors, branch connectors, fuses, switches, meters, adapters. Panel leads come with the panels.</summary>
    public ImmutableArray<ShoppingLine> Of(IReadOnlyList<Piece> pieces)
    {
        _lines.Clear();
        foreach (IGrouping<ConductorSize, Piece> cable in pieces.Where(piece => Conductors.Contains(piece.Kind) && piece.LengthM > 0).GroupBy(piece => piece.Size!).OrderByDescending(group => group.Key.AreaMm2))
        {
            PartType part = new(PartKind.Cable, AreaMm2: cable.Key.AreaMm2);
            double neededM = cable.Sum(piece => piece.LengthM!.Value);
            _lines.Add(new ShoppingLine("solar cable, one conductor", cable.Key.BothNames, 0, neededM, 0, Math.Min(neededM, prices.OwnedM(part)), prices.Of(part)));
        }

        Piece[] cut = [.. pieces.Where(piece => Conductors.Contains(piece.Kind) && piece.LengthM > 0)];
        Count("connector pair, plug and socket", cut, static piece => Rating(piece.DesignA, piece.RatingV), new PartType(PartKind.Connector));
        foreach (IGrouping<int, Piece> branch in Kind(pieces, PieceKind.BranchConnector).GroupBy(piece => piece.Ways).OrderBy(group => group.Key))
        {
            Count($"branch connector, {PieceWords.IntoOne(branch.Key)}, half for plus, half for minus", [.. branch], static piece => Rating(piece.DesignA, piece.RatingV), new PartType(PartKind.BranchConnector, Ways: branch.Key));
        }

        foreach (IGrouping<double?, Piece> fuse in Kind(pieces, PieceKind.StringFuse).GroupBy(piece => piece.RatingA).OrderBy(group => group.Key))
        {
            Count("string fuse gPV with in-line holder", [.. fuse], static piece => piece.RatingA is { } ratingA ? Exactly(ratingA, piece.RatingV) : "no standard size fits", new PartType(PartKind.Fuse, RatingA: fuse.Key));
        }

        Count("DC switch, two poles", Kind(pieces, PieceKind.Switch), static piece => Rating(piece.RatingA ?? piece.NeededA, piece.RatingV), new PartType(PartKind.Switch));
        Count("watt meter for direct current", Kind(pieces, PieceKind.WattMeter), static piece => Rating(piece.NeededA, piece.VoltageV), new PartType(PartKind.WattMeter));
        Count("adapter to the unit's socket", Kind(pieces, PieceKind.Adapter), static piece => Rating(piece.NeededA, piece.VoltageV), new PartType(PartKind.Adapter));
        return _lines.ToImmutable();
    }

    private static Piece[] Kind(IReadOnlyList<Piece> pieces, PieceKind kind) => [.. pieces.Where(piece => piece.Kind == kind)];

    private void Count(string what, Piece[] pieces, Func<Piece, string> rating, PartType part)
    {
        if (pieces.Length > 0)
        {
            int owned = Math.Min(pieces.Length, prices.Owned(part));
            _lines.Add(new ShoppingLine(what, rating(pieces.MaxBy(piece => piece.DesignA)!), pieces.Length, null, owned, null, prices.Of(part)));
        }
    }

    private static string Rating(double leastA, double leastV) => $"at least {Amps(leastA)}, {Volts(leastV)}";

    private static string Exactly(double ratingA, double leastV) => $"{Amps(ratingA)}, at least {Volts(leastV)}";

    /// <summary>Rounded up to a tenth: a shop does not sell hundredths, and less would not do.</summary>
    private static string Amps(double a) => (Math.Ceiling((a * 10) - 1e-6) / 10).ToString("0.#", CultureInfo.InvariantCulture) + " A";

    private static string Volts(double v) => Math.Ceiling(v - 1e-9).ToString("0", CultureInfo.InvariantCulture) + " V DC";
}

using System.Globalization;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts;

/// <summary>What pieces are called, the same everywhere.</summary>
public static class PieceWords
{
    /// <summary>A kind of piece as one would ask for it.</summary>
    public static string Name(PieceKind kind) => kind switch
    {
        PieceKind.PanelLead => "panel lead",
        PieceKind.StringConductor => "string cable",
        PieceKind.StringFuse => "string fuse",
        PieceKind.BranchConnector => "branch connector",
        PieceKind.Extension => "extension lead",
        PieceKind.Switch => "DC switch",
        PieceKind.Run => "cable to the unit",
        PieceKind.WattMeter => "watt meter",
        _ => "adapter to the unit's socket",
    };

    /// <summary>How many go into one: "2 into 1".</summary>
    public static string IntoOne(int ways) => $"{ways} into 1";

    /// <summary>The amps to look for on a piece that is bought by its rating: a fuse's own size, of all else the least that will do. The drawing, the table and the shopping list all say this.</summary>
    public static string Amps(Piece piece) => piece switch
    {
        { Kind: PieceKind.StringFuse, RatingA: null } => "no standard size fits",
        { Kind: PieceKind.StringFuse, RatingA: { } sizeA } => Figures.Label(sizeA, "A"),
        _ => AtLeastAmps(piece.RatingA, piece.NeededA),
    };

    /// <summary>The volts to look for on it, for direct current.</summary>
    public static string Volts(Piece piece) => $"{UpToTenths(piece.RatingV, "V")} DC";

    /// <summary>What is rated so, where that is enough; else what is needed.</summary>
    internal static string AtLeastAmps(double? ratingA, double neededA) => $"at least {UpToTenths(ratingA >= neededA ? ratingA.Value : neededA, "A")}";

    /// <summary>A least figure is rounded up: a shop does not sell hundredths, and less would not do.</summary>
    private static string UpToTenths(double value, string unit) =>
        $"{(Math.Ceiling((value * 10) - 1e-6) / 10).ToString("0.#", CultureInfo.InvariantCulture)} {unit}";
}

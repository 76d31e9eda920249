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
}

namespace Arraywright.Files.Keys;

/// <summary>How much a plan may hold.</summary>
internal static class Caps
{
    /// <summary>Panels of all kinds together.</summary>
    public const int Panels = 200;

    /// <summary>Kinds of panel that might be bought.</summary>
    public const int Candidates = 20;

    /// <summary>Inputs, and units.</summary>
    public const int Inputs = 16;

    /// <summary>Points of a horizon.</summary>
    public const int HorizonPoints = 72;

    /// <summary>Kinds of part owned, and priced.</summary>
    public const int Parts = 50;

    /// <summary>Characters of a name.</summary>
    public const int NameLength = 40;
}

namespace Arraywright.Fonts;

/// <summary>The font Inter (SIL Open Font License 1.1), in two weights: Latin, Greek and Cyrillic.</summary>
internal static class InterFont
{
    /// <summary>Name of the ordinary weight.</summary>
    public const string Regular = "Inter-Regular.ttf";

    /// <summary>Name of the heavy weight.</summary>
    public const string Bold = "Inter-Bold.ttf";

    /// <summary>Opens one of the two.</summary>
    public static Stream Open(string name) => typeof(InterFont).Assembly.GetManifestResourceStream(name)
        ?? throw new ArgumentException($"There is no font \"{name}\".", nameof(name));
}

namespace Arraywright.Page.Tests;

/// <summary>What a screen says, with its spaces and line ends made alike.</summary>
internal static class Said
{
    public static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace(": :", ":", StringComparison.Ordinal);
}

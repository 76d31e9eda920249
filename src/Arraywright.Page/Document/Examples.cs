using System.Reflection;

namespace Arraywright.Page.Document;

/// <summary>The examples, as the command has them.</summary>
internal static class Examples
{
    private const string Folder = "examples/";

    /// <summary>Every example: its name, its title, its text.</summary>
    public static IReadOnlyList<(string Name, string Title, string Text)> All { get; } =
    [
        .. Resources.Names.Where(name => name.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(name => (Name: Path.GetFileNameWithoutExtension(name), Text: Resources.Text(name)))
            .Select(example => (example.Name, TitleOf(example.Text) ?? example.Name, example.Text)),
    ];

    private static string? TitleOf(string text) =>
        text.Split('\n').FirstOrDefault(line => line.StartsWith("plan:", StringComparison.Ordinal))?[5..].Trim().Trim('"');
}

/// <summary>Files that came with the page itself.</summary>
internal static class Resources
{
    public static IReadOnlyList<string> Names { get; } = Assembly.GetExecutingAssembly().GetManifestResourceNames();

    public static string Text(string name)
    {
        using StreamReader reader = new(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}

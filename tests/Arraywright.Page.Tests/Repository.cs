using System.Runtime.CompilerServices;

namespace Arraywright.Page.Tests;

/// <summary>Where things are in the repository.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    /// <summary>The page as ./test publishes it.</summary>
    public static string PublishedPage { get; } = Path.Combine(Root, "artifacts", "page", "wwwroot");

    public static string Screens { get; } = Path.Combine(Root, "artifacts", "screens");

    /// <summary>Names of the examples.</summary>
    public static IEnumerable<string> Examples => Directory.EnumerateFiles(Path.Combine(Root, "examples"), "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal);

    public static string ExamplePath(string name) => Path.Combine(Root, "examples", name + ".yaml");

    public static string Example(string name) => File.ReadAllText(ExamplePath(name));

    /// <summary>Writes down a figure that was measured, for ./test to print.</summary>
    public static void Pace(string line)
    {
        Directory.CreateDirectory(Screens);
        File.AppendAllLines(Path.Combine(Screens, "pace.txt"), [line]);
    }

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}

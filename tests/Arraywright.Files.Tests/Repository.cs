namespace Arraywright.Files.Tests;

/// <summary>Files of the repository itself, found from where the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string[] Examples { get; } = [.. Directory.GetFiles(Path.Combine(Root, "examples"), "*.yaml").Order(StringComparer.Ordinal)];

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Arraywright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}

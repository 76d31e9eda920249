using System.Runtime.CompilerServices;

namespace Arraywright.Testing;

/// <summary>Compares text with a file kept beside the tests under Golden/. Rewritten only with ARRAYWRIGHT_GOLDEN=write, then read in review.</summary>
internal static class Golden
{
    /// <summary>True when golden files are to be written instead of compared.</summary>
    public static bool Writing { get; } = Environment.GetEnvironmentVariable("ARRAYWRIGHT_GOLDEN") == "write";

    /// <summary>Passes when <paramref name="actual"/> is byte for byte the golden file of this name.</summary>
    public static void Matches(string name, string actual, [CallerFilePath] string testFile = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(testFile)!, "Golden", name);
        if (Writing)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
            return;
        }

        Assert.True(File.Exists(path), $"Golden file {name} is missing; run once with ARRAYWRIGHT_GOLDEN=write and read what it wrote.");
        Assert.Equal(File.ReadAllText(path), actual);
    }
}

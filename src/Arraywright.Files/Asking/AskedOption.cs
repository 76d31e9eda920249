namespace Arraywright.Files.Asking;

/// <summary>An option of a question that has a value: how the value is written, and how its text is read.</summary>
/// <typeparam name="T">What the text stands for.</typeparam>
/// <param name="Name">Its name, without the hyphens of the command line.</param>
/// <param name="ValueName">What stands for the value in help: a unit or a pattern.</param>
/// <param name="About">What it means, as the help of the command says it.</param>
/// <param name="Expected">What was expected where the text is something else.</param>
/// <param name="Read">The value; null for a text that is none.</param>
public sealed record AskedOption<T>(string Name, string ValueName, string About, string Expected, Func<string, T?> Read)
    where T : struct
{
    /// <summary>What is wrong with a text, without the option's name.</summary>
    public string Refused(string text) => $"found \"{text}\"; expected {Expected}";
}

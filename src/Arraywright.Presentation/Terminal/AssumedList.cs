namespace Arraywright.Presentation.Terminal;

/// <summary>What the plan left out and what was taken instead.</summary>
public static class AssumedList
{
    /// <summary>Writes one entry an assumption: what, its value, and why.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Assumption> assumed, TerminalStyle style)
    {
        if (assumed.Count == 0)
        {
            writer.WriteLine("  Nothing: the plan states everything that was needed.");
        }

        foreach (Assumption assumption in assumed)
        {
            TextFlow.Write(writer, "  · ", $"{assumption.What}: {assumption.Value}. {Sentence(assumption.Why)}", style.Width);
        }
    }

    /// <summary>A reason as a sentence of its own.</summary>
    internal static string Sentence(string why)
    {
        string text = why.Length == 0 ? why : char.ToUpperInvariant(why[0]) + why[1..];
        return text.Length == 0 || text.EndsWith('.') ? text : text + ".";
    }
}

using Arraywright.Files.Text;

namespace Arraywright.Files;

/// <summary>The text of a plan file's bytes, as <see cref="PlanFile.ReadBytes"/> takes it: for whoever keeps the text too.</summary>
public static class PlanText
{
    /// <summary>Decodes UTF-8, with or without a byte-order mark, at most 1 MiB.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="fileName">Name that faults show.</param>
    /// <param name="faults">Why there is no text; empty when there is one.</param>
    /// <returns>Null when it is no text.</returns>
    public static string? Decode(ReadOnlyMemory<byte> bytes, string fileName, out IReadOnlyList<Fault> faults)
    {
        FaultList found = new(fileName);
        string? text = null;
        if (bytes.Length > FileBytes.Most)
        {
            FileBytes.AddTooLarge(found);
        }
        else
        {
            text = TextDecoding.Decode(bytes.Span, found);
        }

        faults = found.InFileOrder();
        return text;
    }
}

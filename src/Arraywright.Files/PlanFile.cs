using Arraywright.Files.Plans;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files;

/// <summary>Reads a plan file: a <see cref="Plan"/>, or every fault of the file with its place. Never throws for what a file holds.</summary>
public static class PlanFile
{
    /// <summary>Reads the file at a path, or standard input for "-".</summary>
    /// <returns>A missing, unreadable or too large file, and a directory, are faults too (at 1:1).</returns>
    public static PlanReading Load(string path)
    {
        string name = path == "-" ? "standard input" : path;
        FaultList faults = new(name);
        return FileBytes.Read(path, faults) is { } bytes ? ReadBytes(bytes, name) : new PlanReading(null, faults.InFileOrder());
    }

    /// <summary>Reads the bytes of a file: UTF-8, with or without a byte-order mark, any line ends, at most 1 MiB.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="fileName">Name that faults show.</param>
    /// <param name="mayNameFiles">False for a plan from somebody else, which must not choose the files that are read here: naming one is then a fault.</param>
    public static PlanReading ReadBytes(ReadOnlyMemory<byte> bytes, string fileName, bool mayNameFiles = true)
    {
        FaultList faults = new(fileName);
        if (bytes.Length > FileBytes.Most)
        {
            FileBytes.AddTooLarge(faults);
            return new PlanReading(null, faults.InFileOrder());
        }

        return TextDecoding.Decode(bytes.Span, faults) is { } text ? Read(text, fileName, mayNameFiles) : new PlanReading(null, faults.InFileOrder());
    }

    /// <summary>Reads the text of a plan.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="fileName">Name that faults show.</param>
    /// <param name="mayNameFiles">False for a plan from somebody else; see <see cref="ReadBytes"/>.</param>
    public static PlanReading Read(string text, string fileName, bool mayNameFiles = true)
    {
        FaultList faults = new(fileName);
        Plan? plan = null;
        if (text.Length > FileBytes.Most)
        {
            FileBytes.AddTooLarge(faults);
        }
        else if (TextCheck.Clean(text, faults) is { } clean && new YamlTreeReader(clean, faults).Read() is { } root)
        {
            plan = new PlanBuilder(faults, mayNameFiles).Build(root, fileName);
        }

        return new PlanReading(faults.Count == 0 ? plan : null, faults.InFileOrder());
    }
}

namespace Arraywright.Bench;

/// <summary>What the figures were measured on.</summary>
internal static class Machine
{
    /// <summary>The processor's name, where the system tells.</summary>
    public static string Processor()
    {
        const string Info = "/proc/cpuinfo";
        string? line = File.Exists(Info) ? File.ReadLines(Info).FirstOrDefault(text => text.StartsWith("model name", StringComparison.Ordinal)) : null;
        return line?[(line.IndexOf(':') + 1)..].Trim() ?? "unnamed processor";
    }
}

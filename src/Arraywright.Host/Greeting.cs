namespace Arraywright.Host;

/// <summary>What whoever starts the host is told.</summary>
internal static class Greeting
{
    /// <summary>Where it is, how to end it, and what to mind.</summary>
    public static void Print(TextWriter writer, HostSettings settings, Uri address)
    {
        writer.WriteLine($"Arraywright is at {address} - Ctrl-C ends it.");
        if (!settings.IsLoopback)
        {
            writer.WriteLine("Everybody who reaches this machine may ask. Nothing is encrypted and nothing");
            writer.WriteLine("asks for a password: put a proxy in front, see docs/hosting.md.");
        }
    }
}

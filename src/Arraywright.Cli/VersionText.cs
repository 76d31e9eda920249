using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace Arraywright.Cli;

/// <summary>Prints the version.</summary>
internal sealed class VersionText(Host host) : SynchronousCommandLineAction
{
    /// <summary>Name and version as one reports them.</summary>
    public static string Line { get; } = $"arraywright {Assembly.GetExecutingAssembly().GetName().Version?.ToString(3)}";

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        host.Print(Line + "\n");
        return ExitCode.Done;
    }
}

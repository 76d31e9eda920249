using System.CommandLine;
using System.CommandLine.Invocation;
using Arraywright.Presentation;

namespace Arraywright.Cli;

/// <summary>Prints the version.</summary>
internal sealed class VersionText(Host host) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        host.Print(ProgramVersion.Line + "\n");
        return ExitCode.Done;
    }
}

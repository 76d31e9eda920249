using System.Runtime.InteropServices;
using Arraywright.Presentation;

namespace Arraywright.Cli;

/// <summary>Tells of a failure that is not the user's: short, and with what to report.</summary>
internal static class Failure
{
    /// <summary>Prints it.</summary>
    public static int Print(Exception failure, Host host)
    {
        host.Error.WriteLine("arraywright: something failed inside, and not by your doing. Trust no figure of this run.");
        host.Error.WriteLine($"  {failure.GetType().Name}: {failure.Message}");
        host.Error.WriteLine($"  {ProgramVersion.Line} on {RuntimeInformation.RuntimeIdentifier}");
        host.Error.WriteLine("Please report these lines with the command line and the plan file.");
        if (host.Trace)
        {
            host.Error.WriteLine(failure.ToString());
        }
        else
        {
            host.Error.WriteLine("With ARRAYWRIGHT_TRACE=1 it also prints where in the program.");
        }

        return ExitCode.Failed;
    }
}

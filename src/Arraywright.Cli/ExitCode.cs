using Arraywright.Limits;

namespace Arraywright.Cli;

/// <summary>What the command tells a script when it ends.</summary>
internal static class ExitCode
{
    /// <summary>Done, and nothing stops it.</summary>
    public const int Done = 0;

    /// <summary>Done, and the verdict is stop.</summary>
    public const int Stopped = 1;

    /// <summary>The input is wrong.</summary>
    public const int WrongInput = 2;

    /// <summary>An internal failure.</summary>
    public const int Failed = 3;

    /// <summary>Ended by Ctrl-C: 128 and the number of the signal, as shells have it.</summary>
    public const int Interrupted = 130;

    /// <summary>The code for a verdict; a question is not a failure.</summary>
    public static int For(Level verdict) => verdict == Level.Stop ? Stopped : Done;
}

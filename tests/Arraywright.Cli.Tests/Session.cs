namespace Arraywright.Cli.Tests;

/// <summary>Runs the command inside the test, as a script would see it: no terminal, two streams, an exit status.</summary>
internal static class Session
{
    /// <summary>Runs one command line.</summary>
    public static (int Exit, string Output, string Error) Run(params string[] args)
    {
        StringWriter output = new() { NewLine = "\n" };
        StringWriter error = new() { NewLine = "\n" };
        using Host host = new() { Output = output, Error = error };
        int exit = CommandLine.Run(args, host);
        return (exit, output.ToString(), error.ToString());
    }
}

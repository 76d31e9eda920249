using System.Runtime.InteropServices;
using System.Text;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli;

/// <summary>What the command sees of the machine: two streams, whether they are terminals, a few settings, and Ctrl-C.</summary>
internal sealed class Host : IDisposable
{
    /// <summary>What is said on Ctrl-C.</summary>
    public const string Stopped = "arraywright: stopped.";

    /// <summary>What is said on Ctrl-C when there is something to show.</summary>
    public const string StoppedEarly = "arraywright: stopped early; what is shown is the best so far.";

    private const int BrokenPipe = 32;
    private static readonly TimeSpan PatienceAfterInterrupt = TimeSpan.FromMilliseconds(700);

    private readonly CancellationTokenSource _interrupt = new();
    private PosixSignalRegistration? _signal;

    /// <summary>Standard output: results, and nothing else.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Standard error: faults, notes, progress.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>True when standard output is a terminal that may be coloured.</summary>
    public bool OutputTakesColor { get; init; }

    /// <summary>True when standard error is a terminal, so that a bar may move on it.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>True when a stack trace is wanted on an internal failure.</summary>
    public bool Trace { get; init; }

    /// <summary>Set by Ctrl-C.</summary>
    public CancellationToken Interrupted => _interrupt.Token;

    /// <summary>The streams and settings of this process.</summary>
    public static Host OfThisProcess()
    {
        UTF8Encoding utf8 = new(encoderShouldEmitUTF8Identifier: false);
        return new Host
        {
            Output = new StreamWriter(Console.OpenStandardOutput(), utf8, 16384) { NewLine = "\n" },
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true },
            OutputTakesColor = !Console.IsOutputRedirected && Setting("NO_COLOR") is null && Setting("TERM") != "dumb",
            ErrorIsTerminal = !Console.IsErrorRedirected && Setting("TERM") != "dumb",
            Trace = Setting("ARRAYWRIGHT_TRACE") is not null,
        };
    }

    /// <summary>From here on Ctrl-C asks the work to stop, and ends the process if it has not within a second.</summary>
    public void WatchForInterrupt() => _signal ??= PosixSignalRegistration.Create(PosixSignal.SIGINT, context =>
    {
        context.Cancel = true;
        _interrupt.Cancel();
        _ = Task.Delay(PatienceAfterInterrupt).ContinueWith(_ => EndStopped(), TaskScheduler.Default);
    });

    /// <summary>For work that does not heed the request.</summary>
    private void EndStopped()
    {
        Error.WriteLine(Stopped);
        Environment.Exit(ExitCode.Interrupted);
    }

    /// <summary>How text is to look on standard output.</summary>
    public TerminalStyle Style(bool noColor) => TerminalStyle.Plain with { Color = OutputTakesColor && !noColor };

    /// <summary>Writes a whole result at once. A reader that went away (<c>| head</c>) is no failure.</summary>
    public void Print(string text)
    {
        try
        {
            Output.Write(text);
            Output.Flush();
        }
        catch (IOException gone) when ((gone.HResult & 0xffff) == BrokenPipe)
        {
            // Nobody is left to tell.
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _signal?.Dispose();
        _interrupt.Dispose();
    }

    private static string? Setting(string name) => Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null;
}

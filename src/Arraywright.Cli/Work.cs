using System.Text;
using Arraywright.Files;
using Arraywright.Files.Asking;

namespace Arraywright.Cli;

/// <summary>What every verb over a plan does around its own call: read, compute under a bar, print.</summary>
internal static class Work
{
    /// <summary>Reads a plan, with the weather file it names, and hands it on; when there are faults, prints all of them and says that the input is wrong.</summary>
    public static int WithPlan(Host host, string path, Func<Plan, int> run)
    {
        host.WatchForInterrupt();
        return With(host, PlanFile.Load(path), plan => PlanWeather.WithFile(host, plan, path) is { } known ? run(known) : ExitCode.WrongInput);
    }

    /// <summary>Hands on the plan of a reading; when it has faults, prints all of them and says that the input is wrong.</summary>
    public static int With(Host host, PlanReading reading, Func<Plan, int> run)
    {
        foreach (Fault fault in reading.Faults)
        {
            host.Error.WriteLine(fault.ToString());
        }

        return reading.Plan is { } plan ? run(plan) : ExitCode.WrongInput;
    }

    /// <summary>Asks under a bar and hands on the result; where the question cannot be put to the plan, says why, and that the input is wrong.</summary>
    public static int Ask<T>(Host host, Manners manners, string path, Func<IProgress<double>, CancellationToken, Asked<T>> ask, Func<T, int> print)
        where T : class
    {
        (Asked<T> asked, _) = UnderBar(host, manners, ask);
        if (asked.Result is { } result)
        {
            return print(result);
        }

        (string? option, string text) = asked.Refusal!;
        host.Error.WriteLine($"arraywright: {(option is null ? path : "--" + option)}: {text}");
        return ExitCode.WrongInput;
    }

    /// <summary>Computes under a bar; on Ctrl-C there is no result.</summary>
    /// <returns>The result and the seconds it took.</returns>
    public static (T Result, double Seconds) UnderBar<T>(Host host, Manners manners, Func<IProgress<double>, CancellationToken, T> compute)
    {
        (T Result, double Seconds) all = BestUnderBar(host, manners, compute);
        host.Interrupted.ThrowIfCancellationRequested();
        return all;
    }

    /// <summary>Computes under a bar what is worth printing on Ctrl-C too: the best so far. End with <see cref="Ended"/>.</summary>
    /// <returns>The result and the seconds it took.</returns>
    public static (T Result, double Seconds) BestUnderBar<T>(Host host, Manners manners, Func<IProgress<double>, CancellationToken, T> compute)
    {
        using ProgressBar bar = new(host.Error, host.ErrorIsTerminal && !manners.Quiet, TimeProvider.System);
        return (compute(bar, host.Interrupted), bar.Elapsed.TotalSeconds);
    }

    /// <summary>The exit status of a printed result: on Ctrl-C it is not the whole answer, and a script must not take it for one.</summary>
    public static int Ended(Host host, int status)
    {
        if (!host.Interrupted.IsCancellationRequested)
        {
            return status;
        }

        host.Error.WriteLine(Host.StoppedEarly);
        return ExitCode.Interrupted;
    }

    /// <summary>Prints what a function writes, in one piece.</summary>
    public static void Print(Host host, Action<TextWriter> write)
    {
        StringWriter text = new() { NewLine = "\n" };
        write(text);
        host.Print(text.ToString());
    }

    /// <summary>Writes a file whole or not at all; when that fails, says why, and where it is there already what <paramref name="hint"/> adds.</summary>
    public static int Save(Host host, string path, string text, bool replace, string hint = "") =>
        Save(host, path, Encoding.UTF8.GetBytes(text), replace, hint);

    /// <inheritdoc cref="Save(Host, string, string, bool, string)"/>
    public static int Save(Host host, string path, byte[] bytes, bool replace, string hint = "")
    {
        try
        {
            AtomicFile.Write(path, bytes, replace, host.Interrupted);
            return ExitCode.Done;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = File.Exists(path) && !replace ? $"it is there already{hint}" : Why(refused);
            host.Error.WriteLine($"arraywright: cannot write \"{path}\": {why}");
            return ExitCode.WrongInput;
        }
    }

    // What the system calls a full and a read-only disk: errno ENOSPC and EROFS, and the same on Windows.
    private const int DiskFull = 28, WindowsDiskFull = unchecked((int)0x80070070);
    private const int ReadOnly = 30, WindowsReadOnly = unchecked((int)0x80070013);

    private static string Why(Exception refused) => refused switch
    {
        DirectoryNotFoundException or FileNotFoundException => "its folder is not there, or takes no files",
        UnauthorizedAccessException => "you may not write there",
        IOException { HResult: DiskFull or WindowsDiskFull } => "no room is left there; nothing that was there has changed",
        IOException { HResult: ReadOnly or WindowsReadOnly } => "it can only be read there",
        _ => refused.Message,
    };
}

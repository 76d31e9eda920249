using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Arraywright.Cli;

/// <summary>The program that serves: its own, so that no other verb carries a web server.</summary>
internal static partial class HostProgram
{
    private static readonly string Beside = Path.Combine(AppContext.BaseDirectory, "host", OperatingSystem.IsWindows() ? "arraywright-host.exe" : "arraywright-host");

    /// <summary>Runs it in the place of this process, so that signals reach it; on Windows, as a child that is waited for.</summary>
    /// <returns>Its exit status, or that it cannot be run.</returns>
    public static int Run(Host host, IReadOnlyList<string> arguments)
    {
        if (!File.Exists(Beside))
        {
            host.Error.WriteLine($"arraywright: serve needs a program of its own, {Beside}, and it is not there; `./arraywright serve` in the repository builds it");
            return ExitCode.WrongInput;
        }

        if (OperatingSystem.IsWindows())
        {
            using Process child = Process.Start(new ProcessStartInfo(Beside, arguments) { UseShellExecute = false })!;
            child.WaitForExit();
            return child.ExitCode;
        }

        _ = Execv(Beside, [Beside, .. arguments, null]);
        host.Error.WriteLine($"arraywright: cannot run {Beside}: {Marshal.GetLastPInvokeErrorMessage()}");
        return ExitCode.Failed;
    }

    /// <summary>Comes back only when it fails.</summary>
    [LibraryImport("libc", EntryPoint = "execv", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial int Execv(string path, string?[] arguments);
}

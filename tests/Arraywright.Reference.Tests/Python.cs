using System.Diagnostics;

namespace Arraywright.Reference.Tests;

/// <summary>Runs a short program under Debian's Python, with a numeric or astronomy library of that system.</summary>
internal static class Python
{
    private const string Interpreter = "/usr/bin/python3";

    /// <summary>Skips the running test, saying what is left unchecked, where a library is not installed.</summary>
    public static void SkipUnlessInstalled(string module, string lost) =>
        Assert.SkipUnless(File.Exists(Interpreter) && Start($"import {module}", "").Exit == 0, $"python3-{module} is not installed: {lost}.");

    /// <summary>What a program prints for an input; fails the running test where it ends in an error.</summary>
    public static string[] Lines(string program, string input)
    {
        (int exit, string output, string error) = Start(program, input);
        Assert.True(exit == 0, error);
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static (int Exit, string Output, string Error) Start(string program, string input)
    {
        using Process process = Process.Start(new ProcessStartInfo(Interpreter, ["-c", program])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return (process.ExitCode, output.Result, errors.Result);
    }
}

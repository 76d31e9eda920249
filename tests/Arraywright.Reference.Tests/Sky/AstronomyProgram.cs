using System.Diagnostics;
using System.Globalization;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>Astropy, a general astronomy library (Debian package python3-astropy), with its own ephemeris, precession and nutation.</summary>
internal static class AstronomyProgram
{
    private const string Python = "/usr/bin/python3";

    /// <summary>Runs a program on lines of figures and reads lines of figures back; the test skips itself where Astropy is missing.</summary>
    public static double[][] Ask(string program, IEnumerable<string> lines)
    {
        Assert.SkipUnless(File.Exists(Python) && Run("import astropy", "").Exit == 0, "python3-astropy is not installed: the sun is not checked against another program.");
        (int exit, string output, string error) = Run(program, string.Concat(lines.Select(line => line + "\n")));
        Assert.True(exit == 0, error);
        return
        [
            .. output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => line.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray()),
        ];
    }

    private static (int Exit, string Output, string Error) Run(string program, string input)
    {
        using Process process = Process.Start(new ProcessStartInfo(Python, ["-c", program])
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

using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Arraywright.Report.Tests;

/// <summary>Reads a PDF with the programs of poppler, which share nothing with what wrote it.</summary>
internal static partial class Poppler
{
    /// <summary>Skips the running test where they are not installed.</summary>
    public static void SkipUnlessInstalled() =>
        Assert.SkipUnless(IsThere("pdftotext") && IsThere("pdfinfo"), "poppler-utils is not installed: no other program reads the PDF.");

    /// <summary>What pdfinfo says of it.</summary>
    public static string Info(byte[] file, params string[] options) => Run("pdfinfo", file, [.. options], "");

    /// <summary>Its text, one entry a page, in the order in which it was written.</summary>
    public static string[] Pages(byte[] file) => Run("pdftotext", file, ["-raw"], "-").Split('\f')[..^1];

    /// <summary>Every word with its frame, one entry a page; pt from the upper left corner.</summary>
    public static List<List<Word>> Words(byte[] file)
    {
        List<List<Word>> pages = [];
        foreach (string line in Run("pdftotext", file, ["-bbox"], "-").Split('\n'))
        {
            if (line.Contains("<page ", StringComparison.Ordinal))
            {
                pages.Add([]);
            }
            else if (WordLine().Match(line) is { Success: true } word)
            {
                double Number(string group) => double.Parse(word.Groups[group].Value, CultureInfo.InvariantCulture);
                pages[^1].Add(new Word(word.Groups["text"].Value, Number("left"), Number("top"), Number("right"), Number("bottom")));
            }
        }

        return pages;
    }

    private static bool IsThere(string program)
    {
        try
        {
            using Process process = Start(program, ["-v"]);
            process.WaitForExit();
            return true;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static string Run(string program, byte[] file, string[] options, string output)
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-report-{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(path, file);
        try
        {
            using Process process = Start(program, output.Length > 0 ? [.. options, path, output] : [.. options, path]);
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string text = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal("", errors.Result);
            Assert.Equal(0, process.ExitCode);
            return text;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static Process Start(string program, string[] arguments) => Process.Start(new ProcessStartInfo(program, arguments)
    {
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        StandardOutputEncoding = System.Text.Encoding.UTF8,
    })!;

    [GeneratedRegex("<word xMin=\"(?<left>[0-9.-]+)\" yMin=\"(?<top>[0-9.-]+)\" xMax=\"(?<right>[0-9.-]+)\" yMax=\"(?<bottom>[0-9.-]+)\">(?<text>.*)</word>", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex WordLine();
}

/// <summary>A word on a page.</summary>
internal readonly record struct Word(string Text, double LeftPt, double TopPt, double RightPt, double BottomPt);

using System.Globalization;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>Astropy, a general astronomy library (Debian package python3-astropy), with its own ephemeris, precession and nutation.</summary>
internal static class AstronomyProgram
{
    /// <summary>Runs a program on lines of figures and reads lines of figures back; the test skips itself where Astropy is missing.</summary>
    public static double[][] Ask(string program, IEnumerable<string> lines)
    {
        Python.SkipUnlessInstalled("astropy", "the sun is not checked against another program");
        return
        [
            .. Python.Lines(program, string.Concat(lines.Select(line => line + "\n")))
                .Select(line => line.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray()),
        ];
    }
}

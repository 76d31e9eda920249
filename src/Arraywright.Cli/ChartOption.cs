using System.CommandLine;
using Arraywright.Pictures;
using Arraywright.Presentation.Charts;

namespace Arraywright.Cli;

/// <summary>The file for a chart of the result.</summary>
internal sealed class ChartOption
{
    private const string Pixels = ".png";
    private const string Vectors = ".svg";

    private readonly Option<string> _file = new("--chart") { Description = "a file for the chart, .svg or .png; one that is there is replaced", HelpName = "FILE" };

    /// <summary>Adds the option.</summary>
    public ChartOption(Command command)
    {
        _file.Validators.Add(result =>
        {
            string path = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (!Ends(path, Pixels) && !Ends(path, Vectors))
            {
                result.AddError($"--chart: found \"{path}\"; expected a file whose name ends in {Vectors} or {Pixels}");
            }
        });
        command.Add(_file);
    }

    /// <summary>Writes the chart where one is asked for; when that fails, says why.</summary>
    /// <returns>An exit status.</returns>
    public int Save(Host host, ParseResult parse, Func<Chart> chart)
    {
        if (parse.GetValue(_file) is not { } path)
        {
            return ExitCode.Done;
        }

        if (Ends(path, Vectors))
        {
            return Work.Save(host, path, chart().ToSvg(), replace: true);
        }

        return SavePixels(host, path, chart());
    }

    private static int SavePixels(Host host, string path, Chart chart)
    {
        PngPicture picture;
        try
        {
            picture = PngPicture.Of(chart);
        }
        catch (Exception missing) when (missing.GetBaseException() is DllNotFoundException)
        {
            host.Error.WriteLine($"arraywright: cannot write \"{path}\": the library that draws pixels is not beside the command; a chart that ends in {Vectors} does without it");
            return ExitCode.WrongInput;
        }

        int saved = Work.Save(host, path, picture.Bytes, replace: true);
        if (saved == ExitCode.Done && !picture.IsEverySignKnown)
        {
            host.Error.WriteLine($"arraywright: \"{path}\" shows \"?\" for signs of the names that its font lacks; a chart that ends in {Vectors} keeps them");
        }

        return saved;
    }

    private static bool Ends(string path, string extension) => string.Equals(Path.GetExtension(path), extension, StringComparison.OrdinalIgnoreCase);
}

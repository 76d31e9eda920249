using System.CommandLine;
using Arraywright.Pictures;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;

namespace Arraywright.Cli;

/// <summary>The file for a chart or a drawing of the result.</summary>
internal sealed class PictureOption
{
    private const string Pixels = ".png";
    private const string Vectors = ".svg";

    private readonly Option<string> _file;
    private readonly string _what;

    /// <summary>Adds the option.</summary>
    /// <param name="command">The verb.</param>
    /// <param name="name">Name of the option.</param>
    /// <param name="what">What is written: "chart".</param>
    public PictureOption(Command command, string name = "--chart", string what = "chart")
    {
        _what = what;
        _file = new Option<string>(name) { Description = $"a file for the {what}, {Vectors} or {Pixels}; one that is there is replaced", HelpName = "FILE" };
        _file.Validators.Add(result =>
        {
            string path = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (!Ends(path, Pixels) && !Ends(path, Vectors))
            {
                result.AddError($"{name}: found \"{path}\"; expected a file whose name ends in {Vectors} or {Pixels}");
            }
        });
        command.Add(_file);
    }

    /// <summary>Writes the chart where one is asked for; when that fails, says why.</summary>
    /// <returns>An exit status.</returns>
    public int Save(Host host, ParseResult parse, Func<Chart> chart) => Save(host, parse, () => chart().ToSvg(), () => PngPicture.Of(chart()));

    /// <summary>Writes the drawing where one is asked for; when that fails, says why.</summary>
    /// <returns>An exit status.</returns>
    public int Save(Host host, ParseResult parse, Func<Picture> drawing) => Save(host, parse, () => drawing().ToSvg(), () => PngPicture.Of(drawing()));

    private int Save(Host host, ParseResult parse, Func<string> vectors, Func<PngPicture> pixels) => parse.GetValue(_file) switch
    {
        null => ExitCode.Done,
        { } path when Ends(path, Vectors) => Work.Save(host, path, vectors(), replace: true),
        { } path => SavePixels(host, path, pixels),
    };

    private int SavePixels(Host host, string path, Func<PngPicture> draw)
    {
        PngPicture picture;
        try
        {
            picture = draw();
        }
        catch (Exception missing) when (missing.GetBaseException() is DllNotFoundException)
        {
            host.Error.WriteLine($"arraywright: cannot write \"{path}\": the library that draws pixels is not beside the command; a {_what} that ends in {Vectors} does without it");
            return ExitCode.WrongInput;
        }

        int saved = Work.Save(host, path, picture.Bytes, replace: true);
        if (saved == ExitCode.Done && !picture.IsEverySignKnown)
        {
            host.Error.WriteLine($"arraywright: \"{path}\" shows \"?\" for signs of the names that its font lacks; a {_what} that ends in {Vectors} keeps them");
        }

        return saved;
    }

    private static bool Ends(string path, string extension) => string.Equals(Path.GetExtension(path), extension, StringComparison.OrdinalIgnoreCase);
}

using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>How wide the text may run and whether it may carry colour. Colour only repeats what the words say.</summary>
/// <param name="Width">Columns, at least 40; lines that can be broken are kept within it.</param>
/// <param name="Color">True when escape sequences may be written.</param>
public sealed record TerminalStyle(int Width, bool Color)
{
    /// <summary>80 columns without colour: a file, a pipe, a test.</summary>
    public static TerminalStyle Plain { get; } = new(80, Color: false);

    /// <summary>A heading.</summary>
    public string Strong(string text) => Paint(text, "1");

    /// <summary>A remark beside the matter.</summary>
    public string Faint(string text) => Paint(text, "2");

    /// <summary>Text in the colour of a verdict.</summary>
    public string ForLevel(Level level, string text) => Paint(text, level switch
    {
        Level.Go => "1;32",
        Level.Ask => "1;33",
        _ => "1;31",
    });

    private string Paint(string text, string code) => Color && text.Length > 0 ? $"\e[{code}m{text}\e[0m" : text;
}

namespace Arraywright.Files.Yaml;

/// <summary>A part of the file with its place.</summary>
internal abstract class YamlNode(int line, int column)
{
    /// <summary>Line, from 1.</summary>
    public int Line { get; } = line;

    /// <summary>Column, from 1.</summary>
    public int Column { get; } = column;

    /// <summary>What it is, as a fault says it.</summary>
    public abstract string Described { get; }
}

/// <summary>A single value.</summary>
/// <param name="line">Line, from 1.</param>
/// <param name="column">Column, from 1.</param>
/// <param name="text">The value without its quotes.</param>
/// <param name="textColumn">Column of the first character of <paramref name="text"/>; null when the file writes it otherwise than it reads (escapes, several lines).</param>
/// <param name="isQuoted">True when it stands in quotes.</param>
internal sealed class YamlScalar(int line, int column, string text, int? textColumn, bool isQuoted) : YamlNode(line, column)
{
    public string Text { get; } = text;

    public int? TextColumn { get; } = textColumn;

    /// <summary>True when nothing is written, or a word that YAML takes for nothing.</summary>
    public bool IsNothing { get; } = !isQuoted && text is "" or "~" or "null" or "Null" or "NULL";

    public override string Described => IsNothing ? "nothing" : Files.Text.Quoted.Text(Text);
}

/// <summary>A list.</summary>
internal sealed class YamlSequence(int line, int column) : YamlNode(line, column)
{
    public List<YamlNode> Items { get; } = [];

    public override string Described => "a list";
}

/// <summary>Keys with their values, each key once.</summary>
internal sealed class YamlMapping(int line, int column) : YamlNode(line, column)
{
    public List<YamlEntry> Entries { get; } = [];

    public override string Described => "a group of keys";
}

/// <summary>A part already reported as a fault; nothing more is said of it.</summary>
internal sealed class YamlReported(int line, int column) : YamlNode(line, column)
{
    public override string Described => "something refused";
}

/// <summary>A key and its value.</summary>
internal readonly record struct YamlEntry(YamlScalar Key, YamlNode Value);

namespace Arraywright.Files;

/// <summary>Something wrong in what was read: where, what was found, what was expected, what to do.</summary>
/// <param name="File">Name of the file as the user gave it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in that line, from 1, in UTF-16 units.</param>
/// <param name="Found">What stands there; what the user wrote is in double quotes.</param>
/// <param name="Expected">What should stand there, mostly with an example.</param>
/// <param name="Hint">What to do; null when the rest says it all.</param>
public sealed record Fault(string File, int Line, int Column, string Found, string Expected, string? Hint = null)
{
    /// <summary>One line: <c>shed.yaml:12:10: found "22,9 V"; expected a voltage such as "22.9 V"; write a decimal point, not a comma</c>.</summary>
    public override string ToString() =>
        $"{File}:{Line}:{Column}: found {Found}; expected {Expected}{(Hint is null ? "" : "; " + Hint)}";
}

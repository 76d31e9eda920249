namespace Arraywright.Files.Weather;

/// <summary>Walks the lines of a text, any line ends, without copying them.</summary>
internal ref struct LineReader(string text)
{
    private ReadOnlySpan<char> _rest = text.AsSpan().TrimStart('\uFEFF');

    /// <summary>The line that <see cref="Next"/> came to.</summary>
    public ReadOnlySpan<char> Current { get; private set; }

    /// <summary>Its number, from 1; 0 before the first.</summary>
    public int Line { get; private set; }

    /// <summary>Goes to the next line; false, with an empty line, at the end.</summary>
    public bool Next()
    {
        if (_rest.IsEmpty)
        {
            Current = default;
            return false;
        }

        int end = _rest.IndexOfAny('\n', '\r');
        Current = end < 0 ? _rest : _rest[..end];
        int next = end < 0 ? _rest.Length : end + (_rest[end..].StartsWith("\r\n") ? 2 : 1);
        _rest = _rest[next..];
        Line++;
        return true;
    }
}

namespace Arraywright.Files.Drafts;

/// <summary>A part of a draft: a text, a group of keys, or a list.</summary>
internal abstract class DraftNode;

/// <summary>A value as written, without its quotes.</summary>
internal sealed class DraftText(string text) : DraftNode
{
    public string Text { get; } = text;
}

/// <summary>Keys with their values, in the order they are written.</summary>
internal sealed class DraftGroup : DraftNode
{
    public List<(string Key, DraftNode Value)> Entries { get; } = [];

    public DraftNode? Find(string key) => Entries.Find(entry => entry.Key == key).Value;
}

/// <summary>A list of texts or of groups.</summary>
internal sealed class DraftList : DraftNode
{
    public List<DraftNode> Items { get; } = [];
}

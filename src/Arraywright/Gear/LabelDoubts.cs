namespace Arraywright.Gear;

/// <summary>Gathers the doubts about one label while it is checked.</summary>
internal sealed class LabelDoubts(string panel)
{
    private readonly List<LabelDoubt> _refused = [];
    private readonly List<LabelDoubt> _questioned = [];

    public bool AnyRefused => _refused.Count > 0;

    /// <summary>Refusals first, each in the order of the checks.</summary>
    public IReadOnlyList<LabelDoubt> All => [.. _refused, .. _questioned];

    public void Refuse(string field, string message) => _refused.Add(new LabelDoubt(panel, field, message, Refused: true));

    public void Question(string field, string message) => _questioned.Add(new LabelDoubt(panel, field, message, Refused: false));
}

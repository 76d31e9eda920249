using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads a current or power limit: a figure, or a group of keys with the word it rests on.</summary>
internal static class LimitReader
{
    /// <param name="fields">The input or unit.</param>
    /// <param name="key">The limit.</param>
    /// <param name="owner">Name of the input or unit, for the list of assumptions.</param>
    /// <param name="assumed">Takes a note where the plan allows something that nobody has said.</param>
    public static Limit? Read(Fields fields, LimitKey key, string owner, List<Assumption> assumed)
    {
        if (fields.Node(key) is not YamlMapping mapping)
        {
            return fields.Scalar(key) is { } scalar && fields.Figure(scalar, key, key.Quantity) is { } bare ? new Limit(bare.Value, Evidence.Nothing) : null;
        }

        Fields group = new(mapping, LimitKeys.Section, fields.Faults);
        double? figure = group.Scalar(LimitKeys.Value) is { } value ? group.Figure(value, key, key.Quantity)?.Value : null;
        EvidenceKind kind = (EvidenceKind)(group.Choice(LimitKeys.Evidence) ?? 0);
        double exceed = group.Figure(LimitKeys.Exceed) ?? 0;
        string? note = group.Text(LimitKeys.Note);
        if (kind == EvidenceKind.None && exceed > 0)
        {
            assumed.Add(new Assumption($"{owner} {key.Name} above its figure", "0 %", "The plan allows more but names nobody who says so. With evidence the answer may change."));
        }

        return figure is { } known ? new Limit(known, new Evidence(kind, exceed, note)) : null;
    }
}

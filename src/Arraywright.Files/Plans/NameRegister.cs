using System.Globalization;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>The names of a plan: panels, inputs and units are all called by name, so no two may share one.</summary>
internal sealed class NameRegister
{
    private readonly Dictionary<string, int> _lineOf = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A well-formed name; null with a fault. A name taken already is reported but still given, so that its thing is read on.</summary>
    public string? New(Fields fields, NameKey key)
    {
        if (Written(fields, key) is not { } scalar)
        {
            return null;
        }

        if (!_lineOf.TryAdd(scalar.Text, scalar.Line))
        {
            fields.Faults.Add(scalar, scalar.Described, "a name of its own", $"the name stands on line {_lineOf[scalar.Text]} already; panels, candidates, inputs and units all have different names");
        }

        return scalar.Text;
    }

    /// <summary>A well-formed name, new or not; null, with a fault, for anything else.</summary>
    public static YamlScalar? Written(Fields fields, NameKey key)
    {
        if (fields.Scalar(key) is not { } scalar)
        {
            return null;
        }

        string? hint = scalar.Text.Length > Caps.NameLength ? $"at most {Caps.NameLength} characters" : FirstForeign(scalar.Text);
        if (hint is null)
        {
            return scalar;
        }

        fields.AddUnexpected(scalar, key, hint);
        return null;
    }

    private static string? FirstForeign(string name)
    {
        if (name.Length == 0 || name[0] == '-' || name[^1] == '-')
        {
            return "begin and end it with a letter or a digit";
        }

        for (int at = 0; at < name.Length; at++)
        {
            if (!char.IsLetterOrDigit(name[at]) && name[at] != '-')
            {
                return name[at] is ' ' or '_' ? "use a hyphen instead of a space or underscore" : $"{Quoted.Text(StringInfo.GetNextTextElement(name, at))} cannot stand in a name";
            }
        }

        return null;
    }
}

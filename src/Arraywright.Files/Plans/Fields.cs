using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>The keys of one group, read by their table; what is wrong with them is reported once, here.</summary>
internal sealed class Fields
{
    private readonly YamlMapping _mapping;
    private readonly Dictionary<string, YamlEntry> _entries = [];

    public Fields(YamlMapping mapping, PlanSection section, FaultList faults)
    {
        _mapping = mapping;
        Faults = faults;
        HashSet<string>? mistyped = null;
        foreach (YamlEntry entry in mapping.Entries)
        {
            if (section.Find(entry.Key.Text) is not null)
            {
                _entries.Add(entry.Key.Text, entry);
            }
            else if (UnknownKey.Add(entry.Key, section, faults) is { } meant)
            {
                (mistyped ??= []).Add(meant);
            }
        }

        foreach (PlanKey key in section.Keys)
        {
            // What was only mistyped is reported as that, not as missing too.
            if (key.Required && !_entries.ContainsKey(key.Name) && mistyped?.Contains(key.Name) != true && !faults.BrokeOff)
            {
                faults.Add(mapping, $"{section.Title} without \"{key.Name}\"", $"\"{key.Name}\", {key.Expected}", Decapitalised(key.About));
            }
        }
    }

    public FaultList Faults { get; }

    /// <summary>The whole group, for faults that belong to no key.</summary>
    public YamlNode Whole => _mapping;

    /// <summary>True when the key stands in the file, whatever its value.</summary>
    public bool Has(PlanKey key) => _entries.ContainsKey(key.Name);

    /// <summary>The value of a key; null when it does not stand there.</summary>
    public YamlNode? Node(PlanKey key) => _entries.TryGetValue(key.Name, out YamlEntry entry) ? entry.Value : null;

    /// <summary>The value of a key, or, where it is missing, the group it is missing from.</summary>
    public YamlNode PlaceOf(PlanKey key) => Node(key) ?? _mapping;

    /// <summary>The single value of a key; null when it is missing or, with a fault, something else.</summary>
    public YamlScalar? Scalar(PlanKey key)
    {
        switch (Node(key))
        {
            case YamlScalar { IsNothing: false } scalar:
                return scalar;
            case null or YamlReported:
                return null;
            case { } node:
                AddUnexpected(node, key, key is QuantityKey && node is YamlMapping or YamlSequence ? "write a single figure" : null);
                return null;
        }
    }

    public string? Text(TextKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        foreach (char letter in scalar.Text)
        {
            if (char.IsControl(letter))
            {
                AddUnexpected(scalar, key, "keep it on one line");
                return null;
            }
        }

        if (scalar.Text.Trim().Length is > 0 and <= TextKey.Longest)
        {
            return scalar.Text.Trim();
        }

        AddUnexpected(scalar, key, $"at least one letter and at most {TextKey.Longest}");
        return null;
    }

    public double? Figure(QuantityKey key) => Scalar(key) is { } scalar && Figure(scalar, key, key.Quantity) is { } figure ? figure.Value : null;

    public Money? Price(PriceKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        if (MoneyText.TryRead(scalar.Text, out Money money, out Misreading misreading))
        {
            return money;
        }

        Faults.Add(scalar, scalar.Described, misreading.Expected ?? key.Expected, misreading.Hint);
        return null;
    }

    /// <summary>A figure together with what a slope is relative to.</summary>
    public Figure? FigureWithBasis(QuantityKey key) => Scalar(key) is { } scalar ? Figure(scalar, key, key.Quantity) : null;

    /// <summary>A figure in a given value; null, with a fault in the words of <paramref name="key"/>.</summary>
    public Figure? Figure(YamlScalar scalar, PlanKey key, Quantity quantity)
    {
        if (QuantityText.TryRead(scalar.Text, quantity, out Figure figure, out Misreading misreading))
        {
            return figure;
        }

        Faults.Add(scalar, scalar.Described, misreading.Expected ?? key.Expected, misreading.Hint);
        return null;
    }

    public (double From, double To)? Range(RangeKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        if (RangeText.TryRead(scalar.Text, key.Quantity, out double from, out double to, out Misreading misreading))
        {
            return (from, to);
        }

        Faults.Add(scalar, scalar.Described, misreading.Expected ?? key.Expected, misreading.Hint);
        return null;
    }

    public int? Count(CountKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        if (int.TryParse(scalar.Text, System.Globalization.NumberStyles.AllowLeadingSign, null, out int count) && count >= key.Min && count <= key.Max)
        {
            return count;
        }

        AddUnexpected(scalar, key, null);
        return null;
    }

    /// <summary>An hour of the day, 0 to 24; minutes are its fraction.</summary>
    public double? Hour(HourKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        if (ClockHour.TryRead(scalar.Text, out double hour))
        {
            return hour;
        }

        AddUnexpected(scalar, key, "write hours and minutes, 7:30");
        return null;
    }

    /// <summary>A day of the year, or days from one to another.</summary>
    public DaySpan? Days(DaysKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        if (DayText.TryRead(scalar.Text, out DaySpan days))
        {
            return days;
        }

        AddUnexpected(scalar, key, null);
        return null;
    }

    /// <summary>The index of the word chosen among the key's options.</summary>
    public int? Choice(ChoiceKey key)
    {
        if (Scalar(key) is not { } scalar)
        {
            return null;
        }

        string written = scalar.Text.Replace('-', ' ').Replace('_', ' ').Trim();
        for (int i = 0; i < key.Options.Length; i++)
        {
            if (written.Equals(key.Options[i], StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        AddUnexpected(scalar, key, Nearest.Of(written, key.Options) is { } near ? $"did you mean \"{near}\"?" : null);
        return null;
    }

    /// <summary>The keys of a group under this one; null when it is missing or, with a fault, no group.</summary>
    public Fields? Group(SectionKey key) => Group(Node(key), key, key.Section);

    /// <summary>The groups of a list under this one; empty when it is missing or, with a fault, no list of groups.</summary>
    public List<Fields> Groups(ListKey key)
    {
        List<Fields> groups = [];
        switch (Node(key))
        {
            case YamlSequence { Items.Count: > 0 } list:
                AddGroups(list, key, groups);
                break;
            case null or YamlReported:
                break;
            case YamlMapping mapping:
                AddUnexpected(mapping, key, "begin each item with a hyphen and a space");
                break;
            case { } node:
                AddUnexpected(node, key, null);
                break;
        }

        return groups;
    }

    public void AddUnexpected(YamlNode node, PlanKey key, string? hint) =>
        Faults.Add(node, node is YamlSequence { Items.Count: 0 } ? "an empty list" : node.Described, key.Expected, hint);

    private void AddGroups(YamlSequence list, ListKey key, List<Fields> groups)
    {
        foreach (YamlNode item in list.Items)
        {
            if (groups.Count == key.Most)
            {
                Faults.Add(item, $"{list.Items.Count} items in \"{key.Name}\"", $"at most {key.Most}");
                return;
            }

            if (Group(item, key, key.Section) is { } group)
            {
                groups.Add(group);
            }
        }
    }

    private Fields? Group(YamlNode? node, PlanKey key, PlanSection section)
    {
        switch (node)
        {
            case YamlMapping mapping:
                return new Fields(mapping, section, Faults);
            case null or YamlReported:
                return null;
            default:
                Faults.Add(node, node.Described, key is ListKey ? $"keys such as \"{section.Keys[0].Name}: {section.Keys[0].Example}\"" : key.Expected);
                return null;
        }
    }

    private static string Decapitalised(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}

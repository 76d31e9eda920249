using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Drafts;

/// <summary>A plan as a form edits it: every value as it is written, right or wrong, by its path such as "panels/0/voc".</summary>
/// <remarks>
/// Values keep the units a person wrote. A limit is always a group here ("inputs/0/max_power/value"), also where the file has its figure alone.
/// Comments are not kept: a file that nobody edits in a form is kept as text.
/// </remarks>
public sealed class PlanDraft
{
    private readonly DraftGroup _root;

    private PlanDraft(DraftGroup root) => _root = root;

    /// <summary>An empty draft.</summary>
    public PlanDraft()
        : this(new DraftGroup())
    {
    }

    /// <summary>The draft of a text.</summary>
    /// <returns>Null, with the faults, where the text is not keys and values at all; faults of single values are the reader's to find.</returns>
    public static (PlanDraft? Draft, IReadOnlyList<Fault> Faults) Read(string text, string fileName)
    {
        FaultList faults = new(fileName);
        if (text.Length > FileBytes.Most)
        {
            FileBytes.AddTooLarge(faults);
            return (null, faults.InFileOrder());
        }

        YamlMapping? root = TextCheck.Clean(text, faults) is { } clean ? new YamlTreeReader(clean, faults).Read() : null;
        return root is null || faults.Count > 0
            ? (null, faults.InFileOrder())
            : (new PlanDraft(Group(root, RootKeys.Section)), []);
    }

    /// <summary>A plan's text with these wirings stated, one an input, null for nothing.</summary>
    /// <returns>Null where the text is not keys and values at all, or has not that many inputs.</returns>
    public static string? Stating(string text, IReadOnlyList<string?> wirings)
    {
        if (Read(text, "plan").Draft is not { } draft || draft.Count("inputs") != wirings.Count)
        {
            return null;
        }

        for (int i = 0; i < wirings.Count; i++)
        {
            draft.Set($"inputs/{i}/wiring", wirings[i]);
        }

        return draft.Write().Text;
    }

    /// <summary>The text at a path; null where there is none, or a group or list.</summary>
    public string? this[string path] => (Find(path) as DraftText)?.Text;

    /// <summary>Whether there is anything at a path.</summary>
    public bool Has(string path) => Find(path) is not null;

    /// <summary>Whether there is more than a single value at a path.</summary>
    public bool IsList(string path) => Find(path) is DraftList or DraftGroup;

    /// <summary>Items in the list at a path; 0 where there is none.</summary>
    public int Count(string path) => Find(path) is DraftList list ? list.Items.Count : 0;

    /// <summary>Writes a text at a path, making the groups on the way; nothing written takes the key out, and groups left empty with it.</summary>
    public void Set(string path, string? text) => Set(_root, path.Split('/'), 0, RootKeys.Section, string.IsNullOrWhiteSpace(text) ? null : text.Trim());

    /// <summary>Adds an empty item to a list at the top, such as "panels".</summary>
    /// <returns>Its index.</returns>
    public int AddItem(string path)
    {
        if (Find(path) is not DraftList list)
        {
            list = new DraftList();
            Put(_root, RootKeys.Section, path, list);
        }

        list.Items.Add(new DraftGroup());
        return list.Items.Count - 1;
    }

    /// <summary>Takes an item out of the list at a path, and the list with its last.</summary>
    public void RemoveItem(string path, int index)
    {
        if (Find(path) is DraftList list && index < list.Items.Count)
        {
            list.Items.RemoveAt(index);
            if (list.Items.Count == 0)
            {
                Remove(path);
            }
        }
    }

    /// <summary>Takes out what is at a path.</summary>
    public void Remove(string path)
    {
        int last = path.LastIndexOf('/');
        if ((last < 0 ? _root : Find(path[..last])) is DraftGroup group)
        {
            group.Entries.RemoveAll(entry => entry.Key == path[(last + 1)..]);
        }
    }

    /// <summary>The draft as the text of a plan file.</summary>
    public DraftWriting Write() => DraftWriter.Write(_root);

    /// <summary>What the plan's own table says of the key at a path; null where it knows none.</summary>
    public static KeyWords? Describe(string path) => DraftShape.Key(path) is { } key ? KeyWords.Of(key) : null;

    private static void Set(DraftNode node, string[] steps, int at, PlanSection? section, string? text)
    {
        string step = steps[at];
        if (node is DraftList list)
        {
            if (int.TryParse(step, out int index) && index < list.Items.Count && at < steps.Length - 1)
            {
                if (list.Items[index] is DraftText)
                {
                    list.Items[index] = new DraftGroup();
                }

                Set(list.Items[index], steps, at + 1, section, text);
            }

            return;
        }

        DraftGroup group = (DraftGroup)node;
        int found = group.Entries.FindIndex(entry => entry.Key == step);
        PlanKey? key = section?.Find(step);
        if (at < steps.Length - 1)
        {
            if (found < 0 || group.Entries[found].Value is DraftText)
            {
                if (text is null)
                {
                    return;
                }

                found = Put(group, section, step, new DraftGroup());
            }

            Set(group.Entries[found].Value, steps, at + 1, DraftShape.Below(key), text);
            if (group.Entries[found].Value is DraftGroup { Entries.Count: 0 })
            {
                group.Entries.RemoveAt(found);
            }
        }
        else if (text is not null)
        {
            Put(group, section, step, new DraftText(text));
        }
        else if (found >= 0)
        {
            group.Entries.RemoveAt(found);
        }
    }

    /// <summary>A key that is there stays where it is; a new one comes before the first that the table has after it.</summary>
    private static int Put(DraftGroup group, PlanSection? section, string key, DraftNode value)
    {
        int at = group.Entries.FindIndex(entry => entry.Key == key);
        if (at >= 0)
        {
            group.Entries[at] = (key, value);
            return at;
        }

        int rank = DraftWriter.Rank(section, key);
        at = group.Entries.FindIndex(entry => DraftWriter.Rank(section, entry.Key) > rank);
        at = at < 0 ? group.Entries.Count : at;
        group.Entries.Insert(at, (key, value));
        return at;
    }

    private DraftNode? Find(string path)
    {
        DraftNode? node = _root;
        foreach (string step in path.Split('/'))
        {
            node = node switch
            {
                DraftGroup group => group.Find(step),
                DraftList list when int.TryParse(step, out int index) && index < list.Items.Count => list.Items[index],
                _ => null,
            };
        }

        return node;
    }


    private static DraftGroup Group(YamlMapping mapping, PlanSection? section)
    {
        DraftGroup group = new();
        foreach (YamlEntry entry in mapping.Entries)
        {
            PlanKey? key = section?.Find(entry.Key.Text);
            group.Entries.Add((entry.Key.Text, Node(entry.Value, key)));
        }

        return group;
    }

    private static DraftNode Node(YamlNode node, PlanKey? key)
    {
        switch (node)
        {
            case YamlScalar scalar when key is LimitKey:
                DraftGroup limit = new();
                limit.Entries.Add((LimitKeys.Value.Name, new DraftText(scalar.Text)));
                return limit;
            case YamlScalar scalar:
                return new DraftText(scalar.Text);
            case YamlMapping mapping:
                return Group(mapping, key is ShadeKey ? ShadeGroupsKeys.Section : DraftShape.Below(key));
            case YamlSequence sequence:
                DraftList list = new();
                list.Items.AddRange(sequence.Items.Select(item => item is YamlMapping entry ? Group(entry, DraftShape.Below(key)) : Node(item, null)));
                return list;
            default:
                return new DraftText("");
        }
    }
}

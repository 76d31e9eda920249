using System.Text;
using Arraywright.Files.Keys;
using Arraywright.Files.Writing;

namespace Arraywright.Files.Drafts;

/// <summary>A draft as text, with the path of what stands on each line.</summary>
/// <param name="Text">The plan file.</param>
/// <param name="PathByLine">Path of the value or group that begins on a line, from 1.</param>
public sealed record DraftWriting(string Text, IReadOnlyDictionary<int, string> PathByLine);

/// <summary>Writes a draft in the layout of <see cref="PlanWriter"/>: one key a line, lists of values in one line.</summary>
internal sealed class DraftWriter
{
    private readonly StringBuilder _text = new();
    private readonly Dictionary<int, string> _paths = [];
    private int _line = 1;

    public static DraftWriting Write(DraftGroup root)
    {
        DraftWriter writer = new();
        writer.WriteGroup(root, RootKeys.Section, "", 0, isItem: false);
        return new DraftWriting(writer._text.ToString(), writer._paths);
    }

    /// <summary>The place of a key among its kind, as the writer of plans has it: the unit an input belongs to comes right after its name.</summary>
    public static int Rank(PlanSection? section, string key)
    {
        int at = Array.FindIndex(section?.Keys ?? [], known => known.Name == key);
        return at < 0 ? int.MaxValue : section == InputKeys.Section && key == InputKeys.Unit.Name ? 1 : 2 * at;
    }

    private void WriteGroup(DraftGroup group, PlanSection? section, string path, int level, bool isItem)
    {
        for (int i = 0; i < group.Entries.Count; i++)
        {
            (string name, DraftNode value) = group.Entries[i];
            PlanKey? key = section?.Find(name);
            string place = path.Length == 0 ? name : $"{path}/{name}";
            _text.Append(' ', 2 * (isItem && i == 0 ? level - 1 : level)).Append(isItem && i == 0 ? "- " : "").Append(key is null ? YamlLines.Quote(name) : name).Append(':');
            Write(value, key, place, level);
        }
    }

    private void Write(DraftNode value, PlanKey? key, string path, int level)
    {
        if (key is LimitKey && value is DraftGroup { Entries: [(var only, DraftText figure)] } && only == LimitKeys.Value.Name)
        {
            End($" {Figure(figure.Text)}", $"{path}/{only}");
            return;
        }

        switch (value)
        {
            case DraftText text:
                End($" {Written(text.Text, key)}", path);
                break;
            case DraftGroup { Entries.Count: 0 }:
                End(" {}", path);
                break;
            case DraftGroup group:
                End("", path);
                WriteGroup(group, key is ShadeKey ? ShadeGroupsKeys.Section : DraftShape.Below(key), path, level + 1, isItem: false);
                break;
            case DraftList { Items: var items } when items.TrueForAll(item => item is DraftText):
                End($" [{string.Join(", ", items.Select(item => Figure(((DraftText)item).Text)))}]", path);
                break;
            case DraftList list:
                End("", path);
                for (int i = 0; i < list.Items.Count; i++)
                {
                    WriteItem(list.Items[i], key, $"{path}/{i}", level + 2);
                }

                break;
        }
    }

    private void WriteItem(DraftNode item, PlanKey? key, string path, int level)
    {
        if (item is DraftGroup { Entries.Count: > 0 } group)
        {
            WriteGroup(group, DraftShape.Below(key), path, level, isItem: true);
            return;
        }

        _text.Append(' ', 2 * (level - 1)).Append('-');
        End(item is DraftText text ? $" {Figure(text.Text)}" : " {}", path);
    }

    private void End(string rest, string path)
    {
        _text.Append(rest).Append('\n');
        _paths[_line++] = path;
    }

    private static string Written(string text, PlanKey? key) => key switch
    {
        WiringKey => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"",
        TextKey or null => YamlLines.Quote(text),
        _ => Figure(text),
    };

    /// <summary>A figure or a word stands without quotes while nothing in it means anything to YAML.</summary>
    private static string Figure(string text)
    {
        foreach (char letter in text)
        {
            if (!char.IsLetterOrDigit(letter) && letter is not (' ' or '.' or '%' or '/' or '-' or '+' or ':' or '·' or '°' or '²' or 'µ'))
            {
                return YamlLines.Quote(text);
            }
        }

        bool isPlain = text.Length > 0 && text[0] is not (' ' or '%' or ':') && text[^1] is not (' ' or ':')
            && !text.Contains(": ", StringComparison.Ordinal) && !text.StartsWith("- ", StringComparison.Ordinal) && text is not ("-" or "---" or "...");
        return isPlain ? text : YamlLines.Quote(text);
    }
}

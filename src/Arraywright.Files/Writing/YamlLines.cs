using System.Text;

namespace Arraywright.Files.Writing;

/// <summary>Lines of a YAML file, indented by level.</summary>
internal sealed class YamlLines
{
    private readonly StringBuilder _text = new();
    private int _level;
    private bool _beginsItem;

    /// <summary>A key with a value already in YAML; nothing when the value is null.</summary>
    public void Add(Keys.PlanKey key, string? value)
    {
        if (value is not null)
        {
            Begin().Append(key.Name).Append(": ").Append(value).Append('\n');
        }
    }

    /// <summary>A key with a group of keys; nothing when <paramref name="isNeeded"/> is false.</summary>
    public void AddGroup(Keys.PlanKey key, bool isNeeded, Action write)
    {
        if (isNeeded)
        {
            Begin().Append(key.Name).Append(":\n");
            _level++;
            write();
            _level--;
        }
    }

    /// <summary>A key with a list of groups; nothing when there are none.</summary>
    public void AddList<T>(Keys.PlanKey key, IReadOnlyCollection<T> items, Action<T> write)
    {
        AddGroup(key, items.Count > 0, () =>
        {
            foreach (T item in items)
            {
                _beginsItem = true;
                _level++;
                write(item);
                _level--;
            }
        });
    }

    public override string ToString() => _text.ToString();

    /// <summary>Text as a YAML value, in quotes where it could be taken for anything else.</summary>
    public static string Quote(string text)
    {
        if (IsPlain(text))
        {
            return text;
        }

        StringBuilder quoted = new("\"");
        foreach (char letter in text)
        {
            _ = letter switch
            {
                '"' or '\\' => quoted.Append('\\').Append(letter),
                < ' ' or (> '~' and not (>= '\uD800' and < '\uE000')) when !char.IsLetterOrDigit(letter) => quoted.Append($"\\u{(int)letter:X4}"),
                _ => quoted.Append(letter),
            };
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>True for words that begin with a letter and hold nothing that YAML reads as a sign.</summary>
    private static bool IsPlain(string text)
    {
        if (text.Length == 0 || !char.IsLetter(text[0]) || text[^1] == ' ' || text is "null" or "Null" or "NULL" or "true" or "false" or "yes" or "no" or "on" or "off")
        {
            return false;
        }

        foreach (char letter in text)
        {
            if (!char.IsLetterOrDigit(letter) && letter is not (' ' or ',' or '.' or '-' or '/' or '(' or ')' or '\''))
            {
                return false;
            }
        }

        return true;
    }

    private StringBuilder Begin()
    {
        _text.Append(' ', 2 * (_beginsItem ? _level - 1 : _level));
        if (_beginsItem)
        {
            _text.Append("- ");
            _beginsItem = false;
        }

        return _text;
    }
}

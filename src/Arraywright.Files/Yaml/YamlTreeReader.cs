using Arraywright.Files.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Arraywright.Files.Yaml;

/// <summary>Text to a tree with places, for the plain part of YAML that a plan needs: no anchors, aliases, tags, merge keys or second document.</summary>
/// <remarks>Reading stops at the first place that is not YAML; the tree until there is given back, so that its other faults are found as well.</remarks>
internal sealed class YamlTreeReader(string text, FaultList faults)
{
    private const int DeepestLevel = 12;
    private const int MostNodes = 20_000;

    private readonly Parser _parser = new(new Scanner(new StringReader(text), skipComments: true));
    private readonly List<YamlNode> _openBrackets = [];
    private int _nodes;

    /// <summary>The keys at the top; null, with a fault, when there are none.</summary>
    public YamlMapping? Read()
    {
        while (Next() is StreamStart or DocumentStart)
        {
        }

        if (_parser.Current is null or StreamEnd or DocumentEnd)
        {
            if (!faults.BrokeOff)
            {
                AddEmpty();
            }

            return null;
        }

        YamlNode? root = Node(0);
        RefuseSecondDocument();
        switch (root)
        {
            case YamlMapping mapping:
                return mapping;
            case YamlScalar { IsNothing: true }:
                AddEmpty();
                return null;
            case YamlScalar or YamlSequence:
                faults.Add(root, root.Described, "the keys of a plan, one a line, such as \"plan: Lambing shed\"", "`arraywright new` writes a plan to begin with");
                return null;
            default:
                return null;
        }
    }

    private void AddEmpty() =>
        faults.Add(1, 1, "an empty file", "a plan", "`arraywright new` writes a plan to begin with");

    private void RefuseSecondDocument()
    {
        while (!faults.BrokeOff && Next() is { } next && next is not StreamEnd)
        {
            if (next is DocumentStart)
            {
                faults.Add((int)next.Start.Line, (int)next.Start.Column, "a second document (\"---\")", "one plan a file", "put each plan into its own file");
                faults.BrokeOff = true;
                return;
            }
        }
    }

    /// <summary>The node that begins at the current event; null when reading broke off before it was known.</summary>
    private YamlNode? Node(int level)
    {
        (int line, int column) = Place();
        if (++_nodes > MostNodes || level > DeepestLevel)
        {
            faults.Add(line, column, _nodes > MostNodes ? "many thousands of values" : "values nested ever deeper", "a plan, which is short and flat", "this is some other file");
            faults.BrokeOff = true;
            return null;
        }

        bool refused = RefuseDecoration(line, column);
        YamlNode? node = _parser.Current switch
        {
            Scalar scalar => ToScalar(scalar, line, column),
            SequenceStart start => Sequence(new YamlSequence(line, column), start.Style == SequenceStyle.Flow, level),
            MappingStart start => Mapping(new YamlMapping(line, column), start.Style == MappingStyle.Flow, level),
            _ => null,
        };
        return refused || (faults.BrokeOff && _openBrackets.Contains(node!)) ? new YamlReported(line, column) : node;
    }

    /// <summary>Anchors, aliases and tags: a plan needs none, and an alias can blow a small file up to any size.</summary>
    private bool RefuseDecoration(int line, int column)
    {
        switch (_parser.Current)
        {
            case AnchorAlias alias:
                faults.Add(line, column, Quoted.Text("*" + alias.Value.Value), "a value written out", "an asterisk begins a YAML alias, which a plan cannot have; in a wiring write \"2*name\"");
                return true;
            case NodeEvent { Anchor.IsEmpty: false } anchored:
                faults.Add(line, column, Quoted.Text("&" + anchored.Anchor.Value), "a value without a YAML anchor", "leave the anchor out");
                return false;
            case NodeEvent { Tag.IsEmpty: false } tagged:
                faults.Add(line, column, Quoted.Text(tagged.Tag.IsNonSpecific ? "!" : tagged.Tag.Value), "a value without a YAML tag", "leave the tag out");
                return false;
            default:
                return false;
        }
    }

    private YamlSequence Sequence(YamlSequence sequence, bool inBrackets, int level)
    {
        Open(sequence, inBrackets);
        while (Next() is { } next && next is not SequenceEnd)
        {
            if (Node(level + 1) is { } item)
            {
                sequence.Items.Add(item);
            }
        }

        Close(inBrackets);
        return sequence;
    }

    private YamlMapping Mapping(YamlMapping mapping, bool inBrackets, int level)
    {
        Open(mapping, inBrackets);
        Dictionary<string, YamlScalar> seen = [];
        while (Next() is { } next && next is not MappingEnd)
        {
            YamlScalar? key = Key(level, seen);
            if (Next() is null)
            {
                break;
            }

            if (Node(level + 1) is { } value && key is not null)
            {
                mapping.Entries.Add(new YamlEntry(key, value));
            }
        }

        Close(inBrackets);
        return mapping;
    }

    /// <summary>A key seen for the first time; null, with a fault, for anything else.</summary>
    private YamlScalar? Key(int level, Dictionary<string, YamlScalar> seen)
    {
        YamlNode? node = Node(level + 1);
        if (node is not YamlScalar key)
        {
            if (node is not (null or YamlReported))
            {
                faults.Add(node, node.Described, "a key, which is one word", null);
            }

            return null;
        }

        if (key.Text == "<<")
        {
            faults.Add(key, "\"<<\"", "a key", "YAML merge keys are not read; write the values out");
            return null;
        }

        if (!seen.TryAdd(key.Text, key))
        {
            faults.Add(key, $"the key {Quoted.Text(key.Text)} again", "each key once", $"it stands on line {seen[key.Text].Line} already; keep one of the two");
            return null;
        }

        return key;
    }

    private static YamlScalar ToScalar(Scalar scalar, int line, int column)
    {
        bool quoted = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        int marks = quoted ? 1 : 0;
        bool asWritten = scalar.Start.Line == scalar.End.Line && scalar.End.Column - scalar.Start.Column == scalar.Value.Length + (2 * marks);
        return new YamlScalar(line, column, scalar.Value, asWritten ? column + marks : null, quoted || scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded);
    }

    private void Open(YamlNode node, bool inBrackets)
    {
        if (inBrackets)
        {
            _openBrackets.Add(node);
        }
    }

    private void Close(bool inBrackets)
    {
        if (inBrackets && !faults.BrokeOff)
        {
            _openBrackets.RemoveAt(_openBrackets.Count - 1);
        }
    }

    private (int Line, int Column) Place() => ((int)_parser.Current!.Start.Line, (int)_parser.Current.Start.Column);

    /// <summary>The next event; null once the text ended or broke off.</summary>
    private ParsingEvent? Next()
    {
        try
        {
            return !faults.BrokeOff && _parser.MoveNext() ? _parser.Current : null;
        }
        catch (YamlException trouble)
        {
            YamlTrouble.Add(trouble, text, _openBrackets, faults);
        }
        catch (Exception trouble) when (trouble is InvalidOperationException or ArgumentException)
        {
            // The parser gives up these ways, without a place, on a bracket still open where a line begins anew at the left, and on odd tags.
            YamlTrouble.AddWithoutPlace(_parser.Current, _openBrackets, faults);
        }

        faults.BrokeOff = true;
        return null;
    }
}

using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Presentation.Terminal;

/// <summary>A wiring drawn in characters: each panel a box with its two leads, strings from plus on the left to minus on the right, as in the drawings, side-by-side strings stacked.</summary>
/// <remarks>A string that must have a fuse has it at its plus end. Too wide for the line, it is drawn with letters for the kinds of panel; still too wide, it is told as an indented list.</remarks>
public static class WiringPicture
{
    private const int Indent = 4;

    /// <summary>Writes the picture with the input at its two ends.</summary>
    /// <param name="writer">Where the picture goes.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="fusesA">The fuse of each string, A, null for none, in the order of the canonical wiring's strings; empty for no fuses at all.</param>
    /// <param name="input">Name of the input.</param>
    /// <param name="style">Width.</param>
    public static void Write(TextWriter writer, Wiring wiring, ImmutableArray<double?> fusesA, string input, TerminalStyle style)
    {
        Wiring canonical = WiringText.Canonical(wiring);
        string left = $"{input} + ──";
        string right = $"── − {input}";
        int room = style.Width - Indent - left.Length - right.Length;
        PictureBlock block = Draw(canonical, fusesA, name => name);
        if (block.Width <= room)
        {
            WriteBlock(writer, block, left, right);
            return;
        }

        string[] kinds = [.. canonical.Panels.Distinct(StringComparer.Ordinal)];
        block = Draw(canonical, fusesA, name => Letter(kinds, name));
        if (block.Width <= room && kinds.Length <= 26)
        {
            WriteBlock(writer, block, left, right);
            TextFlow.Write(writer, "    ", string.Join(", ", kinds.Select(kind => $"{Letter(kinds, kind)} is {kind}")) + ".", style.Width);
            return;
        }

        WriteList(writer, canonical, Indent);
    }

    private static PictureBlock Draw(Wiring wiring, ImmutableArray<double?> fusesA, Func<string, string> label)
    {
        PictureBlock[] strings = [.. wiring.Strings.Select((part, index) => index < fusesA.Length && fusesA[index] is { } fuseA
            ? PictureBlock.InSeries([PictureBlock.OfFuse(Figures.Stated(fuseA, "A")), Draw(part, label)])
            : Draw(part, label))];
        return strings.Length == 1 ? strings[0] : PictureBlock.InParallel(strings);
    }

    private static PictureBlock Draw(Wiring wiring, Func<string, string> label) => wiring switch
    {
        Wiring.Single single => PictureBlock.Of(label(single.Panel)),
        Wiring.Series series => PictureBlock.InSeries([.. series.Parts.Select(part => Draw(part, label))]),
        Wiring.Parallel parallel => PictureBlock.InParallel([.. parallel.Parts.Select(part => Draw(part, label))]),
        _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
    };

    private static void WriteBlock(TextWriter writer, PictureBlock block, string left, string right)
    {
        for (int row = 0; row < block.Rows.Count; row++)
        {
            string before = row == 0 ? left : new string(' ', left.Length);
            writer.WriteLine((new string(' ', Indent) + before + block.Rows[row] + (row == 0 ? right : "")).TrimEnd());
        }
    }

    private static void WriteList(TextWriter writer, Wiring wiring, int indent)
    {
        string margin = new(' ', indent);
        (string title, IReadOnlyList<Wiring> parts) = wiring switch
        {
            Wiring.Series series => ("in a row, − of each to + of the next:", series.Parts),
            Wiring.Parallel parallel => ("side by side, all + together, all − together:", parallel.Parts),
            _ => (((Wiring.Single)wiring).Panel, (IReadOnlyList<Wiring>)[]),
        };
        writer.WriteLine(margin + title);
        for (int index = 0; index < parts.Count;)
        {
            int same = 1;
            while (index + same < parts.Count && parts[index + same].Equals(parts[index]))
            {
                same++;
            }

            index += same;
            if (parts[index - 1] is Wiring.Single single)
            {
                writer.WriteLine($"{margin}  {same} × {single.Panel}");
                continue;
            }

            if (same > 1)
            {
                writer.WriteLine($"{margin}  {same} times this:");
            }

            WriteList(writer, parts[index - 1], same > 1 ? indent + 4 : indent + 2);
        }
    }

    private static string Letter(string[] kinds, string name) => ((char)('A' + Array.IndexOf(kinds, name))).ToString();
}

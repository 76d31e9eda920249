namespace Arraywright.Presentation.Terminal;

/// <summary>A rectangle of characters whose lead enters and leaves on its first row.</summary>
/// <remarks>In series blocks stand side by side on that row; in parallel they are stacked between two rails.</remarks>
internal sealed class PictureBlock
{
    private readonly string[] _rows;

    private PictureBlock(string[] rows) => _rows = rows;

    /// <summary>The rows, all of one width, top first.</summary>
    public IReadOnlyList<string> Rows => _rows;

    /// <summary>Columns.</summary>
    public int Width => _rows[0].Length;

    /// <summary>One panel.</summary>
    public static PictureBlock Of(string label) => new([$"[+ {label} −]"]);

    /// <summary>A fuse in the lead.</summary>
    public static PictureBlock OfFuse(string rating) => new([$"(fuse {rating})"]);

    /// <summary>Blocks one after the other, a lead between each two.</summary>
    public static PictureBlock InSeries(IReadOnlyList<PictureBlock> blocks)
    {
        string[] rows = new string[blocks.Max(block => block._rows.Length)];
        for (int row = 0; row < rows.Length; row++)
        {
            rows[row] = string.Join(row == 0 ? "──" : "  ", blocks.Select(block => block.RowOrBlank(row)));
        }

        return new PictureBlock(rows);
    }

    /// <summary>Blocks one below the other between two rails.</summary>
    public static PictureBlock InParallel(IReadOnlyList<PictureBlock> blocks)
    {
        int width = blocks.Max(block => block.Width);
        List<string> rows = [];
        for (int index = 0; index < blocks.Count; index++)
        {
            bool last = index == blocks.Count - 1;
            PictureBlock block = blocks[index];
            for (int row = 0; row < block._rows.Length; row++)
            {
                (string left, string right) = (index, row, last) switch
                {
                    (0, 0, _) => ("┬─", "─┬"),
                    (_, 0, true) => ("└─", "─┘"),
                    (_, 0, false) => ("├─", "─┤"),
                    (_, _, true) => ("  ", "  "),
                    _ => ("│ ", " │"),
                };
                rows.Add(left + block._rows[row].PadRight(width, row == 0 ? '─' : ' ') + right);
            }
        }

        return new PictureBlock([.. rows]);
    }

    private string RowOrBlank(int row) => row < _rows.Length ? _rows[row] : new string(' ', Width);
}

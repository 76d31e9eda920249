namespace Arraywright.Presentation.Terminal;

/// <summary>Rows of cells in aligned columns. Columns are as wide as their widest cell, two spaces apart.</summary>
/// <param name="rightAligned">One entry a column: true for numbers.</param>
internal sealed class TextTable(params bool[] rightAligned)
{
    private readonly List<Row> _rows = [];

    /// <summary>Adds a row: one cell a column; <paramref name="paint"/> colours the first cell.</summary>
    public void Add(string[] cells, Func<string, string>? paint = null) => _rows.Add(new Row(cells, paint, null));

    /// <summary>Adds a line of running text below the last row, broken to fit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="column">The column under which it begins.</param>
    public void AddNote(string text, int column) => _rows.Add(new Row([text], null, column));

    /// <summary>Writes the table, indented; the text column of <paramref name="wrapped"/> is broken so that rows fit the width.</summary>
    public void Write(TextWriter writer, int indent, int width, int wrapped)
    {
        int[] widths = Widths();
        widths[wrapped] = Math.Max(12, Math.Min(widths[wrapped], width - indent - (2 * (widths.Length - 1)) - (widths.Sum() - widths[wrapped])));
        foreach (Row row in _rows)
        {
            if (row.NoteColumn is { } column)
            {
                int start = indent + widths.Take(column).Sum(w => w + 2);
                TextFlow.Write(writer, new string(' ', start), row.Cells[0], width);
                continue;
            }

            List<string> lines = TextFlow.Lines(row.Cells[wrapped], widths[wrapped]);
            for (int line = 0; line < lines.Count; line++)
            {
                writer.WriteLine((new string(' ', indent) + Line(row, line, lines[line], widths, wrapped)).TrimEnd());
            }
        }
    }

    private int[] Widths()
    {
        int[] widths = new int[rightAligned.Length];
        foreach (Row row in _rows.Where(row => row.NoteColumn is null))
        {
            for (int column = 0; column < widths.Length; column++)
            {
                widths[column] = Math.Max(widths[column], row.Cells[column].Length);
            }
        }

        return widths;
    }

    private string Line(Row row, int line, string wrappedText, int[] widths, int wrapped)
    {
        string[] padded = new string[widths.Length];
        for (int column = 0; column < widths.Length; column++)
        {
            string text = column == wrapped ? wrappedText : line == 0 ? row.Cells[column] : "";
            padded[column] = rightAligned[column] ? text.PadLeft(widths[column]) : text.PadRight(widths[column]);
        }

        if (row.Paint is { } paint && line == 0)
        {
            padded[0] = paint(padded[0]);
        }

        return string.Join("  ", padded);
    }

    private sealed record Row(string[] Cells, Func<string, string>? Paint, int? NoteColumn);
}

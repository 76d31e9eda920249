using System.Globalization;

namespace Arraywright.Presentation.Report;

/// <summary>A table of a report as HTML: every column and row with its head, notes in a row of their own. Where a screen is too narrow for columns, each cell names its own.</summary>
internal static class HtmlTable
{
    /// <summary>Writes it, in a frame of its own that scrolls where a screen is too narrow.</summary>
    public static void Write(HtmlPage page, ReportBlock.Table table)
    {
        page.Begin("div");
        page.Attribute("class", "table");
        page.Attribute("role", "group");
        page.Attribute("aria-label", table.Caption);
        page.Attribute("tabindex", "0");
        page.Begin("table");
        page.Element("caption", table.Caption);
        if (table.Columns.Any(column => column.Title.Length > 0))
        {
            WriteHead(page, table);
        }

        page.Begin("tbody");
        foreach (ReportRow row in table.Rows)
        {
            WriteRow(page, table, row);
        }

        page.End();
        page.End();
        page.End();
    }

    private static void WriteHead(HtmlPage page, ReportBlock.Table table)
    {
        page.Begin("thead");
        page.Begin("tr");
        foreach (ReportColumn column in table.Columns)
        {
            page.Begin(column.Title.Length > 0 ? "th" : "td");
            if (column.Title.Length > 0)
            {
                page.Attribute("scope", "col");
            }

            Figure(page, column);
            page.Text(column.Title);
            page.End(isFull: true);
        }

        page.End();
        page.End();
    }

    private static void WriteRow(HtmlPage page, ReportBlock.Table table, ReportRow row)
    {
        page.Begin("tr");
        for (int column = 0; column < row.Cells.Length; column++)
        {
            page.Begin(column == 0 ? "th" : "td");
            if (column == 0)
            {
                page.Attribute("scope", "row");
                if (row.Level is { } level)
                {
                    page.Attribute("class", HtmlStyle.Class(level));
                }
            }

            else if (table.Columns[column].Title is { Length: > 0 } title)
            {
                page.Attribute("data-label", title);
            }

            Figure(page, table.Columns[column]);
            page.Attribute("dir", "auto");
            page.Text(row.Cells[column]);
            page.End(isFull: true);
        }

        page.End();
        foreach (string note in row.Notes)
        {
            page.Begin("tr");
            page.Attribute("class", "note");
            page.Begin("td");
            page.End(isFull: true);
            page.Begin("td");
            page.Attribute("colspan", (table.Columns.Length - 1).ToString(CultureInfo.InvariantCulture));
            page.Text(note);
            page.End();
            page.End();
        }
    }

    private static void Figure(HtmlPage page, ReportColumn column)
    {
        if (column.IsNumber)
        {
            page.Attribute("class", "figure");
        }
    }
}

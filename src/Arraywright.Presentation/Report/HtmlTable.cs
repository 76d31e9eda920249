using System.Globalization;
using System.Xml;

namespace Arraywright.Presentation.Report;

/// <summary>A table of a report as HTML: every column and row with its head, notes in a row of their own.</summary>
internal static class HtmlTable
{
    /// <summary>Writes it, in a frame of its own that scrolls where a screen is too narrow.</summary>
    public static void Write(XmlWriter page, ReportBlock.Table table)
    {
        page.WriteStartElement("div");
        page.WriteAttributeString("class", "table");
        page.WriteAttributeString("role", "group");
        page.WriteAttributeString("aria-label", HtmlReport.Text(table.Caption));
        page.WriteAttributeString("tabindex", "0");
        page.WriteStartElement("table");
        page.WriteElementString("caption", HtmlReport.Text(table.Caption));
        if (table.Columns.Any(column => column.Title.Length > 0))
        {
            WriteHead(page, table);
        }

        page.WriteStartElement("tbody");
        foreach (ReportRow row in table.Rows)
        {
            WriteRow(page, table, row);
        }

        page.WriteEndElement();
        page.WriteEndElement();
        page.WriteEndElement();
    }

    private static void WriteHead(XmlWriter page, ReportBlock.Table table)
    {
        page.WriteStartElement("thead");
        page.WriteStartElement("tr");
        foreach (ReportColumn column in table.Columns)
        {
            page.WriteStartElement(column.Title.Length > 0 ? "th" : "td");
            if (column.Title.Length > 0)
            {
                page.WriteAttributeString("scope", "col");
            }

            Figure(page, column);
            page.WriteString(column.Title);
            page.WriteFullEndElement();
        }

        page.WriteEndElement();
        page.WriteEndElement();
    }

    private static void WriteRow(XmlWriter page, ReportBlock.Table table, ReportRow row)
    {
        page.WriteStartElement("tr");
        for (int column = 0; column < row.Cells.Length; column++)
        {
            page.WriteStartElement(column == 0 ? "th" : "td");
            if (column == 0)
            {
                page.WriteAttributeString("scope", "row");
                if (row.Level is { } level)
                {
                    page.WriteAttributeString("class", HtmlStyle.Class(level));
                }
            }

            Figure(page, table.Columns[column]);
            page.WriteAttributeString("dir", "auto");
            page.WriteString(HtmlReport.Text(row.Cells[column]));
            page.WriteFullEndElement();
        }

        page.WriteEndElement();
        foreach (string note in row.Notes)
        {
            page.WriteStartElement("tr");
            page.WriteAttributeString("class", "note");
            page.WriteStartElement("td");
            page.WriteFullEndElement();
            page.WriteStartElement("td");
            page.WriteAttributeString("colspan", (table.Columns.Length - 1).ToString(CultureInfo.InvariantCulture));
            page.WriteString(HtmlReport.Text(note));
            page.WriteEndElement();
            page.WriteEndElement();
        }
    }

    private static void Figure(XmlWriter page, ReportColumn column)
    {
        if (column.IsNumber)
        {
            page.WriteAttributeString("class", "figure");
        }
    }
}

using Arraywright.Files;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Drawing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>What to buy, and how strong each piece must be.</summary>
internal static class PartsSheet
{
    /// <summary>The shopping list, each piece, the drawing with sizes, other ways.</summary>
    public static Sheet Of(PartsList list, PlannerOptions options)
    {
        string sentence = PartsScreen.Sentence(list);
        Picture diagram = DrawingSheet.Of(list, ReadingStudy.Of(list.Plan, list.Design, options)).Diagram();
        bool hasPrice = list.Shopping.Any(line => line.Price is not null);
        TableColumn[] columns = [new("What", false), new("Rating", false), new("Buy", true), .. hasPrice ? [new TableColumn("Price", true)] : Array.Empty<TableColumn>()];
        return new Sheet("",
        [
            Block.Of(BlockKind.Verdict, sentence) with { Level = AnswerMaker.LevelOf(list.Verdict) },
            list.Shopping.IsEmpty
                ? Block.Of(BlockKind.Paragraph, PartsScreen.NothingToBuy(list))
                : Blocks.Table("What to buy", columns, list.Shopping.Select(line => Row(line, hasPrice, list.Plan.Currency))),
            Block.Of(BlockKind.Picture, diagram.Title) with { Svg = diagram.ToSvg() },
            .. list.Inputs.SelectMany(Pieces),
            .. Others(list),
            .. Blocks.Assumed(list.Assumed),
            .. Blocks.Cautions(list.Cautions),
        ])
        { Files = [new SheetFile("parts.csv", "text/csv", PartsJson.Csv(list))] };
    }

    private static string[] Row(ShoppingLine line, bool hasPrice, string? currency)
    {
        string[] row = [line.What, line.Rating, line.BuyM is { } metres ? Figures.Of(metres, "m") : $"{line.Buy}"];
        return hasPrice ? [.. row, line.Price is { } price ? GrowthTable.Amount(price) + " " + currency : "–"] : row;
    }

    private static IEnumerable<Block> Pieces(InputParts parts)
    {
        Finding[] told = [.. parts.Pieces.SelectMany(piece => piece.Findings).OrderByDescending(finding => finding.Level)];
        yield return Block.Of(BlockKind.Table, $"What each piece must bear: {parts.Input}") with
        {
            Columns = [new("", false), new("Rule", false), new("Figure", true), new("Limit", false)],
            Rows = [.. told.Select(finding => new TableRow(
                [FindingsTable.Word(finding.Level), finding.Title, FindingsTable.Value(finding), FindingsTable.Limit(finding)],
                [$"{finding.Working} [{finding.Source}]", .. finding.Note is { } note ? [note] : Array.Empty<string>()]))],
        };
    }

    private static IEnumerable<Block> Others(PartsList list)
    {
        if (!list.Alternatives.IsEmpty)
        {
            yield return Blocks.Table("Other ways", [new("Way", false), new("Gains", true)], list.Alternatives.Select(other => new[]
            {
                string.Join("; ", [other.What, .. other.Wirings]),
                other.GainKWh is { } kWh ? $"{Figures.Number(kWh, 1)} kWh" : Figures.Percent(other.GainPercent),
            }));
        }
    }
}

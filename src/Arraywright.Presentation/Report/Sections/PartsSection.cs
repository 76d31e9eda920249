using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What to buy, what each piece must bear and why, and other ways.</summary>
internal static class PartsSection
{
    public static ReportSection Of(PartsList list)
    {
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        if (list.Shopping.IsEmpty)
        {
            blocks.Add(new ReportBlock.Paragraph(PartsScreen.NothingToBuy(list)));
        }
        else
        {
            blocks.Add(ToBuy(list));
        }

        foreach (InputParts input in list.Inputs.Where(input => input.Wiring is not null))
        {
            Add(blocks, input);
        }

        if (!list.Alternatives.IsEmpty)
        {
            blocks.Add(new ReportBlock.Heading("Other ways"));
            blocks.Add(new ReportBlock.Bullets([.. list.Alternatives.Select(other => new ReportItem("", PartsScreen.OtherWay(list, other)))]));
        }

        return new ReportSection("parts", "Parts", blocks.ToImmutable());
    }

    private static ReportBlock ToBuy(PartsList list)
    {
        bool isPriced = list.Shopping.Any(line => line.Price is not null);
        ImmutableArray<ReportColumn> columns = [new("part", false, 5), new("rating or size", false, 5), new("needed", true, 2), new("at hand", true, 2), new("to buy", true, 2)];
        return new ReportBlock.Table(
            $"To buy, by the rules {(list.Rules == RuleSet.Us ? "of the NEC" : "of the IEC")}",
            isPriced ? columns.Add(new("price", true, 2)) : columns,
            [.. list.Shopping.Select(line => Row(line, list, isPriced))]);
    }

    private static ReportRow Row(ShoppingLine line, PartsList list, bool isPriced)
    {
        string[] cells =
        [
            line.What,
            line.Rating,
            line.NeededM is { } neededM ? PartsScreen.Metres(neededM) : $"{line.Needed}",
            line.OwnedM is { } ownedM ? PartsScreen.Metres(ownedM) : $"{line.Owned}",
            line.BuyM is { } buyM ? PartsScreen.Metres(buyM) : $"{line.Buy}",
        ];
        return ReportRow.Of(isPriced ? [.. cells, line.Price is { } price ? GrowthTable.Money(price, list.Plan) : "–"] : cells);
    }

    private static void Add(ImmutableArray<ReportBlock>.Builder blocks, InputParts input)
    {
        blocks.Add(new ReportBlock.Table(
            $"What each piece must bear on {input.Input}",
            [new("pieces", true, 1), new("piece", false, 6), new("must carry", true, 2), new("rating", true, 2), new("bears at least", true, 2), new("drops, each", true, 2), new("heat a year, each", true, 2)],
            [.. input.Pieces.GroupBy(PartsScreen.Likeness).Select(Row)]));
        string heat = input.HeatKWh is { } heatKWh ? $", {Figures.Energy(heatKWh)} a year" : "";
        blocks.Add(new ReportBlock.Paragraph(
            $"From the panels to {input.Input} {Figures.Number(input.DropV, 2)} V are lost, {Figures.Percent(input.DropPercent)} of {Figures.Of(input.Operating.VoltageV, "V")}, {MeterTable.At(input.Conditions)}{heat}."));
        blocks.Add(FindingsSection.Table($"What the rules say of the parts on {input.Input}", input.Pieces.SelectMany(piece => piece.Findings).Distinct()));
    }

    private static ReportRow Row(IGrouping<string, Piece> alike)
    {
        Piece piece = alike.First();
        return new ReportRow(
            [
                $"{alike.Count()}",
                PartsScreen.Named(piece),
                Figures.Of(piece.NeededA, "A"),
                PartsScreen.Rating(piece),
                Figures.Stated(piece.RatingV, "V"),
                piece.Ohm > 0 ? $"{Figures.Number(alike.Average(one => one.DropV), 3)} V" : "–",
                PartsScreen.HeatOfEach(alike),
            ],
            [$"{piece.Working} [{piece.Source}]"]);
    }
}

using Arraywright.Energy;
using Arraywright.Files;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>A year and a day.</summary>
internal static class EnergySheets
{
    private const string Never = "No limit of the input cut anything off.";

    /// <summary>A year: its chart, its months, where the rest went.</summary>
    public static Sheet Of(YearResult year)
    {
        Chart chart = YearPlot.Of(year);
        return new Sheet("",
        [
            Blocks.Wiring(year.Design),
            Block.Of(BlockKind.Paragraph, chart.Description),
            Block.Of(BlockKind.Picture, chart.Title) with { Svg = chart.ToSvg() },
            Months(year.Energy),
            .. Rest(year.Energy, year.WeatherSource),
            .. Blocks.Assumed(year.Assumed),
            .. Blocks.Cautions(year.Cautions),
        ])
        { Files = [new SheetFile("year.csv", "text/csv", EnergyJson.Csv(year))] };
    }

    /// <summary>A day: its chart, where the rest went, its hours as a file.</summary>
    public static Sheet Of(DayResult day)
    {
        Chart chart = DayPlot.Of(day);
        return new Sheet("",
        [
            Blocks.Wiring(day.Design),
            Block.Of(BlockKind.Paragraph, chart.Description),
            Block.Of(BlockKind.Picture, chart.Title) with { Svg = chart.ToSvg() },
            .. Rest(day.Energy, day.WeatherSource),
            .. Blocks.Assumed(day.Assumed),
            .. Blocks.Cautions(day.Cautions),
        ])
        { Files = [new SheetFile("day.csv", "text/csv", EnergyJson.Csv(day))] };
    }

    private static Block Months(EnergyResult energy)
    {
        bool hasLoad = energy.Total.LoadKWh > 0;
        TableColumn[] columns = [new("Month", false), new("Into the inputs", true), new("Cut off", true), .. hasLoad ? [new TableColumn("Load met", true)] : Array.Empty<TableColumn>()];
        return Blocks.Table("Month by month", columns, energy.Spans.Append(energy.Total).Select(span => Row(span, hasLoad)));
    }

    private static string[] Row(EnergySpan span, bool hasLoad)
    {
        string[] row = [span.Name, Figures.Energy(span.DeliveredKWh), Figures.Energy(span.ClippedKWh)];
        return hasLoad ? [.. row, Figures.Percent(span.LoadKWh > 0 ? span.ServedKWh / span.LoadKWh * 100 : 100)] : row;
    }

    private static IEnumerable<Block> Rest(EnergyResult energy, string weather)
    {
        yield return Blocks.Table("Where the rest goes", [new("Step", false), new("Energy", true)], energy.Losses.Select(Row));
        yield return Block.Of(BlockKind.Paragraph, EnergyParts.Held(energy, Never));
        if (energy.Battery is { } battery)
        {
            yield return Block.Of(BlockKind.Paragraph, EnergyParts.Battery(battery));
        }

        yield return Block.Of(BlockKind.Heading, "The weather");
        yield return Blocks.Sentence(weather);
    }

    private static string[] Row(EnergyStep step) =>
        [step.Stage, EnergyParts.IsLevel(step) ? Figures.Energy(step.KWh) : $"{(step.KWh < 0 ? '+' : Figures.Minus)} {Figures.Energy(Math.Abs(step.KWh))}"];
}

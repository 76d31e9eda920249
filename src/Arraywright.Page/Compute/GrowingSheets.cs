using Arraywright.Files;
using Arraywright.Growing;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>How the panels should face, and what more of them would bring.</summary>
internal static class GrowingSheets
{
    /// <summary>The best facing of each span of the year, the year by tilt, a second tilt.</summary>
    public static Sheet Of(TiltResult tilt)
    {
        List<Block> blocks = [Verdict(TiltScreen.Answer(tilt), tilt.Verdict), Blocks.Wiring(tilt.Design), Spans(tilt), .. Told(TiltScreen.KeepsItsOwn(tilt))];
        if (tilt.Spans[0].Best is { } best)
        {
            blocks.Add(Blocks.Table(
                $"The year by tilt, facing {TiltScreen.Direction(best.AzimuthDeg)}",
                [new("Tilt", true), new("kWh a year", true)],
                tilt.ByTilt.Select(facing => new[] { TiltScreen.Degrees(facing.TiltDeg), Figures.Number(facing.DeliveredKWh, 1) })));
            blocks.AddRange(Told(TiltScreen.NearlySentence(tilt)));
            blocks.Add(Block.Of(BlockKind.Heading, "Two tilts a year"));
            blocks.Add(Block.Of(BlockKind.Paragraph, TiltScreen.TwoSentence(tilt, best)));
        }

        return new Sheet("", [.. blocks, .. Grounds(tilt.WeatherSource, tilt.Assumed, tilt.Cautions)]);
    }

    /// <summary>What each panel more adds, kind by kind, and the label that would fill each input.</summary>
    public static Sheet Of(GrowthResult growth) => new("",
    [
        Verdict(GrowthScreen.Answer(growth), growth.Verdict),
        Block.Of(BlockKind.Heading, "What you have, wired as well as may be"),
        Blocks.Wiring(growth.Now.Design),
        Block.Of(BlockKind.Paragraph, GrowthScreen.NowSentence(growth.Now)),
        .. Told(GrowthScreen.WireAnew(growth)),
        .. growth.Curves.SelectMany(curve => Of(curve, growth)),
        .. growth.Ideals.SelectMany(Of),
        .. Grounds(growth.WeatherSource, growth.Assumed, growth.Cautions),
    ])
    { Files = [new SheetFile("more-panels.csv", "text/csv", GrowthJson.Csv(growth))] };

    private static Block Spans(TiltResult tilt) => Blocks.Table(
        "Best facing",
        [new("For", false), new("Tilt", true), new("Facing", true), new("kWh", true), new("As planned", true), new("Less", true), new("Tilt, where the direction stays", true)],
        tilt.Spans.Select(span => new[]
        {
            span.Span,
            span.Best is { } best ? TiltScreen.Degrees(best.TiltDeg) : "any",
            span.Best is { } facing ? TiltScreen.Degrees(facing.AzimuthDeg) : "–",
            Figures.Number((span.Best ?? span.Own).DeliveredKWh, 1),
            Figures.Number(span.Own.DeliveredKWh, 1),
            Figures.Percent(100 * span.LossShare),
            span.BestTilt is { } alone ? TiltScreen.Degrees(alone.TiltDeg) : "–",
        }));

    private static IEnumerable<Block> Of(GrowthCurve curve, GrowthResult growth)
    {
        bool priced = curve.Kind.Panel.Price is not null;
        string each = curve.Kind.Panel.Price is { } price ? $", {GrowthTable.Money(price, growth.Plan)} each" : "";
        return
        [
            Blocks.Table(
                $"More {curve.Kind.Panel.Name}{each}",
                [.. GrowthTable.Columns(curve, growth.Plan).Select(column => new TableColumn(column, column.Length > 0)), new("wired", false)],
                curve.Points.Select(point => (string[])[.. GrowthTable.Row(point, priced), GrowthTable.Wired(point.Design)])),
            Block.Of(BlockKind.Paragraph, GrowthTable.WorthSentence(curve, growth)),
            .. GrowthTable.Remarks(curve, growth).Select(remark => Block.Of(BlockKind.Paragraph, remark)),
        ];
    }

    private static IEnumerable<Block> Of(IdealPanel ideal) =>
    [
        Block.Of(BlockKind.Heading, IdealPart.Title(ideal)),
        .. Told(IdealPart.Reach(ideal)),
        .. IdealPart.Windows(ideal).ToArray() is { Length: > 0 } windows ? [Blocks.Table("The figures of such a label", [.. IdealPart.Columns.Select(column => new TableColumn(column, true))], windows)] : Array.Empty<Block>(),
        .. Told(IdealPart.NotPossible(ideal)),
        Block.Of(BlockKind.Paragraph, IdealPart.Nearest),
        new Block(BlockKind.Bullets) { Items = [.. ideal.Kinds.Select(fit => new BulletLine("", string.Join(' ', [IdealPart.Fit(fit), .. fit.Obstacles.Select(obstacle => IdealPart.Obstacle(fit, obstacle))])))] },
    ];

    private static Block Verdict(string sentence, Level level) => Block.Of(BlockKind.Verdict, sentence) with { Level = AnswerMaker.LevelOf(level) };

    private static Block[] Told(string? sentence) => sentence is null ? [] : [Block.Of(BlockKind.Paragraph, sentence)];

    private static IEnumerable<Block> Grounds(string weather, IEnumerable<Assumption> assumed, IEnumerable<string> cautions) =>
    [
        Block.Of(BlockKind.Heading, "The weather"),
        Blocks.Sentence(weather),
        .. Blocks.Assumed(assumed),
        .. Blocks.Cautions(cautions),
    ];
}

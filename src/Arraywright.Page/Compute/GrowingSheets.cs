using Arraywright.Growing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>How the panels should face, and what more of them would bring.</summary>
internal static class GrowingSheets
{
    private const int Columns = 60;

    /// <summary>The best facing of each span of the year.</summary>
    public static Sheet Of(TiltResult tilt)
    {
        TableColumn[] columns = [new("For", false), new("Best tilt", true), new("Best direction", true), new("Now short of it by", true)];
        return new Sheet("",
        [
            Blocks.Table("Best facing", columns, tilt.Spans.Select(span => new[]
            {
                span.Span,
                span.Best is { } best ? Figures.Of(best.TiltDeg, "°") : "–",
                span.Best is { } facing ? Figures.Of(facing.AzimuthDeg, "°") : "–",
                Figures.Percent(span.LossShare * 100),
            })),
            Block.Of(BlockKind.Text, Screen(writer => new TiltScreen(writer, Style).Write(tilt))),
        ]);
    }

    /// <summary>What each panel more adds, kind by kind.</summary>
    public static Sheet Of(GrowthResult growth) => new("",
    [
        .. growth.Curves.Select(curve => Blocks.Table(
            $"More of {curve.Kind.Panel.Name}",
            [new("More", true), new("kWh a year", true), new("This one adds", true)],
            curve.Points.Select(point => new[] { $"{point.More}", Figures.Of(point.DeliveredKWh, "kWh"), Figures.Of(point.GainKWh, "kWh") }))),
        Block.Of(BlockKind.Text, Screen(writer => new GrowthScreen(writer, Style).Write(growth))),
    ]);

    private static TerminalStyle Style { get; } = TerminalStyle.Plain with { Width = Columns };

    private static string Screen(Action<TextWriter> write)
    {
        StringWriter text = new() { NewLine = "\n" };
        write(text);
        return text.ToString();
    }
}

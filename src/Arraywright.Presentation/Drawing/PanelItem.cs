using System.Globalization;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>A panel from behind: its box with two leads, its number, its name.</summary>
/// <param name="panel">The panel.</param>
/// <param name="isLying">Whether it lies on its long side, where many are below each other.</param>
internal sealed class PanelItem(HookupPart.Panel panel, bool isLying) : ArrangementItem
{
    private const double StandingPx = 62;
    private const double TallPx = 92;
    private const double LyingPx = 104;
    private const double LowPx = 40;
    private const double BoxPx = 18;
    private const double NamePx = 11;

    /// <inheritdoc/>
    public override double WidthPx => isLying ? LyingPx : StandingPx;

    /// <inheritdoc/>
    public override double HeightPx => 9 + (isLying ? LowPx : TallPx);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx) => sketch.Group($"panel {panel.Number}, {panel.Name}", inner =>
    {
        double middlePx = xPx + (WidthPx / 2);
        double leadsPx = topPx + LeadsPx;
        inner.Box(xPx, topPx + 9, WidthPx, HeightPx - 9, Pen.Outline, Tone.Paper);
        inner.Box(middlePx - (BoxPx / 2), leadsPx - 6, BoxPx, 12, Pen.Outline, Tone.Shade);
        inner.Level(Pen.Plus, xPx, middlePx - (BoxPx / 2), leadsPx);
        inner.Level(Pen.Minus, middlePx + (BoxPx / 2), xPx + WidthPx, leadsPx);
        inner.Text(xPx + 8, leadsPx + 14, "+", isBold: true, Anchor.Middle);
        inner.Text(xPx + WidthPx - 8, leadsPx + 14, Figures.Minus.ToString(CultureInfo.InvariantCulture), isBold: true, Anchor.Middle);
        string number = panel.Number.ToString(CultureInfo.InvariantCulture);
        if (isLying)
        {
            inner.Text(xPx + 16, topPx + 21, number, isBold: true, Anchor.Middle);
            inner.Text(middlePx, leadsPx + 17, Sketch.Cut(panel.Name, WidthPx - 32, isBold: false, NamePx), isBold: false, Anchor.Middle, NamePx);
            return;
        }

        inner.Text(middlePx, leadsPx + 32, number, isBold: true, Anchor.Middle, 18);
        double linePx = leadsPx + 50;
        foreach (string line in Name())
        {
            inner.Text(middlePx, linePx, line, isBold: false, Anchor.Middle, NamePx);
            linePx += NamePx + 2;
        }
    });

    /// <summary>The name in two lines at most, broken after a hyphen where it can be.</summary>
    private List<string> Name()
    {
        const double roomPx = StandingPx - 6;
        string name = string.Join(' ', panel.Name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        int hyphen = name.LastIndexOf('-');
        bool fits = TextMeasure.Width(name, NamePx, isBold: false) <= roomPx;
        return fits || hyphen <= 0 || hyphen == name.Length - 1
            ? TextMeasure.Wrap(name, roomPx, NamePx, isBold: false, 2)
            : [Sketch.Cut(name[..(hyphen + 1)], roomPx, isBold: false, NamePx), Sketch.Cut(name[(hyphen + 1)..], roomPx, isBold: false, NamePx)];
    }
}

using Arraywright.Gear;
using Arraywright.Parts;

namespace Arraywright.Presentation.Drawing;

/// <summary>The panels as they lie there, seen from behind: plus leads to the left and minus leads to the right, both down to the unit.</summary>
internal static class ArrangementDrawing
{
    private const double LanePx = 10;
    private const double LaneGapPx = 6;
    private const double TrunkPlusPx = 48;
    private const double TrunkMinusPx = 94;

    /// <summary>The drawing.</summary>
    public static Picture Of(DrawingSheet sheet)
    {
        const double aroundPx = 2 * (LanePx + LaneGapPx);
        (BranchRows Array, Hookup Hookup)[] arrays = [.. sheet.Hookups.Select(hookup => (new BranchRows(hookup.Array, null, null, sheet.WidthPx - aroundPx, isLow: false), hookup))];
        double widthPx = arrays.Select(array => array.Array.WidthPx + aroundPx).Append(sheet.WidthPx).Max();
        Sketch sketch = new();
        SheetLayout layout = new(sketch, widthPx);
        layout.Head(sheet);
        layout.Write("The panels from behind. Joints are numbered in the order of connecting.", isBold: false);
        foreach ((BranchRows array, Hookup hookup) in arrays)
        {
            layout.Head(hookup);
            DcInput input = sheet.Plan.Inputs.First(planned => planned.Input.Name == hookup.Assignment.Input).Input;
            layout.TopPx = Draw(sketch, array, hookup, input, widthPx, layout.TopPx);
        }

        layout.TopPx += 14;
        if (!sheet.Hookups.IsEmpty)
        {
            layout.Keys(sheet);
            Keys(layout, sheet);
        }

        return new Picture
        {
            Id = DrawingWords.Id("arrangement", sheet),
            Title = $"{sheet.Plan.Name}: how the panels are plugged together",
            Description = DrawingWords.InSentences(sheet),
            WidthPx = widthPx,
            HeightPx = layout.TopPx + SheetLayout.MarginPx,
            Shapes = [.. sketch.Shapes],
        };
    }

    private static void Keys(SheetLayout layout, DrawingSheet sheet)
    {
        foreach (Element connector in InOrder(sheet.Hookups.SelectMany(hookup => hookup.Connectors)))
        {
            layout.Key((sketch, xPx, yPx) => sketch.Box(xPx + 8, yPx - 5, 8, 11, Pen.Outline, Tone.Shade), connector.InFull);
        }

        foreach (Element own in InOrder(sheet.Hookups.SelectMany(hookup => hookup.Own)))
        {
            layout.Key((sketch, xPx, yPx) => Sample(sketch, own, xPx, yPx), own.InFull);
        }
    }

    /// <summary>Each once, those of one kind from the weakest to the strongest.</summary>
    private static IEnumerable<Element> InOrder(IEnumerable<Element> elements) =>
        elements.DistinctBy(element => element.InFull).OrderBy(element => element.Kind).ThenBy(element => element.NeededA).ThenBy(element => element.InFull, StringComparer.Ordinal);

    private static void Sample(Sketch sketch, Element own, double xPx, double yPx)
    {
        if (own.Kind == PieceKind.StringFuse)
        {
            PieceItem.Holder(sketch, xPx + 12, yPx, halfPx: 10);
        }
        else
        {
            SheetLayout.BothLeads(sketch, xPx, yPx);
        }
    }

    private static double Draw(Sketch sketch, BranchRows array, Hookup hookup, DcInput input, double widthPx, double topPx)
    {
        double leftPx = LanePx + LaneGapPx;
        double rightPx = leftPx + array.WidthPx + LaneGapPx;
        double acrossPx = topPx + array.HeightPx + 14;
        double plusPx = topPx + ArrangementItem.LeadsPx;
        double minusPx = topPx + array.MinusPx;
        array.Draw(sketch, leftPx, topPx);
        sketch.Line(Pen.Plus, new Spot(leftPx, plusPx), new Spot(LanePx, plusPx), new Spot(LanePx, acrossPx), new Spot(TrunkPlusPx, acrossPx), new Spot(TrunkPlusPx, acrossPx + 6));
        sketch.Line(Pen.Minus, new Spot(leftPx + array.WidthPx, minusPx), new Spot(rightPx, minusPx), new Spot(rightPx, acrossPx), new Spot(TrunkMinusPx, acrossPx), new Spot(TrunkMinusPx, acrossPx + 6));
        TrunkDiagram trunk = new(sketch, TrunkPlusPx, TrunkMinusPx, widthPx - SheetLayout.MarginPx, isPictorial: true);
        return trunk.Draw(hookup, input, acrossPx + 6);
    }
}

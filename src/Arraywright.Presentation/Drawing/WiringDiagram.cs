using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>The circuit diagram of a design: plus comes from the top of each array and down its left, minus from its bottom, both to the unit below.</summary>
internal static class WiringDiagram
{
    private const double RightMarginPx = 8;

    /// <summary>Left of plus: a number and the blade of a switch.</summary>
    private const double LanePx = 36;

    private const double LaneGapPx = 10;

    /// <summary>The diagram.</summary>
    public static Picture Of(DrawingSheet sheet)
    {
        (DiagramBlock Array, Hookup Hookup)[] arrays = [.. sheet.Hookups.Select((hookup, index) => (Array(hookup, sheet.Readings[index], sheet.WidthPx), hookup))];
        double widthPx = arrays.Select(array => Axis(array.Array) + array.Array.RightPx + RightMarginPx).Append(sheet.WidthPx).Max();
        Sketch sketch = new();
        SheetLayout layout = new(sketch, widthPx);
        layout.Head(sheet);
        foreach ((DiagramBlock array, Hookup hookup) in arrays)
        {
            layout.Head(hookup);
            layout.TopPx = Draw(sketch, array, hookup, sheet, widthPx, layout.TopPx);
        }

        layout.TopPx += 14;
        if (sheet.Hookups is [var first, ..])
        {
            layout.Keys(sheet);
            Keys(layout, sheet, first);
        }

        return new Picture
        {
            Id = DrawingWords.Id("diagram", sheet),
            Title = $"{sheet.Plan.Name}: wiring diagram",
            Description = DrawingWords.InSentences(sheet),
            WidthPx = widthPx,
            HeightPx = layout.TopPx + SheetLayout.MarginPx,
            Shapes = [.. sketch.Shapes],
        };
    }

    private static void Keys(SheetLayout layout, DrawingSheet sheet, Hookup first)
    {
        if (sheet.Hookups.Any(hookup => hookup.Connectors.Any()))
        {
            layout.Key((sketch, xPx, yPx) => Symbols.Dot(sketch, xPx + 12, yPx), "joined by a branch connector, one for plus and one for minus");
        }

        foreach (string cable in sheet.Hookups.SelectMany(hookup => hookup.Own).Where(element => element.Kind == PieceKind.StringConductor).Select(element => element.InFull).Distinct(StringComparer.Ordinal))
        {
            layout.Key(SheetLayout.BothLeads, cable);
        }

        if (sheet.Hookups.Zip(sheet.Readings).Any(pair => pair.Second?.AtWork is not null && !DrawingWords.IsStopped(pair.First)))
        {
            layout.Key((sketch, xPx, yPx) => sketch.Text(xPx, yPx + 4, "V, A"), $"volts and amps at work, {MeterTable.At(first.Assignment.Conditions)}");
        }

        layout.Key((sketch, xPx, yPx) => sketch.Text(xPx, yPx + 4, "open"), "volts with nothing connected, at the coldest");
    }

    /// <summary>Words are kept narrow where branches could stand side by side.</summary>
    private static DiagramBlock Array(Hookup hookup, ArrayReading? reading, double widthPx)
    {
        double roomPx = widthPx - LanePx - LaneGapPx - RightMarginPx;
        bool isOneColumn = hookup.Array.Part is HookupPart.Panel || (hookup.Array.Part is HookupPart.Row { Parts.Length: < 10 } row && row.Parts.All(part => part is HookupPart.Panel));
        double wordsPx = isOneColumn ? 200 : 101;
        return new ArrayDiagram(Math.Min(wordsPx, roomPx - SymbolBlock.SidePx - SymbolBlock.WordsPx - 4)).Of(hookup.Array, DrawingWords.IsStopped(hookup) && reading is not null ? reading with { AtWork = null } : reading, roomPx);
    }

    private static double Axis(DiagramBlock array) => LanePx + LaneGapPx + array.LeftPx;

    private static double Draw(Sketch sketch, DiagramBlock array, Hookup hookup, DrawingSheet sheet, double widthPx, double topPx)
    {
        double axisPx = Axis(array);
        double arrayPx = topPx + 6;
        double bottomPx = arrayPx + array.HeightPx;
        sketch.Line(Pen.Plus, new Spot(axisPx, arrayPx), new Spot(axisPx, topPx), new Spot(LanePx, topPx), new Spot(LanePx, bottomPx));
        array.Draw(sketch, axisPx, arrayPx);
        TrunkDiagram trunk = new(sketch, LanePx, axisPx, widthPx - RightMarginPx, isPictorial: false);
        return trunk.Draw(hookup, sheet.Plan.Inputs.First(planned => planned.Input.Name == hookup.Assignment.Input).Input, bottomPx);
    }
}

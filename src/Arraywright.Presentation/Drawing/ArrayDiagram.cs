using Arraywright.Electrical;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>Makes the blocks of one array's diagram, with what meters show at each.</summary>
/// <param name="wordsWidthPx">Room for the words beside a symbol.</param>
internal sealed class ArrayDiagram(double wordsWidthPx)
{
    /// <summary>The whole array with what hangs on its ends.</summary>
    public DiagramBlock Of(Branch array, ArrayReading? reading, double widthPx) =>
        Column(array, null, null, Pen.Plus, Pen.Minus, reading?.OpenCold, reading?.AtWork, widthPx);

    /// <summary>A branch from rail to rail; without joints at its ends where it is the whole array.</summary>
    private DiagramBlock Column(Branch branch, Joint? atPlus, Joint? atMinus, Pen plus, Pen minus, OpenReading? open, PartReading? atWork, double widthPx)
    {
        List<DiagramBlock> blocks = [];
        if (atPlus is not null)
        {
            blocks.Add(Plug(atPlus, plus, plus));
        }

        foreach (Step step in branch.Plus.Reverse())
        {
            blocks.Add(Piece(step.Element, plus));
            blocks.Add(Plug(step.Joint, plus, plus));
        }

        Add(blocks, branch.Part, plus, minus, open, atWork, widthPx);
        foreach (Step step in branch.Minus)
        {
            blocks.Add(Plug(step.Joint, minus, minus));
            blocks.Add(Piece(step.Element, minus));
        }

        if (atMinus is not null)
        {
            blocks.Add(Plug(atMinus, minus, minus));
        }

        return new ColumnBlock(blocks);
    }

    private void Add(List<DiagramBlock> blocks, HookupPart part, Pen plus, Pen minus, OpenReading? open, PartReading? atWork, double widthPx)
    {
        switch (part)
        {
            case HookupPart.Panel panel:
                blocks.Add(Module(panel, plus, minus, open, atWork));
                break;
            case HookupPart.Row row:
                blocks.Add(SnakeBlock.Of([.. row.Parts.Select((_, i) => InRow(row, i, plus, minus, open, atWork, widthPx))], widthPx, plus, minus));
                break;
            case HookupPart.Block block:
                blocks.Add(Rails(block, plus, minus, open, atWork, widthPx));
                break;
            default:
                throw new InvalidOperationException("A part is a panel, a row or a block.");
        }
    }

    /// <summary>A part of a series with the joint above it.</summary>
    private ColumnBlock InRow(HookupPart.Row row, int index, Pen plus, Pen minus, OpenReading? open, PartReading? atWork, double widthPx)
    {
        List<DiagramBlock> blocks = index == 0 ? [] : [Plug(row.Joints[index - 1], Pen.Link, Pen.Link)];
        Pen above = index == 0 ? plus : Pen.Link;
        Pen below = index == row.Parts.Length - 1 ? minus : Pen.Link;
        Add(blocks, row.Parts[index], above, below, open?.Parts[index], atWork?.Parts[index], widthPx);
        return new ColumnBlock(blocks);
    }

    /// <summary>Branches between the rails of their connectors; above the outermost what meters show.</summary>
    private RailsBlock Rails(HookupPart.Block block, Pen plus, Pen minus, OpenReading? open, PartReading? atWork, double widthPx)
    {
        Dictionary<int, Joint> above = block.Plus.AtBranches.ToDictionary();
        Dictionary<int, Joint> below = block.Minus.AtBranches.ToDictionary();
        DiagramBlock[] branches = [.. block.Branches.Select((branch, i) => Column(branch, above[i], below[i], plus, minus, open?.Parts[i], atWork?.Parts[i], widthPx))];
        List<string> words = [];
        if (atWork is not null)
        {
            words.Add(AtWork(atWork.InnerV, atWork.CurrentA));
        }

        if (open is not null)
        {
            words.Add(Open(open.VoltageV));
        }

        return Gathered(block.Plus, block.Minus, branches, words, plus, minus, widthPx);
    }

    /// <summary>What one connector of each pole gathers. Both poles are gathered alike, so that a connector that goes into another has a joint above and one below.</summary>
    private static RailsBlock Gathered(Connector above, Connector below, DiagramBlock[] branches, List<string> words, Pen plus, Pen minus, double widthPx)
    {
        double innerPx = widthPx - (2 * RailsBlock.LanePx);
        DiagramBlock[] legs =
        [
            .. above.Legs.Zip(below.Legs, (upper, lower) => (upper.Inner, lower.Inner) is ({ } inner, { } other)
                ? new ColumnBlock([Plug(upper.Joint, plus, plus), Gathered(inner, other, branches, [], plus, minus, innerPx), Plug(lower.Joint, minus, minus)])
                : branches[upper.Branch]),
        ];
        string connector = above.Element.InFull;
        return new RailsBlock(legs, widthPx, $"{legs.Length} joined at plus and at minus, at each: {connector}", [.. words, connector], plus, minus);
    }

    private SymbolBlock Module(HookupPart.Panel panel, Pen plus, Pen minus, OpenReading? open, PartReading? atWork)
    {
        const double leadPx = 6;
        List<string> words = [panel.Name];
        if (atWork is not null)
        {
            words.AddRange(Together([Figures.Of(atWork.VoltageV, "V"), Figures.Of(atWork.CurrentA, "A")]));
        }

        if (open is not null)
        {
            words.Add(Open(open.VoltageV));
        }

        string title = $"panel {panel.Number}, {panel.Name}";
        return new SymbolBlock(Symbols.ModulePx + (2 * leadPx), words, wordsWidthPx, title, minus, Draw, isFirstBold: true);

        void Draw(Sketch sketch, double xPx, double topPx)
        {
            sketch.Upright(plus, xPx, topPx, topPx + leadPx);
            Symbols.Module(sketch, xPx, topPx + leadPx, panel.Number);
            sketch.Upright(minus, xPx, topPx + leadPx + Symbols.ModulePx, topPx + (2 * leadPx) + Symbols.ModulePx);
        }
    }

    private static SymbolBlock Plug(Joint joint, Pen above, Pen below) => new(Symbols.PlugPx, [], 0, Plugs.Title(joint), below, (sketch, xPx, topPx) =>
    {
        Symbols.Plug(sketch, xPx, topPx, above, below);
        Symbols.NumberBeside(sketch, xPx, topPx + (Symbols.PlugPx / 2), joint);
    });

    private SymbolBlock Piece(Element element, Pen pen)
    {
        string[] words = element.Kind == PieceKind.StringFuse ? [element.Name, .. element.Figures.SelectMany(figures => Sketch.Wrap(figures, wordsWidthPx, 2))] : [.. Together(element.Short)];
        return element.Kind == PieceKind.StringFuse
            ? new SymbolBlock(Symbols.FusePx, words, wordsWidthPx, element.InFull, pen, (sketch, xPx, topPx) => Symbols.Fuse(sketch, xPx, topPx, pen))
            : new SymbolBlock(8, words, wordsWidthPx, element.InFull, pen, (sketch, xPx, topPx) => sketch.Upright(pen, xPx, topPx, topPx + 8));
    }

    /// <summary>Figures in one line where they fit, else a line each: a figure is never parted from its unit.</summary>
    private IReadOnlyList<string> Together(IReadOnlyList<string> figures)
    {
        string line = string.Join(", ", figures);
        return Sketch.Width([line], isFirstBold: false) <= wordsWidthPx ? [line] : figures;
    }

    /// <summary>At work.</summary>
    public static string AtWork(double voltageV, double currentA) => $"{Figures.Of(voltageV, "V")}, {Figures.Of(currentA, "A")}";

    /// <summary>Open, at the coldest.</summary>
    public static string Open(double voltageV) => $"open {Figures.Of(voltageV, "V")}";
}

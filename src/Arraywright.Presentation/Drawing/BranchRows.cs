using System.Collections.Immutable;

namespace Arraywright.Presentation.Drawing;

/// <summary>A branch of an arrangement: its items from plus on the left to minus on the right, in as many rows as it takes.</summary>
/// <remarks>From the right end of a row a lead goes back below it to the left, where the joint with the next item is.</remarks>
internal sealed class BranchRows
{
    /// <summary>Room below a row for the lead that goes back.</summary>
    private const double BackPx = 20;

    /// <summary>From the last item of a row to the lead that goes down.</summary>
    private const double TurnPx = 9;

    /// <summary>From the left of a row to the lead that comes down to it.</summary>
    private const double IndentPx = 6;

    /// <summary>A lead without a joint at the end of the whole array, where branch connectors stand there.</summary>
    private const double StubPx = 12;

    private readonly ImmutableArray<ArrangementItem> _items;
    private readonly ImmutableArray<Joint?> _joints;
    private readonly List<(int From, int To)> _rows = [];

    /// <summary>A branch.</summary>
    /// <param name="branch">The branch.</param>
    /// <param name="atPlus">Its joint at plus; null for the whole array.</param>
    /// <param name="atMinus">The same at minus.</param>
    /// <param name="widthPx">Room for it.</param>
    /// <param name="isLow">Whether it is to be low, as one of many below each other.</param>
    public BranchRows(Branch branch, Joint? atPlus, Joint? atMinus, double widthPx, bool isLow)
    {
        var items = ImmutableArray.CreateBuilder<ArrangementItem>();
        var joints = ImmutableArray.CreateBuilder<Joint?>();
        joints.Add(atPlus);
        foreach (Step step in branch.Plus.Reverse())
        {
            items.Add(new PieceItem(step.Element, Pen.Plus, isLow));
            joints.Add(step.Joint);
        }

        Add(items, joints, branch.Part, widthPx, isLow);
        foreach (Step step in branch.Minus)
        {
            joints.Add(step.Joint);
            items.Add(new PieceItem(step.Element, Pen.Minus, isLow));
        }

        joints.Add(atMinus);
        (_items, _joints) = (items.ToImmutable(), joints.ToImmutable());
        Break(widthPx);
        WidthPx = _rows.Max(RowWidthPx);
    }

    /// <summary>Its width.</summary>
    public double WidthPx { get; }

    /// <summary>Its height.</summary>
    public double HeightPx => _rows.Sum(RowHeightPx) + ((_rows.Count - 1) * BackPx);

    /// <summary>From its top to its lead of minus, on the right; that of plus is at <see cref="ArrangementItem.LeadsPx"/>, on the left.</summary>
    public double MinusPx => HeightPx - RowHeightPx(_rows[^1]) + ArrangementItem.LeadsPx;

    /// <summary>Draws it.</summary>
    public void Draw(Sketch sketch, double leftPx, double topPx)
    {
        foreach ((int from, int to) in _rows)
        {
            double leadsPx = topPx + ArrangementItem.LeadsPx;
            double xPx = leftPx + Indent(from);
            for (int i = from; i < to; i++)
            {
                Join(sketch, i, xPx, leadsPx);
                xPx += GapPx(i);
                _items[i].Draw(sketch, xPx, topPx);
                xPx += _items[i].WidthPx;
            }

            double nextPx = topPx + RowHeightPx((from, to)) + BackPx;
            if (to < _items.Length)
            {
                double backPx = nextPx - BackPx + 7;
                sketch.Line(_items[to - 1].Right, new Spot(xPx, leadsPx), new Spot(xPx + TurnPx, leadsPx), new Spot(xPx + TurnPx, backPx), new Spot(leftPx + IndentPx, backPx), new Spot(leftPx + IndentPx, nextPx + ArrangementItem.LeadsPx));
            }
            else
            {
                Join(sketch, to, xPx, leadsPx);
                sketch.Level(Pen.Minus, xPx + GapPx(to), leftPx + WidthPx, leadsPx);
            }

            topPx = nextPx;
        }
    }

    private static void Add(ImmutableArray<ArrangementItem>.Builder items, ImmutableArray<Joint?>.Builder joints, HookupPart part, double widthPx, bool isLow)
    {
        switch (part)
        {
            case HookupPart.Panel panel:
                items.Add(new PanelItem(panel, isLow));
                break;
            case HookupPart.Row row:
                for (int i = 0; i < row.Parts.Length; i++)
                {
                    Add(items, joints, row.Parts[i], widthPx, isLow: false);
                    if (i < row.Joints.Length)
                    {
                        joints.Add(row.Joints[i]);
                    }
                }

                break;
            case HookupPart.Block block:
                items.Add(new BlockItem(block, widthPx - (2 * Plugs.GapPx)));
                break;
            default:
                throw new InvalidOperationException("A part is a panel, a row or a block.");
        }
    }

    /// <summary>As few rows as the width allows, filled evenly.</summary>
    private void Break(double widthPx)
    {
        Break(widthPx, _items.Length);
        int most = (_items.Length + _rows.Count - 1) / _rows.Count;
        Break(widthPx, most);
    }

    private void Break(double widthPx, int most)
    {
        _rows.Clear();
        int from = 0;
        for (int i = 1; i <= _items.Length; i++)
        {
            if (i == _items.Length || i - from == most || RowWidthPx((from, i + 1)) > widthPx)
            {
                _rows.Add((from, i));
                from = i;
            }
        }
    }

    private static double Indent(int from) => from == 0 ? 0 : IndentPx;

    private double GapPx(int joint) => _joints[joint] is null && _items[Math.Min(joint, _items.Length - 1)] is BlockItem ? StubPx : Plugs.GapPx;

    /// <summary>The joint before each item, and room for what follows the last.</summary>
    private double RowWidthPx((int From, int To) row) =>
        Indent(row.From) + Enumerable.Range(row.From, row.To - row.From).Sum(i => GapPx(i) + _items[i].WidthPx) + (row.To == _items.Length ? GapPx(row.To) : TurnPx + 4);

    private double RowHeightPx((int From, int To) row) => Enumerable.Range(row.From, row.To - row.From).Max(i => _items[i].HeightPx);

    private void Join(Sketch sketch, int index, double xPx, double leadsPx)
    {
        Pen left = index == 0 ? _items[0].Left : _items[index - 1].Right;
        Pen right = index == _items.Length ? _items[^1].Right : _items[index].Left;
        if (_joints[index] is { } joint)
        {
            Plugs.Level(sketch, xPx, leadsPx, joint, left, right);
        }
        else
        {
            sketch.Level(left, xPx, xPx + GapPx(index), leadsPx);
        }
    }
}

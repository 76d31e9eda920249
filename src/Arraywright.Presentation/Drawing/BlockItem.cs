using System.Collections.Immutable;

namespace Arraywright.Presentation.Drawing;

/// <summary>Branches below each other between branch connectors: those of plus on the left, those of minus on the right.</summary>
internal sealed class BlockItem : ArrangementItem
{
    private const double BetweenPx = 8;

    /// <summary>So many single panels below each other still stand upright.</summary>
    private const int MostUpright = 4;

    /// <summary>A branch connector with a little white.</summary>
    private const double ConnectorPx = 12;

    /// <summary>Half the width of its body.</summary>
    private const double HalfPx = 4;

    private readonly HookupPart.Block _block;
    private readonly ImmutableArray<BranchRows> _branches;
    private readonly double _branchesPx;
    private readonly double _plusPx;
    private readonly double _minusPx;

    /// <summary>A block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="widthPx">Room for it.</param>
    public BlockItem(HookupPart.Block block, double widthPx)
    {
        _block = block;
        (_plusPx, _minusPx) = (SidePx(block.Plus), SidePx(block.Minus));
        Dictionary<int, Joint> plus = block.Plus.AtBranches.ToDictionary();
        Dictionary<int, Joint> minus = block.Minus.AtBranches.ToDictionary();
        bool isLow = block.Branches.Length > MostUpright;
        _branches = [.. block.Branches.Select((branch, i) => new BranchRows(branch, plus[i], minus[i], widthPx - _plusPx - _minusPx, isLow && branch.Part is HookupPart.Panel))];
        _branchesPx = _branches.Max(branch => branch.WidthPx);
    }

    /// <inheritdoc/>
    public override double WidthPx => _plusPx + _branchesPx + _minusPx;

    /// <inheritdoc/>
    public override double HeightPx => _branches.Sum(branch => branch.HeightPx) + ((_branches.Length - 1) * BetweenPx);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, double xPx, double topPx)
    {
        double fromPx = xPx + _plusPx;
        double toPx = fromPx + _branchesPx;
        double[] plusAtPx = new double[_branches.Length];
        double[] minusAtPx = new double[_branches.Length];
        double branchPx = topPx;
        for (int i = 0; i < _branches.Length; i++)
        {
            plusAtPx[i] = branchPx + LeadsPx;
            minusAtPx[i] = branchPx + _branches[i].MinusPx;
            _branches[i].Draw(sketch, fromPx, branchPx);
            sketch.Level(Pen.Minus, fromPx + _branches[i].WidthPx, toPx, minusAtPx[i]);
            branchPx += _branches[i].HeightPx + BetweenPx;
        }

        Gather(sketch, _block.Plus, plusAtPx, fromPx, xPx, Pen.Plus, topPx + LeadsPx);
        Gather(sketch, _block.Minus, minusAtPx, toPx, xPx + WidthPx, Pen.Minus, topPx + LeadsPx);
    }

    /// <summary>Draws a connector and those that go into it.</summary>
    /// <param name="sketch">Where.</param>
    /// <param name="connector">The connector.</param>
    /// <param name="atPx">How far down the leads of the branches are.</param>
    /// <param name="innerPx">Where those leads end.</param>
    /// <param name="outerPx">Where its own lead is to end.</param>
    /// <param name="pen">Its leads.</param>
    /// <param name="outAtPx">How far down its own lead leaves; null for that of its first leg.</param>
    /// <returns>How far down its own lead leaves.</returns>
    private static double Gather(Sketch sketch, Connector connector, double[] atPx, double innerPx, double outerPx, Pen pen, double? outAtPx)
    {
        int outwards = Math.Sign(outerPx - innerPx);
        double depthPx = SidePx(connector);
        double bodyPx = innerPx + (outwards * (depthPx - (ConnectorPx / 2)));
        List<double> legsPx = [];
        foreach (Leg leg in connector.Legs)
        {
            if (leg.Inner is { } inner)
            {
                double inPx = innerPx + (outwards * SidePx(inner));
                double legPx = Gather(sketch, inner, atPx, innerPx, inPx, pen, null);
                double plugPx = bodyPx - (outwards * (HalfPx + Plugs.GapPx));
                sketch.Level(pen, inPx, plugPx, legPx);
                Plugs.Level(sketch, Math.Min(plugPx, plugPx + (outwards * Plugs.GapPx)), legPx, leg.Joint, pen, pen);
                legsPx.Add(legPx);
            }
            else
            {
                sketch.Level(pen, innerPx, bodyPx - (outwards * HalfPx), atPx[leg.Branch]);
                legsPx.Add(atPx[leg.Branch]);
            }
        }

        double leavesPx = outAtPx ?? legsPx[0];
        double topPx = Math.Min(leavesPx, legsPx.Min()) - 6;
        double bottomPx = legsPx.Max() + 6;
        sketch.Group(connector.Element.InFull, body => body.Box(bodyPx - HalfPx, topPx, 2 * HalfPx, bottomPx - topPx, Pen.Outline, Tone.Body));
        sketch.Level(pen, bodyPx + (outwards * HalfPx), outerPx, leavesPx);
        return leavesPx;
    }

    /// <summary>Width of a connector with those that go into it.</summary>
    private static double SidePx(Connector connector) => ConnectorPx + connector.Legs.Select(leg => leg.Inner is { } inner ? SidePx(inner) + Plugs.GapPx + 4 : 0).Max();
}

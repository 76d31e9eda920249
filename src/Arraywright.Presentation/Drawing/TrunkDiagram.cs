using System.Globalization;
using Arraywright.Gear;
using Arraywright.Parts;

namespace Arraywright.Presentation.Drawing;

/// <summary>Draws what lies between an array and its unit: two leads, plus on the left, minus on the right.</summary>
/// <param name="sketch">Where.</param>
/// <param name="plusPx">The lead of plus.</param>
/// <param name="minusPx">The lead of minus.</param>
/// <param name="rightPx">How far words may reach.</param>
/// <param name="isPictorial">Whether plugs and switch are drawn as they look.</param>
internal sealed class TrunkDiagram(Sketch sketch, double plusPx, double minusPx, double rightPx, bool isPictorial)
{
    private const double WordsPx = 18;
    private const double OverhangPx = 10;

    private double _topPx;

    /// <summary>Draws it and the unit.</summary>
    /// <returns>The bottom of the unit.</returns>
    public double Draw(Hookup hookup, DcInput input, double topPx)
    {
        _topPx = topPx;
        foreach (PairStep step in hookup.Trunk)
        {
            if (step.Element.Kind is null)
            {
                Finish(step, hookup, input);
            }
            else
            {
                Plug(step.Plus, plusPx, Pen.Plus);
                Plug(step.Minus, minusPx, Pen.Minus);
                _topPx += Symbols.PlugPx;
                sketch.Group(step.Element.InFull, inner => Draw(inner, step.Element));
            }
        }

        return _topPx;
    }

    private void Plug(Joint joint, double xPx, Pen pen)
    {
        if (isPictorial)
        {
            Plugs.Upright(sketch, xPx, _topPx, joint, pen);
            return;
        }

        sketch.Group(Plugs.Title(joint), inner =>
        {
            Symbols.Plug(inner, xPx, _topPx, pen, pen);
            Symbols.NumberBeside(inner, xPx, _topPx + (Symbols.PlugPx / 2), joint);
        });
    }

    private void Draw(Sketch inner, Element element)
    {
        List<string> words = [element.Name, .. element.Figures.SelectMany(figures => Sketch.Wrap(figures, rightPx - minusPx - WordsPx, 2))];
        double heightPx = Math.Max(words.Count * Sketch.LinePx, element.Kind == PieceKind.Switch ? Symbols.SwitchPx : 30) + 4;
        switch (element.Kind)
        {
            case PieceKind.Switch when !isPictorial:
                Symbols.Switch(inner, plusPx, _topPx, Pen.Plus);
                Symbols.Switch(inner, minusPx, _topPx, Pen.Minus);
                inner.Level(Pen.Together, plusPx - 5, minusPx - 5, _topPx + 23);
                Leads(inner, _topPx + Symbols.SwitchPx, _topPx + heightPx);
                break;
            case PieceKind.Switch or PieceKind.WattMeter or PieceKind.Adapter:
                Leads(inner, _topPx, _topPx + 4);
                inner.Box(plusPx - OverhangPx, _topPx + 4, minusPx - plusPx + (2 * OverhangPx), heightPx - 8, Pen.Outline, Tone.Paper);
                inner.Text((plusPx + minusPx) / 2, _topPx + (heightPx / 2) + 4, Face(element), isBold: true, Anchor.Middle);
                Leads(inner, _topPx + heightPx - 4, _topPx + heightPx);
                break;
            default:
                Leads(inner, _topPx, _topPx + heightPx);
                break;
        }

        inner.Lines(minusPx + WordsPx, _topPx + 2, rightPx - minusPx - WordsPx, words, isFirstBold: true);
        _topPx += heightPx;
    }

    private static string Face(Element element) => element.Kind switch
    {
        PieceKind.WattMeter => "W",
        PieceKind.Switch => "OFF",
        _ => "",
    };

    private void Leads(Sketch inner, double fromPx, double toPx)
    {
        inner.Upright(Pen.Plus, plusPx, fromPx, toPx);
        inner.Upright(Pen.Minus, minusPx, fromPx, toPx);
    }

    /// <summary>The plug into the unit; where the wiring is stopped the leads end before it, crossed out.</summary>
    private void Finish(PairStep step, Hookup hookup, DcInput input)
    {
        bool isStopped = DrawingWords.IsStopped(hookup);
        sketch.Group(isStopped ? "not to be connected" : Plugs.Title(step.Plus), inner =>
        {
            foreach ((double xPx, Pen pen) in new[] { (plusPx, Pen.Plus), (minusPx, Pen.Minus) })
            {
                inner.Upright(pen, xPx, _topPx, _topPx + 8);
                if (isStopped)
                {
                    inner.Line(Pen.Outline, new Spot(xPx - 6, _topPx + 10), new Spot(xPx + 6, _topPx + 22));
                    inner.Line(Pen.Outline, new Spot(xPx - 6, _topPx + 22), new Spot(xPx + 6, _topPx + 10));
                    continue;
                }

                Symbols.Pin(inner, xPx, _topPx + 8);
                Symbols.SocketUpwards(inner, xPx, _topPx + 18);
                inner.Upright(pen, xPx, _topPx + 18, _topPx + 26);
            }

            if (isStopped)
            {
                inner.Text(minusPx + WordsPx, _topPx + 20, "do not connect", isBold: true);
            }
            else
            {
                inner.Level(Pen.Together, plusPx + 6, minusPx - 6, _topPx + 12);
                Symbols.NumberBeside(inner, plusPx, _topPx + 13, step.Plus);
            }
        });
        _topPx += 26;
        Unit(hookup, input);
    }

    private void Unit(Hookup hookup, DcInput input)
    {
        string[] words = [DrawingWords.Input(hookup), DrawingWords.Limit(input), .. DrawingWords.AtUnit(hookup)];
        double leftPx = plusPx - 26;
        double widthPx = Math.Min(rightPx - leftPx, Math.Max(minusPx + 26 - leftPx, Sketch.Width(words, isFirstBold: true) + 24));
        double heightPx = (words.Length * Sketch.LinePx) + 22;
        sketch.Group(string.Join(", ", words), inner =>
        {
            inner.Box(leftPx, _topPx, widthPx, heightPx, Pen.Outline, null);
            inner.Text(plusPx, _topPx + 15, "+", isBold: true, Anchor.Middle);
            inner.Text(minusPx, _topPx + 15, Terminal.Figures.Minus.ToString(CultureInfo.InvariantCulture), isBold: true, Anchor.Middle);
            inner.Lines(leftPx + 8, _topPx + 18, widthPx - 16, words, isFirstBold: true);
        });
        _topPx += heightPx;
    }
}

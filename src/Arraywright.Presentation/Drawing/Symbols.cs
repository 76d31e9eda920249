namespace Arraywright.Presentation.Drawing;

/// <summary>Symbols for circuit diagrams after IEC 60617, upright, the current going down; the module's as circuit diagrams of arrays draw it.</summary>
internal static class Symbols
{
    /// <summary>Height of a module.</summary>
    public const double ModulePx = 44;

    /// <summary>Half its width.</summary>
    public const double HalfModulePx = 17;

    /// <summary>Height of a plug in its socket.</summary>
    public const double PlugPx = 24;

    /// <summary>Height of a fuse with its leads.</summary>
    public const double FusePx = 36;

    /// <summary>Height of a switch with its leads.</summary>
    public const double SwitchPx = 40;

    private const double NumberRadiusPx = 9;

    /// <summary>From a line to the middle of the number beside it.</summary>
    private const double NumberAsidePx = 17;

    /// <summary>A photovoltaic module: a rectangle, a triangle pointing in from plus.</summary>
    public static void Module(Sketch sketch, double xPx, double topPx, int number)
    {
        sketch.Box(xPx - HalfModulePx, topPx, 2 * HalfModulePx, ModulePx, Pen.Outline, Tone.Paper);
        sketch.Line(Pen.Outline, new Spot(xPx - HalfModulePx, topPx), new Spot(xPx, topPx + 13), new Spot(xPx + HalfModulePx, topPx));
        sketch.Text(xPx, topPx + 35, number.ToString(System.Globalization.CultureInfo.InvariantCulture), isBold: true, Anchor.Middle);
        sketch.Text(xPx - HalfModulePx - 4, topPx + 11, "+", isBold: true, Anchor.End);
        sketch.Text(xPx - HalfModulePx - 4, topPx + ModulePx - 2, Terminal.Figures.Minus.ToString(), isBold: true, Anchor.End);
    }

    /// <summary>A plug in its socket: a thick bar in a half circle.</summary>
    public static void Plug(Sketch sketch, double xPx, double topPx, Pen above, Pen below)
    {
        sketch.Upright(above, xPx, topPx, topPx + 6);
        Socket(sketch, xPx, topPx + 6);
        Pin(sketch, xPx, topPx + 9);
        sketch.Upright(below, xPx, topPx + 17, topPx + PlugPx);
    }

    /// <summary>The socket alone, open below.</summary>
    public static void Socket(Sketch sketch, double xPx, double topPx) => sketch.Line(Pen.Outline, [.. HalfCircle(xPx, topPx + 6, 6, up: true)]);

    /// <summary>A socket that is open above.</summary>
    public static void SocketUpwards(Sketch sketch, double xPx, double bottomPx) => sketch.Line(Pen.Outline, [.. HalfCircle(xPx, bottomPx - 6, 6, up: false)]);

    /// <summary>The pin of a plug.</summary>
    public static void Pin(Sketch sketch, double xPx, double topPx) => sketch.Box(xPx - 2, topPx, 4, 8, null, Tone.Ink);

    /// <summary>A fuse: a narrow rectangle with the line through.</summary>
    public static void Fuse(Sketch sketch, double xPx, double topPx, Pen pen)
    {
        sketch.Upright(pen, xPx, topPx, topPx + 5);
        sketch.Box(xPx - 6, topPx + 5, 12, FusePx - 10, Pen.Outline, Tone.Paper);
        sketch.Upright(Pen.Outline, xPx, topPx + 5, topPx + FusePx - 5);
        sketch.Upright(pen, xPx, topPx + FusePx - 5, topPx + FusePx);
    }

    /// <summary>One pole of a switch-disconnector, open: its contact has a bar and a small circle, the sign that it may be opened under load.</summary>
    public static void Switch(Sketch sketch, double xPx, double topPx, Pen pen)
    {
        sketch.Upright(pen, xPx, topPx, topPx + 8);
        sketch.Level(Pen.Outline, xPx - 5, xPx + 5, topPx + 8);
        sketch.Disc(xPx, topPx + 11, 2.5, Pen.Outline, Tone.Paper);
        sketch.Line(Pen.Outline, new Spot(xPx - 10, topPx + 14), new Spot(xPx, topPx + 32));
        sketch.Upright(pen, xPx, topPx + 32, topPx + SwitchPx);
    }

    /// <summary>Where lines are joined.</summary>
    public static void Dot(Sketch sketch, double xPx, double yPx) => sketch.Disc(xPx, yPx, 3.5, null, Tone.Ink);

    /// <summary>The number of a joint, left of its line.</summary>
    public static void NumberBeside(Sketch sketch, double xPx, double middlePx, Joint joint) => Number(sketch, xPx - NumberAsidePx, middlePx, joint);

    /// <summary>The number of a joint in its circle.</summary>
    public static void Number(Sketch sketch, double xPx, double yPx, Joint joint)
    {
        sketch.Disc(xPx, yPx, NumberRadiusPx, Pen.Fine, Tone.Paper);
        sketch.Text(xPx, yPx + 3.5, joint.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), isBold: false, Anchor.Middle, 10);
    }

    private static IEnumerable<Spot> HalfCircle(double xPx, double yPx, double radiusPx, bool up)
    {
        const int corners = 10;
        for (int i = 0; i <= corners; i++)
        {
            double turn = Math.PI * i / corners;
            yield return new Spot(xPx - (radiusPx * Math.Cos(turn)), yPx + ((up ? -1 : 1) * radiusPx * Math.Sin(turn)));
        }
    }
}

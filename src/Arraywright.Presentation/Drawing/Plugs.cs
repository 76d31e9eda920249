namespace Arraywright.Presentation.Drawing;

/// <summary>Two plugged connectors as they look, with the number of their joint.</summary>
internal static class Plugs
{
    /// <summary>Width of a level joint with its leads.</summary>
    public const double GapPx = 34;

    private const double BodyPx = 9;
    private const double HalfPx = 4;
    private const double AbovePx = 16;

    /// <summary>A level joint.</summary>
    /// <param name="sketch">Where.</param>
    /// <param name="xPx">Left end of its leads.</param>
    /// <param name="yPx">Its leads.</param>
    /// <param name="joint">The joint.</param>
    /// <param name="left">The lead that comes from the left.</param>
    /// <param name="right">The lead that goes on to the right.</param>
    public static void Level(Sketch sketch, double xPx, double yPx, Joint joint, Pen left, Pen right) => sketch.Group(Title(joint), inner =>
    {
        double middlePx = xPx + (GapPx / 2);
        inner.Level(left, xPx, middlePx - BodyPx, yPx);
        inner.Box(middlePx - BodyPx, yPx - HalfPx, BodyPx, 2 * HalfPx, Pen.Outline, Tone.Ink);
        inner.Box(middlePx, yPx - HalfPx, BodyPx, 2 * HalfPx, Pen.Outline, Tone.Paper);
        inner.Level(right, middlePx + BodyPx, xPx + GapPx, yPx);
        Symbols.Number(inner, middlePx, yPx - AbovePx, joint);
    });

    /// <summary>An upright joint.</summary>
    public static void Upright(Sketch sketch, double xPx, double topPx, Joint joint, Pen pen) => sketch.Group(Title(joint), inner =>
    {
        inner.Upright(pen, xPx, topPx, topPx + 3);
        inner.Box(xPx - HalfPx, topPx + 3, 2 * HalfPx, BodyPx, Pen.Outline, Tone.Ink);
        inner.Box(xPx - HalfPx, topPx + 3 + BodyPx, 2 * HalfPx, BodyPx, Pen.Outline, Tone.Paper);
        inner.Upright(pen, xPx, topPx + 3 + (2 * BodyPx), topPx + Symbols.PlugPx);
        Symbols.NumberBeside(inner, xPx, topPx + (Symbols.PlugPx / 2), joint);
    });

    /// <summary>What goes into what.</summary>
    public static string Title(Joint joint) => $"joint {joint.Number}: {joint.From} into {joint.Into}";
}

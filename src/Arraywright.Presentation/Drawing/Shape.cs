using System.Collections.Immutable;

namespace Arraywright.Presentation.Drawing;

/// <summary>A place on a picture, pixels right of and below its upper left corner.</summary>
/// <param name="XPx">Right.</param>
/// <param name="YPx">Down.</param>
public readonly record struct Spot(double XPx, double YPx);

/// <summary>Which end of a text stands at its place.</summary>
public enum Anchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}

/// <summary>The few kinds of thing that a picture is made of, whatever it is drawn on.</summary>
public abstract record Shape
{
    private Shape()
    {
    }

    /// <summary>A line through corners, closed to an area or not.</summary>
    /// <param name="Points">Its corners, at least two.</param>
    /// <param name="IsClosed">Whether its end is joined to its beginning.</param>
    /// <param name="Stroke">Its line.</param>
    /// <param name="Fill">What it is filled with; null for nothing.</param>
    public sealed record Path(ImmutableArray<Spot> Points, bool IsClosed, Pen Stroke, Tone? Fill) : Shape;

    /// <summary>A rectangle.</summary>
    /// <param name="From">Its upper left corner.</param>
    /// <param name="WidthPx">Its width.</param>
    /// <param name="HeightPx">Its height.</param>
    /// <param name="Stroke">Its outline; null for none.</param>
    /// <param name="Fill">What it is filled with; null for nothing.</param>
    public sealed record Box(Spot From, double WidthPx, double HeightPx, Pen? Stroke, Tone? Fill) : Shape;

    /// <summary>A circle.</summary>
    /// <param name="Middle">Its middle.</param>
    /// <param name="RadiusPx">Its radius.</param>
    /// <param name="Stroke">Its outline; null for none.</param>
    /// <param name="Fill">What it is filled with; null for nothing.</param>
    public sealed record Disc(Spot Middle, double RadiusPx, Pen? Stroke, Tone? Fill) : Shape;

    /// <summary>A line of text.</summary>
    /// <param name="At">Where its anchor stands, on its baseline.</param>
    /// <param name="Text">What it says. Any text at all; a writer keeps it text.</param>
    /// <param name="SizePx">Size of its font.</param>
    /// <param name="IsBold">Whether it is heavy.</param>
    /// <param name="Anchor">Which end stands there.</param>
    public sealed record Words(Spot At, string Text, double SizePx, bool IsBold, Anchor Anchor) : Shape;

    /// <summary>Shapes that are one thing.</summary>
    /// <param name="Title">What it is, in full, shown where the viewer can.</param>
    /// <param name="Shapes">Its parts, the lowest first.</param>
    public sealed record Group(string Title, ImmutableArray<Shape> Shapes) : Shape;
}

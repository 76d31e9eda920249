using Arraywright.Presentation.Drawing;
using OxyPlot;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>A straight piece of a drawing.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Thing">Number of the thing it belongs to.</param>
internal readonly record struct Segment(Spot From, Spot To, int Thing);

/// <summary>An upright rectangle of a drawing.</summary>
internal readonly record struct Frame(double Left, double Top, double Right, double Bottom, int Thing, string What)
{
    public bool Overlaps(Frame other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether a segment comes inside; along the edge is not inside.</summary>
    public bool IsEnteredBy(Segment segment)
    {
        // Clip the segment against the four sides (Liang and Barsky, 1984).
        (double from, double to) = (0, 1);
        (double dx, double dy) = (segment.To.XPx - segment.From.XPx, segment.To.YPx - segment.From.YPx);
        foreach ((double p, double q) in new[] { (-dx, segment.From.XPx - Left), (dx, Right - segment.From.XPx), (-dy, segment.From.YPx - Top), (dy, Bottom - segment.From.YPx) })
        {
            if (p == 0)
            {
                if (q <= 0)
                {
                    return false;
                }
            }
            else if (p < 0)
            {
                from = Math.Max(from, q / p);
            }
            else
            {
                to = Math.Min(to, q / p);
            }
        }

        return to - from > 1e-9;
    }
}

/// <summary>What a picture is made of, taken apart: wires, other strokes, texts, boxes, each with the thing it belongs to.</summary>
internal sealed class DrawnGeometry
{
    private readonly List<string> _things = [""];

    public DrawnGeometry(Picture picture)
    {
        Picture = picture;
        Take(picture.Shapes, 0);
    }

    public Picture Picture { get; }

    /// <summary>Wires, each with the corners it goes through.</summary>
    public List<(Spot[] Points, int Thing)> Wires { get; } = [];

    public List<Segment> Strokes { get; } = [];

    public List<Frame> Texts { get; } = [];

    public List<Frame> Boxes { get; } = [];

    public List<(Spot Middle, double RadiusPx, bool IsDot, int Thing)> Discs { get; } = [];

    public string Title(int thing) => _things[thing];

    public int Things => _things.Count;

    public IEnumerable<Segment> WireSegments => Wires.SelectMany(wire => Segments(wire.Points, wire.Thing));

    private void Take(IEnumerable<Shape> shapes, int thing)
    {
        foreach (Shape shape in shapes)
        {
            switch (shape)
            {
                case Shape.Group group:
                    _things.Add(group.Title);
                    Take(group.Shapes, _things.Count - 1);
                    break;
                case Shape.Path { Stroke.ThicknessPx: Pen.WirePx } wire:
                    Wires.Add(([.. wire.Points], thing));
                    break;
                case Shape.Path path:
                    Strokes.AddRange(Segments(path.IsClosed ? [.. path.Points, path.Points[0]] : path.Points, thing));
                    break;
                case Shape.Box box:
                    Frame frame = new(box.From.XPx, box.From.YPx, box.From.XPx + box.WidthPx, box.From.YPx + box.HeightPx, thing, "box");
                    Boxes.Add(frame);
                    Strokes.AddRange(Segments([new(frame.Left, frame.Top), new(frame.Right, frame.Top), new(frame.Right, frame.Bottom), new(frame.Left, frame.Bottom), new(frame.Left, frame.Top)], thing));
                    break;
                case Shape.Disc disc:
                    Discs.Add((disc.Middle, disc.RadiusPx, disc.Fill == Tone.Ink, thing));
                    Strokes.AddRange(Segments([.. Enumerable.Range(0, 25).Select(i => Math.Tau * i / 24).Select(turn => new Spot(disc.Middle.XPx + (disc.RadiusPx * Math.Cos(turn)), disc.Middle.YPx + (disc.RadiusPx * Math.Sin(turn))))], thing));
                    break;
                case Shape.Words words:
                    Texts.Add(Frame(words, thing));
                    break;
                default:
                    throw new InvalidOperationException();
            }
        }
    }

    /// <summary>Where a text comes to stand in the widths of a common sans-serif font; what that font does not know counts as square.</summary>
    private static Frame Frame(Shape.Words words, int thing)
    {
        PortableDocumentFontFamily family = StandardFonts.Helvetica;
        (words.IsBold ? family.BoldFont : family.RegularFont).Measure(string.Concat(words.Text.Where(sign => sign < 256)), words.SizePx, out double width, out _);
        width += words.SizePx * words.Text.EnumerateRunes().Sum(rune => rune.Value switch { 0x2212 => 0.584, 0x202e or 0x200d or 0xfe0f => 0, > 255 => 1, _ => 0 });
        double left = words.At.XPx - (width * words.Anchor switch { Anchor.Start => 0, Anchor.Middle => 0.5, _ => 1 });
        return new Frame(left, words.At.YPx - (0.73 * words.SizePx), left + width, words.At.YPx + (0.21 * words.SizePx), thing, words.Text);
    }

    private static IEnumerable<Segment> Segments(IReadOnlyList<Spot> points, int thing) => points.Zip(points.Skip(1), (from, to) => new Segment(from, to, thing));
}

using System.Collections.Immutable;

namespace Arraywright.Presentation.Drawing;

/// <summary>Cuts a picture that is too high for one page, where nothing but leads and the bodies of branch connectors goes on below.</summary>
internal static class PictureCut
{
    /// <summary>White about what is not cut: little, for in a dense drawing there is no more.</summary>
    private const double ClearPx = 1;

    /// <summary>White above and below the cut itself, with the broken line that shows it.</summary>
    private const double EdgePx = 6;

    /// <summary>A cut so much farther from the even one is worth a line less that goes through it.</summary>
    private const double PerLinePx = 30;

    /// <summary>The parts from top to bottom, as even as they come, none higher than wanted where there is a place to cut; the picture itself where it is low enough.</summary>
    public static ImmutableArray<Picture> Into(Picture picture, double highestPx)
    {
        double[] places = [.. Places(picture)];
        List<double> cuts = [0];
        double roomPx = highestPx - (2 * EdgePx);
        while (picture.HeightPx - cuts[^1] > highestPx)
        {
            double fromPx = cuts[^1];
            double evenPx = fromPx + ((picture.HeightPx - fromPx) / Math.Ceiling((picture.HeightPx - fromPx) / roomPx));
            double[] near = [.. places.Where(place => place > fromPx + (roomPx / 4) && place <= fromPx + roomPx)];
            double[] able = near.Length > 0 ? near : [.. places.Where(place => place > fromPx + roomPx).Take(1)];
            if (able.Length == 0)
            {
                break;
            }

            cuts.Add(able.MinBy(place => Math.Abs(place - evenPx) + (PerLinePx * Crossing(picture.Shapes, place))));
        }

        cuts.Add(picture.HeightPx);
        return cuts.Count == 2 ? [picture] : [.. cuts.Zip(cuts.Skip(1)).Select((ends, index) => Part(picture, ends.First, ends.Second, index + 1, cuts.Count - 1))];
    }

    private static Picture Part(Picture picture, double fromPx, double toPx, int number, int count)
    {
        (bool isFirst, bool isLast) = (number == 1, number == count);
        double shiftPx = (isFirst ? 0 : EdgePx) - fromPx;
        double heightPx = toPx + shiftPx + (isLast ? 0 : EdgePx);
        IEnumerable<Shape> edges = [.. isFirst ? (Shape[])[] : [Edge(picture, EdgePx / 2)], .. isLast ? (Shape[])[] : [Edge(picture, heightPx - (EdgePx / 2))]];
        return picture with
        {
            Id = $"{picture.Id}-{number}",
            Title = $"{picture.Title}, part {number} of {count}",
            Description = isFirst ? picture.Description : $"Part {number} of {count}; the first part is told in words.",
            HeightPx = heightPx,
            Shapes = [.. picture.Shapes.SelectMany(shape => Within(shape, fromPx, toPx)).Select(shape => Moved(shape, shiftPx)), .. edges],
        };
    }

    private static Shape.Path Edge(Picture picture, double yPx) =>
        new([new(EdgePx, yPx), new(picture.WidthPx - EdgePx, yPx)], IsClosed: false, Pen.Together, null);

    /// <summary>The middle of every level strip that nothing but leads and bodies goes through.</summary>
    private static IEnumerable<double> Places(Picture picture)
    {
        double freePx = 0;
        foreach ((double topPx, double bottomPx) in picture.Shapes.SelectMany(Whole).OrderBy(span => span.TopPx))
        {
            if (topPx - ClearPx > freePx && freePx > 0)
            {
                yield return (freePx + topPx - ClearPx) / 2;
            }

            freePx = Math.Max(freePx, bottomPx + ClearPx);
        }
    }

    /// <summary>What of a shape may not be cut: all of it, or of a lead its level pieces.</summary>
    private static IEnumerable<(double TopPx, double BottomPx)> Whole(Shape shape) => shape switch
    {
        Shape.Group group => group.Shapes.SelectMany(Whole),
        Shape.Box { Fill: Tone.Body } => [],
        Shape.Path { Stroke.ThicknessPx: Pen.WirePx } lead => lead.Points.Zip(lead.Points.Skip(1)).Where(ends => ends.First.YPx == ends.Second.YPx).Select(ends => (ends.First.YPx, ends.First.YPx)),
        _ => [Span(shape)],
    };

    private static (double TopPx, double BottomPx) Span(Shape shape) => shape switch
    {
        Shape.Group group => (group.Shapes.Min(inner => Span(inner).TopPx), group.Shapes.Max(inner => Span(inner).BottomPx)),
        Shape.Path path => (path.Points.Min(point => point.YPx), path.Points.Max(point => point.YPx)),
        Shape.Box box => (box.From.YPx, box.From.YPx + box.HeightPx),
        Shape.Disc disc => (disc.Middle.YPx - disc.RadiusPx, disc.Middle.YPx + disc.RadiusPx),
        Shape.Words words => (words.At.YPx - words.SizePx, words.At.YPx + (0.3 * words.SizePx)),
        _ => throw new InvalidOperationException("A shape of an unknown kind."),
    };

    /// <summary>How many lines and bodies go through a level.</summary>
    private static int Crossing(ImmutableArray<Shape> shapes, double yPx) => shapes.Sum(shape => shape is Shape.Path path
        ? path.Points.Zip(path.Points.Skip(1)).Count(ends => Math.Min(ends.First.YPx, ends.Second.YPx) < yPx && Math.Max(ends.First.YPx, ends.Second.YPx) > yPx)
        : Span(shape) is var (topPx, bottomPx) && topPx < yPx && bottomPx > yPx ? 1 : 0);

    private static IEnumerable<Shape> Within(Shape shape, double fromPx, double toPx)
    {
        (double topPx, double bottomPx) = Span(shape);
        if (topPx >= fromPx && bottomPx <= toPx)
        {
            return [shape];
        }

        return bottomPx <= fromPx || topPx >= toPx ? [] : shape switch
        {
            Shape.Group group => [group with { Shapes = [.. group.Shapes.SelectMany(inner => Within(inner, fromPx, toPx))] }],
            Shape.Box box => [box with { From = box.From with { YPx = Math.Max(topPx, fromPx) }, HeightPx = Math.Min(bottomPx, toPx) - Math.Max(topPx, fromPx) }],
            Shape.Path path => Clipped(path, fromPx, toPx),
            _ => [],
        };
    }

    /// <summary>The pieces of a lead between two levels; its corners are right angles.</summary>
    private static IEnumerable<Shape> Clipped(Shape.Path lead, double fromPx, double toPx)
    {
        List<Spot> piece = [];
        foreach ((Spot one, Spot other) in lead.Points.Zip(lead.Points.Skip(1)))
        {
            bool isInside = Math.Max(one.YPx, other.YPx) > fromPx && Math.Min(one.YPx, other.YPx) < toPx;
            if (!isInside)
            {
                continue;
            }

            Spot begin = one with { YPx = Math.Clamp(one.YPx, fromPx, toPx) };
            if (piece.Count > 0 && piece[^1] != begin)
            {
                yield return lead with { Points = [.. piece] };
                piece.Clear();
            }

            piece.AddRange(piece.Count == 0 ? [begin] : []);
            piece.Add(other with { YPx = Math.Clamp(other.YPx, fromPx, toPx) });
        }

        if (piece.Count > 0)
        {
            yield return lead with { Points = [.. piece] };
        }
    }

    private static Shape Moved(Shape shape, double downPx)
    {
        Spot At(Spot spot) => spot with { YPx = spot.YPx + downPx };
        return shape switch
        {
            Shape.Group group => group with { Shapes = [.. group.Shapes.Select(inner => Moved(inner, downPx))] },
            Shape.Path path => path with { Points = [.. path.Points.Select(At)] },
            Shape.Box box => box with { From = At(box.From) },
            Shape.Disc disc => disc with { Middle = At(disc.Middle) },
            Shape.Words words => words with { At = At(words.At) },
            _ => throw new InvalidOperationException("A shape of an unknown kind."),
        };
    }
}

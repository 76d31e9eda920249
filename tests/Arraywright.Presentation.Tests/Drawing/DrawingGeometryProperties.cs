using Arraywright.Electrical;
using Arraywright.Presentation.Drawing;
using CsCheck;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>What holds for both drawings of any wiring of up to 16 panels, on a telephone and on paper.</summary>
public sealed class DrawingGeometryProperties
{
    private const double Near = 0.01;

    private static readonly Gen<(Wiring Wiring, bool HasPieces, double WidthPx)> Cases = Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[1, 16], Gen.Bool, Gen.Bool.Select(isPage => isPage ? DrawingSheet.PagePx : DrawingSheet.TelephonePx))
        .Select((seed, panels, hasPieces, widthPx) => (SampleSheets.RandomWiring(seed, panels, "cellar-west-120"), hasPieces, widthPx));

    [Fact]
    public void No_two_wires_cross_or_run_on_each_other() => Sample(drawn =>
    {
        Segment[] wires = [.. drawn.WireSegments];
        for (int i = 0; i < wires.Length; i++)
        {
            for (int j = i + 1; j < wires.Length; j++)
            {
                Assert.False(Cross(wires[i], wires[j]), $"{wires[i]} crosses {wires[j]}");
            }
        }
    });

    [Fact]
    public void Where_a_wire_ends_on_another_there_is_a_dot() => Sample(drawn =>
    {
        foreach ((Spot[] points, _) in drawn.Wires)
        {
            foreach (Spot end in new[] { points[0], points[^1] }.Where(end => drawn.WireSegments.Any(wire => IsWithin(end, wire))))
            {
                Assert.Contains(drawn.Discs, disc => disc.IsDot && Math.Abs(disc.Middle.XPx - end.XPx) < Near && Math.Abs(disc.Middle.YPx - end.YPx) < Near);
            }
        }
    });

    [Fact]
    public void No_wire_passes_through_anything() => Sample(drawn =>
    {
        foreach (Segment wire in drawn.WireSegments)
        {
            Assert.DoesNotContain(drawn.Boxes, box => box.Thing != wire.Thing && Smaller(box, 0.5).IsEnteredBy(wire));
            Assert.DoesNotContain(drawn.Discs, disc => !disc.IsDot && disc.Thing != wire.Thing && Square(disc.Middle, disc.RadiusPx).IsEnteredBy(wire));
        }
    });

    [Fact]
    public void No_text_lies_on_a_text_or_on_a_line() => Sample(drawn =>
    {
        Segment[] lines = [.. drawn.Strokes, .. drawn.WireSegments];
        for (int i = 0; i < drawn.Texts.Count; i++)
        {
            Frame text = drawn.Texts[i];
            Assert.DoesNotContain(drawn.Texts.Skip(i + 1), other => text.Overlaps(other));
            Assert.DoesNotContain(lines, line => text.IsEnteredBy(line));
        }
    });

    [Fact]
    public void The_numbers_of_joints_stand_clear_of_every_line() => Sample(drawn =>
    {
        foreach ((Spot middle, double radiusPx, _, _) in drawn.Discs.Where(disc => disc.RadiusPx > 5))
        {
            bool IsOutline(Segment line) => Math.Abs(Distance(line.From, middle) - radiusPx) < Near && Math.Abs(Distance(line.To, middle) - radiusPx) < Near;
            Assert.DoesNotContain(drawn.Strokes.Concat(drawn.WireSegments), line => !IsOutline(line) && Square(middle, radiusPx - 1).IsEnteredBy(line));
        }
    });

    [Fact]
    public void Everything_lies_on_the_card() => Sample(drawn =>
    {
        Frame card = new(0, 0, drawn.Picture.WidthPx, drawn.Picture.HeightPx, 0, "card");
        Assert.All(drawn.Texts.Concat(drawn.Boxes), frame => Assert.True(frame.Left >= card.Left && frame.Top >= card.Top && frame.Right <= card.Right && frame.Bottom <= card.Bottom, frame.What));
        Assert.All(drawn.WireSegments.Concat(drawn.Strokes), line => Assert.All(new[] { line.From, line.To }, end => Assert.True(end.XPx > 0 && end.YPx > 0 && end.XPx < card.Right && end.YPx < card.Bottom)));
    });

    [Fact]
    public void Followed_along_its_lines_each_drawing_is_the_circuit_of_the_wiring() => Cases.Sample(one =>
    {
        Wiring second = SampleSheets.Parse("a | a + a");
        DrawingSheet sheet = SampleSheets.Of(one.HasPieces, one.Wiring, second) with { WidthPx = one.WidthPx };
        Dictionary<string, int> expected = DrawnCircuit.Nodes([one.Wiring, second]);
        foreach (Picture picture in new[] { sheet.Diagram(), sheet.Arrangement() })
        {
            Dictionary<string, int> drawn = new DrawnCircuit(new DrawnGeometry(picture)).Nodes();
            Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), drawn.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(Together(expected), Together(drawn));
        }
    }, iter: 100);

    [Fact]
    public void Every_joint_is_drawn_once_with_its_number() => Cases.Sample(one =>
    {
        DrawingSheet sheet = SampleSheets.Of(one.HasPieces, one.Wiring) with { WidthPx = one.WidthPx };
        int[] numbers = [.. sheet.Hookups[0].Joints.Select(joint => joint.Number)];
        Assert.Equal(Enumerable.Range(1, numbers.Length), numbers);
        foreach (Picture picture in new[] { sheet.Arrangement(), sheet.Diagram() })
        {
            DrawnGeometry drawn = new(picture);
            int[] shown = [.. Enumerable.Range(1, drawn.Things - 1).Select(drawn.Title).Where(title => title.StartsWith("joint ", StringComparison.Ordinal)).Select(title => int.Parse(title[6..title.IndexOf(':')])).Order()];
            Assert.Equal(numbers, shown);
        }
    }, iter: 100);

    private static void Sample(Action<DrawnGeometry> check) => Cases.Sample(one =>
    {
        DrawingSheet sheet = SampleSheets.Of(one.HasPieces, one.Wiring) with { WidthPx = one.WidthPx };
        check(new DrawnGeometry(sheet.Diagram()));
        check(new DrawnGeometry(sheet.Arrangement()));
    }, iter: 150);

    /// <summary>The terminals that are joined, group by group.</summary>
    private static string[] Together(Dictionary<string, int> nodes) =>
        [.. nodes.GroupBy(pair => pair.Value, pair => pair.Key).Select(group => string.Join(' ', group.Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal)];

    /// <summary>Whether two segments meet anywhere but where one of them ends.</summary>
    private static bool Cross(Segment one, Segment other)
    {
        double Side(Spot from, Spot to, Spot spot) => ((to.XPx - from.XPx) * (spot.YPx - from.YPx)) - ((to.YPx - from.YPx) * (spot.XPx - from.XPx));
        double a = Side(one.From, one.To, other.From);
        double b = Side(one.From, one.To, other.To);
        double c = Side(other.From, other.To, one.From);
        double d = Side(other.From, other.To, one.To);
        if (Math.Abs(a) < Near && Math.Abs(b) < Near)
        {
            return Math.Min(Math.Max(one.From.XPx, one.To.XPx), Math.Max(other.From.XPx, other.To.XPx)) - Math.Max(Math.Min(one.From.XPx, one.To.XPx), Math.Min(other.From.XPx, other.To.XPx)) > Near
                || Math.Min(Math.Max(one.From.YPx, one.To.YPx), Math.Max(other.From.YPx, other.To.YPx)) - Math.Max(Math.Min(one.From.YPx, one.To.YPx), Math.Min(other.From.YPx, other.To.YPx)) > Near;
        }

        return a * b < -Near && c * d < -Near;
    }

    private static bool IsWithin(Spot spot, Segment wire) =>
        DrawnCircuit.IsOn(spot, wire.From, wire.To) && !IsAt(spot, wire.From) && !IsAt(spot, wire.To);

    private static bool IsAt(Spot one, Spot other) => Math.Abs(one.XPx - other.XPx) < 2 * Near && Math.Abs(one.YPx - other.YPx) < 2 * Near;

    private static double Distance(Spot one, Spot other) => Math.Sqrt(((one.XPx - other.XPx) * (one.XPx - other.XPx)) + ((one.YPx - other.YPx) * (one.YPx - other.YPx)));

    private static Frame Smaller(Frame box, double px) => box with { Left = box.Left + px, Top = box.Top + px, Right = box.Right - px, Bottom = box.Bottom - px };

    private static Frame Square(Spot middle, double radiusPx) => new(middle.XPx - radiusPx, middle.YPx - radiusPx, middle.XPx + radiusPx, middle.YPx + radiusPx, 0, "disc");
}

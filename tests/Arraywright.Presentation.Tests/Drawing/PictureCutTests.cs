using Arraywright.Presentation.Drawing;
using CsCheck;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>Drawings cut into parts for paper: nothing is lost, and every lead goes on where it was cut.</summary>
public sealed class PictureCutTests
{
    /// <summary>What a page of A4 holds at six points for the smallest text: 670 points less a caption, the numbers of joints being 10 pixels.</summary>
    private const double PagePx = 670 / 0.6;

    private const double EdgePx = 6;

    [Fact]
    public void Sixteen_panels_come_in_parts_that_can_be_read_on_paper()
    {
        foreach (string wiring in new[] { "16*a", "4*a | 4*a | 4*a | 4*a", "2*a | 2*a | 2*a | 2*a | 2*a | 2*a | 2*a | 2*a", "a" + string.Concat(Enumerable.Repeat(" | a", 15)), "4*(a | a) | 4*(a | a)", "a + a | a + a | (a | a) + a | a + a | (a | a) + (a | a) | a + a + a" })
        {
            DrawingSheet sheet = SampleSheets.Of(true, SampleSheets.Parse(wiring)) with { WidthPx = DrawingSheet.PagePx };
            foreach (Picture picture in new[] { sheet.Diagram(), sheet.Arrangement() })
            {
                Assert.All(picture.Cut(PagePx), part => Assert.True(part.HeightPx <= PagePx && part.WidthPx <= 499 / 0.6, $"{wiring}: {part.Title} {part.WidthPx} by {part.HeightPx}"));
                Assert.InRange(picture.Cut(PagePx).Length, 1, 3);
            }
        }
    }

    [Fact]
    public void A_low_picture_stays_whole()
    {
        Picture picture = SampleSheets.Of(true, SampleSheets.Parse("a")).Diagram();
        Assert.Same(picture, Assert.Single(picture.Cut(picture.HeightPx)));
    }

    [Fact]
    public void Nothing_is_lost_and_every_lead_goes_on_where_it_was_cut() => Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[4, 16], Gen.Bool).Sample(
        (seed, panels, isDiagram) =>
        {
            DrawingSheet sheet = SampleSheets.Of(true, SampleSheets.RandomWiring(seed, panels, "a")) with { WidthPx = DrawingSheet.PagePx };
            Picture picture = isDiagram ? sheet.Diagram() : sheet.Arrangement();
            DrawnGeometry whole = new(picture);
            Assert.True(picture.HeightPx < 500 || picture.Cut(500).Length > 1);
            DrawnGeometry[] parts = [.. picture.Cut(500).Select(part => new DrawnGeometry(part))];
            Assert.Equal(whole.Texts.Select(text => text.What).Order(StringComparer.Ordinal), parts.SelectMany(part => part.Texts).Select(text => text.What).Order(StringComparer.Ordinal));
            Assert.Equal(whole.Discs.Count, parts.Sum(part => part.Discs.Count));
            Assert.Equal(whole.WireSegments.Sum(Length), parts.Sum(part => part.WireSegments.Sum(Length)), 1e-6);
            Assert.Equal(whole.Boxes.Sum(box => box.Bottom - box.Top), parts.Sum(part => part.Boxes.Sum(box => box.Bottom - box.Top)), 1e-6);
            foreach ((DrawnGeometry above, DrawnGeometry below) in parts.Zip(parts.Skip(1)))
            {
                Assert.Equal(Ends(above, above.Picture.HeightPx - EdgePx), Ends(below, EdgePx));
            }

            Assert.All(parts, part => Assert.All(part.Texts, text => Assert.True(text.Top >= 0 && text.Bottom <= part.Picture.HeightPx)));
        },
        iter: 100);

    private static IEnumerable<double> Ends(DrawnGeometry part, double levelPx) =>
        part.Wires.SelectMany(wire => new[] { wire.Points[0], wire.Points[^1] }).Where(end => Math.Abs(end.YPx - levelPx) < 1e-6).Select(end => Math.Round(end.XPx, 3)).Order();

    private static double Length(Segment wire) => Math.Abs(wire.To.XPx - wire.From.XPx) + Math.Abs(wire.To.YPx - wire.From.YPx);
}

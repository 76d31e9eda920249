using Arraywright.Limits;
using Arraywright.Presentation.Drawing;
using CsCheck;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>What the drawings say, and how large they come out.</summary>
public sealed class DrawingSheetTests
{
    [Fact]
    public void Strings_are_joined_inside_first_then_side_by_side_then_to_the_unit_whose_socket_is_last()
    {
        Hookup hookup = SampleSheets.Of(false, SampleSheets.Parse("a + a | a + a")).Hookups[0];
        Assert.Equal(
        [
            "minus of panel 1 into plus of panel 2",
            "plus of panel 1 into string cable",
            "minus of panel 2 into string cable",
            "minus of panel 3 into plus of panel 4",
            "plus of panel 3 into string cable",
            "minus of panel 4 into string cable",
            "plus string cable of panels 1 and 2 into plus branch connector",
            "plus string cable of panels 3 and 4 into plus branch connector",
            "minus string cable of panels 1 and 2 into minus branch connector",
            "minus string cable of panels 3 and 4 into minus branch connector",
            "plus branch connector of panels 1 to 4 into plus of the run",
            "minus branch connector of panels 1 to 4 into minus of the run",
            "plug of the run into unit's socket",
        ], hookup.Joints.Select(joint => $"{joint.From} into {joint.Into}"));
    }

    [Fact]
    public void Every_piece_is_on_the_diagram_with_its_figures()
    {
        string[] texts = [.. new DrawnGeometry(SampleSheets.Of(true, SampleSheets.Parse("a + a | a + a")).Diagram()).Texts.Select(text => text.What)];
        Assert.Equal(2, texts.Count(text => text == "fuse"));
        Assert.Equal(4, texts.Count(text => text == "12 AWG, 12.4 m") + texts.Count(text => text == "12.4 m"));
        Assert.Contains("branch connector, 4 into 1, at least 15 A, 600 V DC", string.Join(' ', texts), StringComparison.Ordinal);
        foreach (string name in new[] { "extension", "run", "switch", "watt meter", "adapter" })
        {
            Assert.Contains(name, texts);
        }

        Assert.Equal(2, texts.Count(text => text == "12 AWG (3.3 mm²)"));
        Assert.Contains("at least 12.5 A, 600 V DC", texts);
        Assert.Contains("36.0 V, 10.00 A, 360 W", texts);
        Assert.Contains("bears at most 50 V", texts);
    }

    [Fact]
    public void A_wiring_that_is_stopped_ends_before_the_unit_and_tells_no_working_point()
    {
        DrawingSheet go = SampleSheets.Of(true, SampleSheets.Parse("a + a | a + a"));
        Finding tooHigh = new("cold_voltage_label", "Open-circuit voltage at the coldest", Level.Stop, 74.9, 50, "V", "working", "source");
        Design design = go.Design with { Assignments = [go.Design.Assignments[0] with { Findings = [tooHigh] }] };
        DrawingSheet stop = DrawingSheet.Of(go.Plan, design, go.Readings, []);
        foreach (Picture picture in new[] { stop.Diagram(), stop.Arrangement() })
        {
            DrawnGeometry drawn = new(picture);
            string[] texts = [.. drawn.Texts.Select(text => text.What)];
            Assert.Contains(texts, text => text.StartsWith("STOP: do not connect it to store-a.", StringComparison.Ordinal));
            Assert.Contains("do not connect", texts);
            Assert.DoesNotContain(texts, text => text.Contains("10.00 A", StringComparison.Ordinal) || text.Contains("10.01 A", StringComparison.Ordinal));
            Assert.Contains("not to be connected", Enumerable.Range(0, drawn.Things).Select(drawn.Title));
            double unitPx = drawn.Boxes.Max(box => box.Top);
            Assert.DoesNotContain(drawn.WireSegments.Where(wire => drawn.Title(wire.Thing) != ""), wire => Math.Max(wire.From.YPx, wire.To.YPx) >= unitPx - 12);
        }
    }

    [Fact]
    public void An_input_without_wiring_is_left_out_and_a_design_without_any_is_still_a_picture()
    {
        DrawingSheet sheet = SampleSheets.Of(false, SampleSheets.Parse("a"));
        Design none = sheet.Design with { Assignments = [sheet.Design.Assignments[0] with { Wiring = null }] };
        DrawingSheet empty = DrawingSheet.Of(sheet.Plan, none, [], []);
        Assert.Empty(empty.Hookups);
        Assert.Contains("STOP: none of these panels", empty.Diagram().Description, StringComparison.Ordinal);
        Assert.Contains("STOP: none of these panels", empty.Arrangement().Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Sixteen_panels_can_be_read_on_a_telephone()
    {
        foreach (string wiring in new[] { "16*a", "8*a | 8*a", "4*a | 4*a | 4*a | 4*a", "2*a | 2*a | 2*a | 2*a | 2*a | 2*a | 2*a | 2*a", "a" + string.Concat(Enumerable.Repeat(" | a", 15)), "4*(a | a) | 4*(a | a)" })
        {
            DrawingSheet telephone = SampleSheets.Of(true, SampleSheets.Parse(wiring));
            foreach (Picture narrow in new[] { telephone.Diagram(), telephone.Arrangement() })
            {
                // On a telephone of 360 pixels the ordinary text of 12 is at least 10 high. What holds on paper stands in PictureCutTests.
                Assert.True(12 * 360 / narrow.WidthPx >= 10, $"{wiring}: {narrow.WidthPx} wide");
            }
        }
    }

    [Fact]
    public void Lines_are_told_apart_without_colour()
    {
        Assert.NotEqual(Pen.Plus.Dash, Pen.Minus.Dash);
        DrawingSheet sheet = SampleSheets.Of(true, SampleSheets.Parse("a + a | a + a"));
        foreach (Picture picture in new[] { sheet.Diagram(), sheet.Arrangement() })
        {
            string[] texts = [.. new DrawnGeometry(picture).Texts.Select(text => text.What)];
            Assert.Equal(5, texts.Count(text => text == "+"));
            Assert.Equal(5, texts.Count(text => text == "−"));
        }
    }

    [Fact]
    public void Panels_and_joints_are_numbered_through_all_inputs() => Gen.Select(Gen.Int[1, 8], Gen.Int[1, 8], Gen.Int[1, 1000]).Sample((one, other, seed) =>
    {
        DrawingSheet sheet = SampleSheets.Of(true, SampleSheets.RandomWiring(seed, one, "a"), SampleSheets.RandomWiring(seed + 1, other, "b"));
        int[] joints = [.. sheet.Hookups.SelectMany(hookup => hookup.Joints).Select(joint => joint.Number)];
        Assert.Equal(Enumerable.Range(1, joints.Length), joints);
        string[] titles = [.. Titles(sheet.Arrangement())];
        Assert.All(Enumerable.Range(1, one + other), number => Assert.Single(titles, title => title.StartsWith($"panel {number},", StringComparison.Ordinal)));
    }, iter: 50);

    private static IEnumerable<string> Titles(Picture picture)
    {
        DrawnGeometry drawn = new(picture);
        return Enumerable.Range(0, drawn.Things).Select(drawn.Title);
    }
}

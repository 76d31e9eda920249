using Arraywright.Presentation.Report;

namespace Arraywright.Report.Tests;

public sealed class ReportBuilderTests
{
    [Fact]
    public void The_sections_stand_in_the_order_in_which_one_builds() =>
        Assert.Equal(
            ["verdict", "given", "wiring", "findings", "earnings", "parts", "connecting", "never", "assumed", "cautions", "sources"],
            Scene.Report("four panels").Sections.Select(section => section.Id));

    [Fact]
    public void Every_limit_says_on_whose_word_it_rests()
    {
        ReportBlock.Table limits = Tables("four panels", "given").Single(table => table.Caption == "What store-a bears, and who says so");
        Assert.Equal(
            [("volts, at most", "the plan"), ("volts to start", "the plan"), ("voltage window", "the plan"), ("amps it draws, at most", "the manual's"), ("amps the array may offer", "the manual's"), ("watts it takes, at most", "the manual's")],
            limits.Rows.Select(row => (row.Cells[0], row.Cells[2])));
    }

    [Fact]
    public void Every_finding_has_its_working_and_its_source() =>
        Assert.All(Tables("four panels", "findings").Single().Rows, row => Assert.Matches(@".+ \[.+\]", row.Notes[0]));

    [Fact]
    public void A_stop_has_no_steps_and_says_so_first()
    {
        ReportDocument report = Scene.Report("two panels, a stop");
        Assert.StartsWith("STOP:", Assert.IsType<ReportBlock.Verdict>(report.Sections[0].Blocks[0]).Sentence, StringComparison.Ordinal);
        Assert.Empty(report.Sections.Single(section => section.Id == "connecting").Blocks.OfType<ReportBlock.Steps>());
        Assert.NotEmpty(report.Sections.Single(section => section.Id == "never").Blocks);
        Assert.DoesNotContain(report.Sections[0].Blocks.OfType<ReportBlock.Table>().SelectMany(table => table.Rows), row => row.Cells[0] is "In a year" or "In strong sun");
        ReportSection parts = report.Sections.Single(section => section.Id == "parts");
        Assert.StartsWith("Nothing:", Assert.IsType<ReportBlock.Paragraph>(parts.Blocks[0]).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(parts.Blocks, block => block is ReportBlock.Heading { Text: "Other ways" });
    }

    [Fact]
    public void A_question_stands_before_the_steps()
    {
        ReportSection connecting = Scene.Report("sixteen panels, hard names").Sections.Single(section => section.Id == "connecting");
        Assert.Equal(Limits.Level.Ask, Assert.IsType<ReportBlock.Verdict>(connecting.Blocks[0]).Level);
        Assert.NotEmpty(connecting.Blocks.OfType<ReportBlock.Steps>());
    }

    [Fact]
    public void Without_a_place_it_says_that_no_year_is_reckoned()
    {
        ReportSection earnings = Scene.Report("one panel, no place, nothing optional").Sections.Single(section => section.Id == "earnings");
        Assert.Contains("names no place", Assert.IsType<ReportBlock.Paragraph>(earnings.Blocks[0]).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(earnings.Blocks, block => block is ReportBlock.Picture);
    }

    [Fact]
    public void With_a_place_the_months_add_up_to_the_year()
    {
        ReportBlock.Table months = Tables("four panels", "earnings").Single(table => table.Caption == "Month by month");
        double[] kWh = [.. months.Rows.Select(row => double.Parse(row.Cells[2], System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(13, kWh.Length);

        // Twelve figures to a tenth.
        Assert.Equal(kWh[..12].Sum(), kWh[12], 0.65);
    }

    [Fact]
    public void With_two_inputs_each_step_says_which_it_is_about()
    {
        ReportStep[] steps = [.. Scene.Report("two inputs").Sections.Single(section => section.Id == "connecting").Blocks.OfType<ReportBlock.Steps>().First().Items];
        Assert.All(steps[2..^1], step => Assert.Matches("left|right", step.Title));
    }

    [Fact]
    public void An_input_that_keeps_its_rules_is_told_from_the_stopped_one_and_waits_for_it()
    {
        ReportDocument report = Scene.Of(Scene.OneOfTwoStopped);
        ReportBlock[] Blocks(string id) => [.. report.Sections.Single(section => section.Id == id).Blocks];
        string[] Paragraphs(string id) => [.. Blocks(id).OfType<ReportBlock.Paragraph>().Select(paragraph => paragraph.Text)];
        const string Wait = "connect nothing before the STOP at right is cleared.";
        Assert.Contains($"This is not said of left. Even so, {Wait}", Paragraphs("verdict"));
        Assert.Contains(Paragraphs("connecting"), text => text.Contains(Wait, StringComparison.Ordinal));
        Assert.Contains(Wait, Paragraphs("wiring")[0], StringComparison.Ordinal);
        Assert.DoesNotContain("Not to be connected", Paragraphs("wiring")[0], StringComparison.Ordinal);
        Assert.EndsWith("Not to be connected.", Paragraphs("wiring")[1], StringComparison.Ordinal);

        string Meter(string input) => string.Join('|', Blocks("wiring").OfType<ReportBlock.Table>().Single(table => table.Caption.EndsWith(input, StringComparison.Ordinal)).Rows.Select(row => $"{row.Cells[0]} {row.Cells[2]}"));
        Assert.Contains("nothing holds it back", Meter("left"), StringComparison.Ordinal);
        Assert.DoesNotContain("do not connect", Meter("left"), StringComparison.Ordinal);
        Assert.Contains("Connected do not connect it", Meter("right"), StringComparison.Ordinal);

        ReportBlock.Table inShort = Blocks("verdict").OfType<ReportBlock.Table>().Single();
        Assert.Equal(["2*a-120: GO by itself", "4*a-120: STOP"], inShort.Rows.Take(2).Select(row => row.Cells[1]));
        Assert.StartsWith("Nothing: this wiring must not be built as it is.", Paragraphs("parts")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Feet_and_gauges_come_out_as_one_would_say_them()
    {
        // 30 ft are 9.144 m, 80 ft 24.384 m; a 10 AWG wire has 5.261 mm².
        ReportBlock.Table site = Scene.Of(Scene.FeetAndKinds).Sections.Single(section => section.Id == "given").Blocks.OfType<ReportBlock.Table>().Last();
        Assert.Equal(["9.14 m one way, 10 AWG", "24.4 m one way, 2.5 mm²"], site.Rows.TakeLast(2).Select(row => row.Cells[1]));
    }

    [Fact]
    public void What_was_assumed_of_several_panels_alike_is_told_once()
    {
        ReportItem[] assumed = [.. Scene.Of(Scene.FeetAndKinds).Sections.Single(section => section.Id == "assumed").Blocks.OfType<ReportBlock.Bullets>().Single().Items];
        Assert.Single(assumed, item => item.Lead.Contains("technology", StringComparison.Ordinal));
        Assert.Contains(assumed, item => item.Lead == "all panels (one to three) technology: crystalline silicon.");

        // Each 1 % of 22.9 V is 0.229 V, of 22.5 V 0.225 V; the third states its own.
        ReportItem tolerance = Assert.Single(assumed, item => item.Lead.Contains("tolerance", StringComparison.Ordinal));
        Assert.Equal("one and two tolerance: 3 %.", tolerance.Lead);
        Assert.Contains("0.225 to 0.229 V a panel", tolerance.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Square_millimetres_and_degrees_below_nought_are_written_in_one_way()
    {
        string[] texts = [.. Scene.Texts(Scene.Of(Scene.OneOfTwoStopped)), .. Scene.Texts(Scene.Of(Scene.FeetAndKinds))];
        Assert.Contains(texts, text => text.Contains("mm²", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("at −14 °C", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, text => text.Contains("mm2", StringComparison.Ordinal));
        Assert.All(texts, text => Assert.DoesNotMatch(@"(?<![\w.])-[0-9]", text));
    }

    private static IEnumerable<ReportBlock.Table> Tables(string name, string section) =>
        Scene.Report(name).Sections.Single(one => one.Id == section).Blocks.OfType<ReportBlock.Table>();

    [Fact]
    public void A_piece_has_one_rating_in_the_drawings_the_table_and_the_list()
    {
        ReportDocument report = Scene.Report("sixteen panels side by side");
        ReportBlock[] blocks = [.. report.Sections.SelectMany(section => section.Blocks)];

        // 1.25 × 4 × 6.72 A and 1.25 × 16 × 6.72 A, both over the usual 30 A.
        string[] expected = ["at least 134.4 A", "at least 33.6 A"];
        foreach (ReportBlock.Table table in blocks.OfType<ReportBlock.Table>())
        {
            string[] ratings = [.. table.Rows.Where(row => row.Cells.Any(cell => cell.StartsWith("branch connector", StringComparison.Ordinal)))
                .SelectMany(row => row.Cells).Where(cell => cell.StartsWith("at least", StringComparison.Ordinal)).Select(cell => cell.Split(',')[0]).Order(StringComparer.Ordinal)];
            Assert.True(ratings.Length == 0 || ratings.SequenceEqual(expected), string.Join("; ", ratings));
        }

        string[] drawings = [.. blocks.OfType<ReportBlock.Picture>().Select(block => block.Shown.ToSvg()).Where(svg => svg.Contains("branch connector", StringComparison.Ordinal))];
        Assert.Equal(2, drawings.Length);
        Assert.All(drawings, svg => Assert.All(expected, amps => Assert.Contains($"branch connector, 4 into 1, {amps}, 600 V DC", svg, StringComparison.Ordinal)));
        Assert.All(drawings, svg => Assert.DoesNotContain(" 30 A", svg, StringComparison.Ordinal));
    }

    [Fact]
    public void Drops_and_heat_of_a_piece_are_of_one()
    {
        ReportBlock.Table table = Scene.Report("four panels").Sections.SelectMany(section => section.Blocks).OfType<ReportBlock.Table>().Single(table => table.Caption.StartsWith("What each piece must bear", StringComparison.Ordinal));
        Assert.Equal(["drops, each", "heat a year, each"], table.Columns.Select(column => column.Title).TakeLast(2));
    }
}

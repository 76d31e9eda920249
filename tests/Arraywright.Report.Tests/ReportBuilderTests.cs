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

    private static IEnumerable<ReportBlock.Table> Tables(string name, string section) =>
        Scene.Report(name).Sections.Single(one => one.Id == section).Blocks.OfType<ReportBlock.Table>();
}

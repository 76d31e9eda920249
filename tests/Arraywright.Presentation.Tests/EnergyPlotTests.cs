using System.Xml.Linq;
using Arraywright.Energy;
using Arraywright.Limits;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class EnergyPlotTests
{
    private const string Taken = "#0072b2";
    private const string CutOff = "#e69f00";
    private const string Unused = "#f0e442";

    [Fact]
    public void A_months_bar_is_stacked_from_what_is_used_what_finds_no_room_and_what_is_cut_off()
    {
        SvgReading chart = new(YearPlot.Of(SampleEnergy.Year).ToSvg());
        Func<double, double> kWh = chart.Up().Single();
        (double From, double To)[] used = Areas(chart, Taken, kWh);
        (double From, double To)[] unused = Areas(chart, Unused, kWh);
        (double From, double To)[] cutOff = Areas(chart, CutOff, kWh);
        Assert.Equal((12, 12, 12), (used.Length, unused.Length, cutOff.Length));
        for (int month = 1; month <= 12; month++)
        {
            Near(0, 8 * month, used[month - 1]);
            Near(8 * month, 10 * month, unused[month - 1]);
            Near(10 * month, 11 * month, cutOff[month - 1]);
        }

        Assert.Contains("120", chart.Texts);
        Assert.Contains("into the inputs, 780.0 kWh a year", chart.Texts);
        Assert.Contains("of it unused, battery full, 156.0 kWh", chart.Texts);
        Assert.Contains("cut off by their limits, 78.0 kWh", chart.Texts);
        Assert.Contains("December 120.0 kWh", chart.Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(100.0, "In a year 624.0 kWh of what this wiring brings are used or stored: of 780.0 kWh into the inputs 156.0 kWh find no room, the battery being full or nearly so; 78.0 kWh (9.1 %) are cut off by their limits.\n")]
    [InlineData(0.0, "In a year 624.0 kWh of what this wiring brings are used or stored: of 780.0 kWh into the inputs 156.0 kWh find no room, the battery being full or nearly so and the plan stating no load; 78.0 kWh (9.1 %) are cut off by their limits.\n")]
    [InlineData(null, "In a year this wiring brings 780.0 kWh into the inputs; 78.0 kWh (9.1 %) are cut off by their limits.\n")]
    public void The_year_in_a_sentence_begins_with_what_is_used_where_a_full_battery_turns_much_away(double? loadKWh, string sentence)
    {
        // Months of 10 m kWh, 2 m of them without room, m cut off: 780, 156 and 78 kWh.
        StringWriter writer = new() { NewLine = "\n" };
        EnergyResult energy = SampleEnergy.Year.Energy;
        YearResult year = SampleEnergy.Year with { Energy = energy with { Battery = loadKWh is { } asked ? energy.Battery! with { LoadKWh = asked } : null } };
        new YearScreen(writer, TerminalStyle.Plain with { Width = 400 }).WriteShort(year);
        Assert.Equal(sentence, writer.ToString());
    }

    [Fact]
    public void Without_a_battery_nothing_is_unused()
    {
        SvgReading chart = new(YearPlot.Of(SampleEnergy.Year with { Energy = SampleEnergy.Year.Energy with { Battery = null } }).ToSvg());
        Near(0, 120, Areas(chart, Taken, chart.Up().Single())[^1]);
        Assert.DoesNotContain(Unused, chart.Root.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(chart.Texts, text => text.Contains("battery", StringComparison.Ordinal));
    }

    [Fact]
    public void A_days_hours_stand_at_their_hour_with_what_is_cut_off_above()
    {
        SvgReading chart = new(DayPlot.Of(SampleEnergy.Day).ToSvg());
        Func<double, double> watts = chart.Up().Single();
        Assert.Equal(4, Bars(chart, CutOff).Length);
        Assert.Equal([100, 200, 300, 300, 300, 300, 200, 100], Areas(chart, Taken, watts).Select(area => Math.Round(area.To)));
        Assert.All(Areas(chart, CutOff, watts), area => Near(300, 360, area));
        XElement first = Bars(chart, Taken)[0];
        Assert.Equal(8, chart.Across()(SvgReading.Number(first, "x")), 0.02);
        Assert.Equal(9, chart.Across()(SvgReading.Number(first, "x") + SvgReading.Number(first, "width")), 0.02);
        Assert.Contains("cut off by their limits, 240 Wh", chart.Texts);
        Assert.Contains("charge of the battery, 51 % to 74 %", chart.Texts);
        Assert.Contains("Most at a time: 300 W", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_cut_off_is_hatched_and_keeps_its_hatching_inside()
    {
        SvgReading chart = new(DayPlot.Of(SampleEnergy.Day).ToSvg());
        XElement area = Bars(chart, CutOff)[0];
        double left = SvgReading.Number(area, "x");
        double top = SvgReading.Number(area, "y");
        (double X, double Y)[] ends =
        [
            .. ((XElement)area.NextNode!).Attribute("d")!.Value.Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries)
                .Select(point => point.Split(',').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray())
                .Select(pair => (pair[0], pair[1])),
        ];
        Assert.True(ends.Length > 8);
        Assert.All(ends, end =>
        {
            Assert.InRange(end.X, left - 0.02, left + SvgReading.Number(area, "width") + 0.02);
            Assert.InRange(end.Y, top - 0.02, top + SvgReading.Number(area, "height") + 0.02);
        });
    }

    [Fact]
    public void A_day_without_sun_is_drawn_without_fault()
    {
        EnergyResult night = SampleEnergy.Day.Energy with { Battery = null, Moments = [.. Enumerable.Range(1, 24).Select(hour => default(EnergyMoment) with { EndsAtHour = hour })] };
        SvgReading chart = new(DayPlot.Of(SampleEnergy.Day with { Energy = night }).ToSvg());
        Assert.Empty(Bars(chart, Taken));
    }

    [Fact]
    public void A_wiring_that_is_stopped_says_so_above_its_energy()
    {
        Design stopped = SampleResults.Stop.Designs[0];
        Assert.StartsWith("STOP: do not connect it", new SvgReading(YearPlot.Of(SampleEnergy.Year with { Design = stopped }).ToSvg()).Texts[1], StringComparison.Ordinal);
        Assert.Equal(Level.Stop, (SampleEnergy.Day with { Design = stopped }).Verdict);
        Assert.Contains("STOP: do not connect it", DayPlot.Of(SampleEnergy.Day with { Design = stopped }).Description, StringComparison.Ordinal);
    }

    private static void Near(double from, double to, (double From, double To) area)
    {
        Assert.Equal(from, area.From, 0.6);
        Assert.Equal(to, area.To, 0.6);
    }

    private static (double From, double To)[] Areas(SvgReading chart, string fill, Func<double, double> value) =>
        [.. Bars(chart, fill).Select(bar => (value(SvgReading.Number(bar, "y") + SvgReading.Number(bar, "height")), value(SvgReading.Number(bar, "y"))))];

    /// <summary>Areas of a colour, without the sample below the chart, which is drawn last.</summary>
    private static XElement[] Bars(SvgReading chart, string fill) => [.. chart.Elements("rect").Where(bar => bar.Attribute("fill")!.Value == fill).SkipLast(1)];
}

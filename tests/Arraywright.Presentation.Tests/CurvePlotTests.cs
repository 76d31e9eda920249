using System.Globalization;
using System.Xml.Linq;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Presentation.Charts;

namespace Arraywright.Presentation.Tests;

public sealed class CurvePlotTests
{
    private const double RadiusPx = 6;

    private static readonly CurveResult Limited = SampleCurve.TwoHills with { Input = SampleGear.StoreA with { MaxPower = new Limit(200, Evidence.Nothing) } };

    [Fact]
    public void The_point_taken_stands_at_its_volts_amps_and_watts_by_the_figures_along_the_axes()
    {
        OperatingPoint held = new(38, 5, 190, LimitedBy.Current, 220, 220);
        SvgReading chart = Read(SampleCurve.TwoHills with { Assignment = SampleCurve.TwoHills.Assignment with { Operating = held } });
        XElement[] marks = [.. chart.Elements("ellipse").Where(mark => SvgReading.Number(mark, "rx") == RadiusPx).OrderBy(mark => SvgReading.Number(mark, "cy"))];
        Assert.Equal(2, marks.Length);
        Func<double, double>[] up = chart.Up();
        Assert.Equal(2, up.Length);
        Assert.All(marks, mark => Assert.Equal(38, chart.Across()(SvgReading.Number(mark, "cx")), 0.02));
        Assert.Equal(5, up[1](SvgReading.Number(marks[0], "cy")), 0.02);
        Assert.Equal(190, up[0](SvgReading.Number(marks[1], "cy")), 0.5);
        Assert.Contains("38.0 V, 5.00 A", chart.Texts);
        Assert.Contains("190 W", chart.Texts);
        Assert.Contains("what the input takes; held by the input's current limit", chart.Texts);
    }

    [Fact]
    public void The_curves_end_at_open_circuit_and_begin_at_short_circuit()
    {
        SvgReading chart = Read(SampleCurve.TwoHills);
        (double X, double Y)[][] curves = [.. chart.Elements("polyline").Where(line => line.Attribute("stroke-width")?.Value == "2.5").Select(SvgReading.Points)];
        Assert.Equal(2, curves.Length);
        Func<double, double>[] up = chart.Up();
        Assert.Equal(13.2, up[1](curves[0][0].Y), 0.02);
        Assert.Equal(44, chart.Across()(curves[0][^1].X), 0.02);
        Assert.Equal(0, up[0](curves[1][0].Y), 0.5);
        Assert.Equal(0, up[0](curves[1][^1].Y), 0.5);
    }

    [Fact]
    public void Each_limit_is_a_level_over_its_own_quantity_and_is_named()
    {
        SvgReading chart = Read(Limited);
        Func<double, double>[] up = chart.Up();
        (double X, double Y)[][] levels = [.. chart.Elements("polyline").Where(line => line.Attribute("stroke-dasharray") is not null).Select(SvgReading.Points).Where(points => points.Length == 2 && points[0].Y == points[1].Y && points[1].X - points[0].X > 100)];
        Assert.Contains(levels, level => Math.Abs(up[1](level[0].Y) - 10) < 0.02);
        Assert.Contains(levels, level => Math.Abs(up[0](level[0].Y) - 200) < 0.5);
        Assert.Contains("current limit 10 A", chart.Texts);
        Assert.Contains("power limit 200 W", chart.Texts);
    }

    [Fact]
    public void The_voltage_limit_and_the_window_stand_upright_at_their_volts_in_both_halves()
    {
        SvgReading chart = Read(SampleCurve.TwoHills);
        double[] uprights =
        [
            .. chart.Elements("polyline").Where(line => line.Attribute("stroke-width")?.Value == "1.5").Select(SvgReading.Points)
                .Where(points => points.Length == 2 && points[0].X == points[1].X && Math.Abs(points[0].Y - points[1].Y) > 50)
                .Select(points => Math.Round(chart.Across()(points[0].X), 1)).Order(),
        ];
        Assert.Equal([12, 12, 45, 45, 50, 50], uprights);
        Assert.Contains("voltage limit 50 V", chart.Texts);
        Assert.Contains("voltage window 12 V to 45 V", chart.Texts);
    }

    [Fact]
    public void The_power_limit_in_amps_is_the_same_watts_at_every_volt()
    {
        SvgReading chart = Read(Limited);
        (double X, double Y)[] bent = chart.Elements("polyline").Where(line => line.Attribute("stroke-dasharray") is not null).Select(SvgReading.Points).Single(points => points.Length > 20);
        Assert.All(bent, point => Assert.Equal(200, chart.Across()(point.X) * chart.Up()[1](point.Y), 2.0));
    }

    [Fact]
    public void A_limit_far_past_the_curve_is_named_below_instead_of_drawn()
    {
        DcInput wide = SampleGear.StoreA with { MaxVoltageV = 500, MaxCurrent = new Limit(100, Evidence.Nothing), MaxPower = new Limit(9000, Evidence.Nothing), TrackingMaxV = 480 };
        SvgReading chart = Read(SampleCurve.TwoHills with { Input = wide });
        Assert.Contains("voltage limit 500 V, far outside this picture", chart.Texts);
        Assert.Contains("current limit 100 A, far outside this picture", chart.Texts);
        Assert.Contains("power limit 9000 W, far outside this picture", chart.Texts);
        Assert.DoesNotContain(chart.Elements("rect"), area => area.Attribute("fill")!.Value == "#e4e4e4");
    }

    [Fact]
    public void Hills_that_are_not_taken_are_marked_in_both_halves_and_named()
    {
        SvgReading chart = Read(SampleCurve.TwoHills);
        Assert.Equal(3, chart.Elements("polygon").Count(mark => SvgReading.Points(mark).Length == 3));
        Assert.Contains("a hill of power", chart.Texts);
        Assert.Contains("lower hills", chart.Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(44.5)] // beside the label of 45 V, on its left
    [InlineData(51)] // on that of 50 V, on its right
    public void The_mark_of_the_coldest_stands_on_no_label(double coldV)
    {
        SvgReading chart = Read(SampleCurve.TwoHills with { Assignment = SampleCurve.TwoHills.Assignment with { VocColdV = coldV } });
        // The lower one is that of the key.
        (double X, double Y) mark = chart.Elements("polygon").Select(SvgReading.Points).Where(points => points.Length == 4).Select(Middle).MinBy(middle => middle.Y);
        foreach (XElement label in chart.Elements("text").Where(text => text.Value is "45 V" or "50 V"))
        {
            // Written upwards: its place is where it is turned about, "translate(x,y) rotate(-90)".
            (double x, double y) = Place(label);
            Assert.True(Math.Abs(x - mark.X) > RadiusPx || Math.Abs(y - mark.Y) > 50, $"{label.Value} at {x}, {y}, the mark at {mark}");
        }
    }

    private static (double X, double Y) Middle((double X, double Y)[] points) => (points.Average(point => point.X), points.Average(point => point.Y));

    private static (double X, double Y) Place(XElement text)
    {
        string[] parts = text.Attribute("transform")!.Value.Split('(', ',', ')');
        return (double.Parse(parts[1], CultureInfo.InvariantCulture), double.Parse(parts[2], CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_wiring_that_is_stopped_says_so_first_and_marks_nothing_taken()
    {
        Finding tooHigh = new("cold_voltage_label", "Open-circuit voltage at -14 °C", Level.Stop, 74.9, 50, "V", "working", "source");
        SvgReading chart = Read(SampleCurve.TwoHills with { Assignment = SampleCurve.TwoHills.Assignment with { Findings = [tooHigh] } });
        Assert.Empty(chart.Elements("ellipse"));
        Assert.StartsWith("STOP: do not connect it", chart.Texts[1], StringComparison.Ordinal);
        Assert.Contains("STOP: do not connect it to store-a. Open-circuit voltage at -14 °C: 74.9 V, at most 50 V.", chart.Description, StringComparison.Ordinal);
        Assert.Contains("Nothing is taken: do not connect it.", chart.Texts);
    }

    [Fact]
    public void An_array_in_the_dark_is_drawn_without_fault()
    {
        CurveResult dark = SampleCurve.TwoHills with
        {
            VoltageV = [0, 0],
            CurrentA = [0, 0],
            PowerW = [0, 0],
            MaximumPower = default,
            LocalMaxima = [],
            Assignment = SampleCurve.TwoHills.Assignment with { Operating = new OperatingPoint(0, 0, 0, LimitedBy.Off, 0, 0) },
        };
        Assert.Contains("Nothing is taken: the input does not start.", Read(dark).Texts);
    }

    private static SvgReading Read(CurveResult result) => new(CurvePlot.Of(result).ToSvg());
}

using Arraywright.Electrical;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;
using Arraywright.Testing;

namespace Arraywright.Presentation.Tests;

public sealed class CurveScreenTests
{
    [Fact]
    public void The_charts_are_the_ones_last_read_in_review() => Golden.Matches("curve.txt", Page(SampleCurve.TwoHills));

    [Fact]
    public void The_point_taken_is_marked_once_in_each_chart() =>
        Assert.Equal(2, Page(SampleCurve.TwoHills).Split('\n').Count(line => line.Contains('│', StringComparison.Ordinal) && line.Contains('O', StringComparison.Ordinal)));

    [Fact]
    public void An_input_that_does_not_start_is_marked_nowhere_and_said_so()
    {
        Assignment off = SampleCurve.TwoHills.Assignment with { Operating = new OperatingPoint(0, 0, 0, LimitedBy.Off, 0, 0) };
        string page = Page(SampleCurve.TwoHills with { Assignment = off });
        Assert.DoesNotContain(page.Split('\n'), line => line.Contains('│', StringComparison.Ordinal) && line.Contains('O', StringComparison.Ordinal));
        Assert.Contains("the input does not start", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wiring_that_is_stopped_is_said_to_be_so_first_and_nothing_is_taken()
    {
        Finding tooHigh = new("cold_voltage_label", "Open-circuit voltage at -14 °C", Level.Stop, 74.9, 50, "V", "working", "source") { MarginPercent = -49.8 };
        CurveResult stopped = SampleCurve.TwoHills with { Assignment = SampleCurve.TwoHills.Assignment with { Findings = [tooHigh] } };
        string page = Page(stopped);
        Assert.Contains($"STOP: do not connect it to {stopped.Assignment.Input}. Open-circuit voltage at -14 °C: 74.9 V, at most 50 V.", page.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("what the input takes", page, StringComparison.Ordinal);
        StringWriter line = new() { NewLine = "\n" };
        new CurveScreen(line, TerminalStyle.Plain).WriteShort(stopped);
        Assert.StartsWith("STOP:", line.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("takes", line.ToString(), StringComparison.Ordinal);
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
        Assert.Contains("the input does not start", Page(dark), StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", Page(dark), StringComparison.Ordinal);
    }

    private static string Page(CurveResult result)
    {
        StringWriter writer = new() { NewLine = "\n" };
        new CurveScreen(writer, TerminalStyle.Plain).Write(result);
        return writer.ToString();
    }
}

using Arraywright.Electrical;
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

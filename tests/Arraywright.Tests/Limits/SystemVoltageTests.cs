using Arraywright.Gear;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>A label's system voltage bounds its insulation (IEC 61730); 120 V is extra-low voltage (IEC 61140).</summary>
public sealed class SystemVoltageTests
{
    /// <summary>55 V at -15 °C: 50 × (1 + 0.0025 × 40).</summary>
    private static readonly Panel Tall = Shed with { Name = "tall", OpenCircuitV = 50, OpenCircuitPerK = Sourced.Given(-0.0025), MaxSystemVoltageV = 110 };

    [Fact]
    public void At_the_label_figure_is_allowed()
    {
        Finding finding = Row(2, "tall").On(Input(500), Tall).Coldest(-15).Says("system_voltage");
        Assert.Equal((Level.Go, 110.0), (finding.Level, finding.Limit));
        Assert.Equal(110, finding.Value, 1e-9);
    }

    [Fact]
    public void Over_the_label_figure_stops_even_where_the_input_bears_more() =>
        Assert.Equal(Level.Stop, Row(3, "tall").On(Input(500), Tall).Coldest(-15).Says("system_voltage").Level);

    [Fact]
    public void The_lowest_figure_in_the_string_counts()
    {
        // 55 + 22.9 × (1 + 0.0029 × 40) = 55 + 25.5564 = 80.5564 V, against 80 V of one label and 600 V of the other.
        Finding finding = Row(One("tall"), One("shed-120")).On(Input(500), Tall with { MaxSystemVoltageV = 80 }, Shed).Coldest(-15).Says("system_voltage");
        Assert.Equal(Level.Stop, finding.Level);
        Assert.Equal(80.5564, finding.Value, 1e-9);
    }

    [Fact]
    public void A_worse_string_is_the_one_shown()
    {
        // 55 V against 600 V leaves much; 25.6 V against 26 V little.
        Finding finding = Side(One("tall"), One("shed-120")).On(Input(500), Tall with { MaxSystemVoltageV = 600 }, Shed with { MaxSystemVoltageV = 26 }).Coldest(-15).Says("system_voltage");
        Assert.Equal(26, finding.Limit);
    }

    [Theory]
    [InlineData(2, Level.Go)]
    [InlineData(3, Level.Ask)]
    public void A_silent_label_is_asked_about_above_120_V(int inSeries, Level level)
    {
        // 110 V and 165 V.
        Finding finding = Row(inSeries, "tall").On(Input(500), Tall with { MaxSystemVoltageV = null }).Coldest(-15).Says("system_voltage");
        Assert.Equal(level, finding.Level);
        Assert.Null(finding.Limit);
        Assert.Contains("tall gives no system voltage", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_string_to_ask_about_goes_before_one_with_less_room()
    {
        // 165 V with no label figure, beside 25.6 V against 26 V.
        Finding finding = Side(Row(3, "tall"), One("shed-120")).On(Input(500), Tall with { MaxSystemVoltageV = null }, Shed with { MaxSystemVoltageV = 26 }).Coldest(-15).Says("system_voltage");
        Assert.Equal(Level.Ask, finding.Level);
        Assert.Equal(165, finding.Value, 1e-9);
    }
}

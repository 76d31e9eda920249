using Arraywright.Electrical;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>Start and tracking: too little voltage is no danger, it earns nothing.</summary>
public sealed class VoltageWindowTests
{
    /// <summary>Open circuit 0.3 %/K down from 25 °C and 10 % down when dim: 2 × 22.9 V is 39.6 V at 1000 W/m² and 70 °C.</summary>
    private static double OpenCircuit(Conditions conditions) =>
        22.9 * (1 - (0.003 * (conditions.CellC - 25))) * (conditions.IrradianceWPerM2 < 1000 ? 0.9 : 1);

    private static RuleContext Start(double startV) => Row(2, "shed-120").On(Input(60) with { StartVoltageV = startV })
        .Circuit(circuit => circuit with { OpenCircuitV = (_, conditions) => OpenCircuit(conditions) });

    [Fact]
    public void Hot_and_dim_is_a_fifth_of_the_suns_rise_above_the_air()
    {
        // 35 °C air, 70 °C in full sun: 35 + 35 × 200/1000 = 42 °C; 45.8 × (1 − 0.003 × 17) × 0.9 = 39.11778 V.
        Finding finding = Start(30).Says("start_voltage");
        Assert.Equal(39.11778, finding.Value, 1e-9);
        Assert.StartsWith("200 W/m², cell 42 °C: 39.1 V; 1000 W/m², cell 70 °C: 39.6 V", finding.Working, StringComparison.Ordinal);
        Assert.Equal((39.11778 - 30) / 30 * 100, finding.MarginPercent!.Value, 1e-9);
        Assert.Null(finding.Note);
    }

    [Theory]
    [InlineData(39.11778, Level.Go, null)]
    [InlineData(39.2, Level.Go, "starts late")]
    [InlineData(39.7, Level.Go, "even in full sun")]
    [InlineData(45.8, Level.Go, "even in full sun")]
    [InlineData(45.9, Level.Stop, "will not start")]
    public void It_stops_only_when_it_never_starts(double startV, Level level, string? says)
    {
        Finding finding = Start(startV).Says("start_voltage");
        Assert.Equal(level, finding.Level);
        Assert.True(says is null ? finding.Note is null : finding.Note!.Contains(says, StringComparison.Ordinal), finding.Note);
    }

    [Fact]
    public void An_input_without_a_stated_start_says_nothing_of_it() =>
        Assert.Empty(One("shed-120").On(Input(60)).All("start_voltage"));

    [Fact]
    public void An_input_without_a_stated_window_says_nothing_of_it() =>
        Assert.Empty(One("shed-120").On(Input(60)).All("tracking_window"));

    /// <summary>Best voltage 30 V hot, 36 V dim, 42 V cold; the input loses 12 W of 100 W wherever it is held.</summary>
    private static RuleContext Track(double? minV, double? maxV, double takesW = 88) => Row(2, "shed-120")
        .On(Input(60) with { TrackingMinV = minV, TrackingMaxV = maxV })
        .Circuit(circuit => circuit with
        {
            MaximumPowerPoint = (_, conditions) => (conditions.IrradianceWPerM2 < 1000 ? 36 : conditions.CellC > 25 ? 30 : 42, 5, 100),
            Operating = _ => Held(takesW, 100, LimitedBy.Voltage),
        });

    [Theory]
    [InlineData(30.0, 42.0, null, 30.0, 0.0)]
    [InlineData(12.0, 45.0, null, 45.0, 6.6666667)]
    [InlineData(33.0, 50.0, "When hot, the best voltage lies below the window: 12 W of 100 W are lost then.", 33.0, -9.0909091)]
    [InlineData(12.0, 40.0, "When cold, the best voltage lies above the window: 12 W of 100 W are lost then.", 40.0, -5.0)]
    [InlineData(null, 40.0, "When cold, the best voltage lies above the window: 12 W of 100 W are lost then.", 40.0, -5.0)]
    public void The_extreme_with_the_least_room_is_shown_with_what_it_loses(double? minV, double? maxV, string? note, double limitV, double marginPercent)
    {
        Finding finding = Track(minV, maxV).Says("tracking_window");
        Assert.Equal((Level.Go, limitV), (finding.Level, finding.Limit));
        Assert.Equal(marginPercent, finding.MarginPercent!.Value, 1e-6);
        if (note is not null)
        {
            Assert.Equal(note, finding.Note);
        }
    }

    [Fact]
    public void Without_an_upper_end_the_highest_voltage_is_the_upper_end() =>
        Assert.Contains("window 12 to 60 V", Track(12, null).Says("tracking_window").Working, StringComparison.Ordinal);

    [Fact]
    public void An_input_that_takes_nothing_at_any_extreme_stops() =>
        Assert.Equal(Level.Stop, Track(50, 55, takesW: 0).Says("tracking_window").Level);

    /// <summary>What a converter does above its tracking window, makers tell or do not.</summary>
    [Fact]
    public void A_limit_that_would_hold_the_array_above_the_window_is_asked_about()
    {
        RuleContext context = Track(12, 45).Circuit(circuit => circuit with
        {
            Operating = conditions => conditions.CellC > 25 ? Held(88, 100, LimitedBy.Current) : Held(0, 100, LimitedBy.AboveWindow),
        });
        Finding finding = context.Says("tracking_window");
        Assert.Equal(Level.Ask, finding.Level);
        Assert.Contains("rise above 45 V", finding.Note, StringComparison.Ordinal);
        Assert.Contains("rise above 45 V, the top of its working range", MakerLetter.For(context, "2*shed-120", [finding]), StringComparison.Ordinal);
        Assert.Contains("mpp_voltage: 12..", MakerLetter.WhereTheAnswerGoes(context, [finding]), StringComparison.Ordinal);
    }

    [Fact]
    public void Resting_above_the_window_but_under_the_highest_voltage_is_said_to_be_harmless()
    {
        // 50.98 V cold at rest, window to 45 V, highest 60 V.
        Finding finding = Track(12, 45).Says("tracking_window");
        Assert.Contains("rests at 51.0 V, above the window but within the highest voltage", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_lowest_string_counts_for_starting()
    {
        // One panel, 22.9 × 0.949 × 0.9 = 19.55889 V hot and dim, beside two.
        RuleContext context = Side(Row(2, "shed-120"), One("shed-120")).On(Input(60) with { StartVoltageV = 30 })
            .Circuit(circuit => circuit with { OpenCircuitV = (_, conditions) => OpenCircuit(conditions) });
        Finding finding = context.Says("start_voltage");
        Assert.Equal(19.55889, finding.Value, 1e-9);
        Assert.Equal(Level.Go, finding.Level);
    }
}

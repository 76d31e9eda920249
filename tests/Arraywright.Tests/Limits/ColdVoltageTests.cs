using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Rules;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>NEC 690.7(A): Voc·(1 + β·(T − 25)) with the label's coefficient, or the factor of Table 690.7(A).</summary>
public sealed class ColdVoltageTests
{
    private static readonly Panel Round = Shed with { Name = "round", OpenCircuitV = 20, OpenCircuitPerK = Sourced.Given(-0.0025) };

    [Fact]
    public void Two_in_series_by_the_label_are_worked_out_as_a_person_would()
    {
        // 2 × 22.9 × (1 + 0.0029 × 39) = 45.8 × 1.1131 = 50.97998 V.
        Finding finding = Row(2, "shed-120").On(Input(60)).Says("cold_voltage_label");
        Assert.Equal("2 × 22.9 V × (1 + 0.0029 × 39 K) = 51.0 V", finding.Working);
        Assert.Equal(50.97998, finding.Value, 1e-9);
        Assert.Equal(Level.Go, finding.Level);
        Assert.Equal((60 - 50.97998) / 60 * 100, finding.MarginPercent!.Value, 1e-9);
    }

    [Theory]
    [InlineData(44, Level.Go)]
    [InlineData(43.999, Level.Stop)]
    public void At_the_limit_is_allowed_and_a_thousandth_over_stops(double maxV, Level level)
    {
        // 2 × 20 × (1 + 0.0025 × 40) = 40 × 1.1 = 44 V at -15 °C.
        Assert.Equal(level, Row(2, "round").On(Input(maxV), Round).Coldest(-15).Says("cold_voltage_label").Level);
    }

    [Theory]
    [InlineData(2, 50, "Put fewer panels in series.")] // 2 × 22.9 V × (1 + 0.0029 × 39 K) = 51.0 V
    [InlineData(1, 25, "One panel alone is too much")] // 22.9 V × (1 + 0.0029 × 39 K) = 25.5 V
    public void What_stops_says_what_would_help(int inSeries, double maxV, string remedy)
    {
        Finding stop = Row(inSeries, "shed-120").On(Input(maxV)).Says("cold_voltage_label");
        Assert.Equal(Level.Stop, stop.Level);
        Assert.Contains(remedy, stop.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_just_over_the_limit_never_reads_as_the_limit()
    {
        // 2 × 20.009 × 1.1 = 44.0198 V over 44 V: one decimal would read 44.0.
        Panel odd = Round with { OpenCircuitV = 20.009 };
        Finding finding = Row(2, "round").On(Input(44), odd).Coldest(-15).Says("cold_voltage_label");
        Assert.EndsWith("= 44.02 V", finding.Working, StringComparison.Ordinal);
        Assert.Equal(Level.Stop, finding.Level);
    }

    [Fact]
    public void A_tolerance_on_the_label_is_added_in_full()
    {
        // 50.97998 × 1.03 = 52.5093794 V.
        Panel tolerant = Shed with { ToleranceFraction = Sourced.Given(0.03) };
        Finding finding = Row(2, "shed-120").On(Input(52), tolerant).Says("cold_voltage_label");
        Assert.Equal("2 × 22.9 V × (1 + 0.0029 × 39 K) × 1.03 = 52.5 V (label tolerance added)", finding.Working);
        Assert.Equal(52.5093794, finding.Value, 1e-9);
        Assert.Equal(Level.Stop, finding.Level);
    }

    [Theory]
    [InlineData(50, Level.Stop)]
    [InlineData(52, Level.Ask)]
    [InlineData(53, Level.Go)]
    public void A_tolerance_that_the_label_leaves_out_is_no_reason_to_stop_but_to_ask(double maxV, Level level)
    {
        // 50.98 V without, 52.51 V with the assumed 3 %.
        Panel silent = Shed with { ToleranceFraction = Sourced.Assumed(0.03, "typical") };
        Finding finding = Row(2, "shed-120").On(Input(maxV), silent).Says("cold_voltage_label");
        Assert.Equal(level, finding.Level);
        Assert.Equal(50.97998, finding.Value, 1e-9);
    }

    [Theory]
    [InlineData(53.2, Level.Go)]
    [InlineData(53.1, Level.Stop)]
    public void Without_a_coefficient_on_the_label_the_table_governs(double maxV, Level level)
    {
        // -14 °C: 1.16; 2 × 22.9 × 1.16 = 53.128 V.
        RuleContext context = Row(2, "shed-120").On(Input(maxV), Shed.WithoutCoefficient());
        Finding finding = context.Says("cold_voltage_table");
        Assert.Equal(level, finding.Level);
        Assert.StartsWith("2 × 22.9 V × 1.16 = 53.1", finding.Working, StringComparison.Ordinal);
        Assert.Empty(context.All("cold_voltage_label"));
    }

    [Fact]
    public void The_table_beside_a_passing_coefficient_is_shown_and_does_not_stop()
    {
        // Label 50.98 V under 52 V, table 53.128 V over it.
        Finding finding = Row(2, "shed-120").On(Input(52)).Says("cold_voltage_table");
        Assert.Equal(Level.Go, finding.Level);
        Assert.Contains("table would give 53.1 V, over the limit", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_model_may_raise_the_figure()
    {
        RuleContext context = Row(2, "shed-120").On(Input(51.5))
            .Circuit(circuit => circuit with { OpenCircuitV = (_, conditions) => conditions == new Conditions(1000, -14) ? 26 : 0 });
        Assert.Equal(Level.Go, context.Says("cold_voltage_label").Level);
        Assert.Equal(Level.Stop, context.Says("cold_voltage_model").Level);
        Assert.Equal("2 × 26.0 V = 52.0 V", context.Says("cold_voltage_model").Working);
        Assert.Equal(52, ColdVoltage.Of(context), 1e-12);
    }

    [Fact]
    public void The_model_never_lowers_the_figure()
    {
        RuleContext context = Row(2, "shed-120").On(Input(50));
        Assert.Equal(45.8, context.Says("cold_voltage_model").Value, 1e-12);
        Assert.Equal(Level.Stop, context.Says("cold_voltage_label").Level);
        Assert.Equal(50.97998, ColdVoltage.Of(context), 1e-9);
    }

    [Fact]
    public void A_model_that_gives_no_number_stops()
    {
        RuleContext context = Row(2, "shed-120").On(Input(60)).Circuit(circuit => circuit with { OpenCircuitV = (_, _) => double.NaN });
        Assert.Equal(Level.Stop, context.Says("cold_voltage_model").Level);
    }

    [Fact]
    public void The_highest_string_counts_alone()
    {
        // One of 3 × 20 beside one of 2 × 20: 60 × 1.1 = 66 V at -15 °C, whatever the two would settle at.
        Finding finding = Side(Row(2, "round"), Row(3, "round")).On(Input(65), Round).Coldest(-15).Says("cold_voltage_label");
        Assert.Equal(66, finding.Value, 1e-9);
        Assert.Equal(Level.Stop, finding.Level);
    }

    [Fact]
    public void A_block_of_panels_side_by_side_counts_with_its_highest()
    {
        // (20 | 22) + 20 at -15 °C: (22 + 20) × 1.1 = 46.2 V.
        Panel higher = Round with { Name = "higher", OpenCircuitV = 22 };
        Finding finding = Row(Side(One("round"), One("higher")), One("round")).On(Input(60), Round, higher).Coldest(-15).Says("cold_voltage_label");
        Assert.Equal("22 V × (1 + 0.0025 × 40 K) + 20 V × (1 + 0.0025 × 40 K) = 46.2 V", finding.Working);
    }

    [Fact]
    public void In_a_mixed_string_each_panel_goes_by_its_own_way()
    {
        // At -15 °C: 20 × 1.1 + 22.9 × 1.16 = 22 + 26.564 = 48.564 V.
        Finding finding = Row(One("round"), One("shed-120")).On(Input(60), Round, Shed.WithoutCoefficient()).Coldest(-15).Says("cold_voltage_label");
        Assert.Equal(48.564, finding.Value, 1e-9);
    }

    [Theory]
    [InlineData(-20.0, Level.Ask)]
    [InlineData(-15.0, Level.Go)]
    [InlineData(null, Level.Go)]
    public void A_climate_colder_than_the_users_own_coldest_asks_where_it_matters(double? climateC, Level level)
    {
        // Own -15 °C: 44 V. Climate -20 °C: 40 × (1 + 0.0025 × 45) = 44.5 V, over 44.2 V.
        Finding finding = Row(2, "round").On(Input(44.2), Round).Coldest(-15, climateC).Says("cold_voltage_label");
        Assert.Equal(level, finding.Level);
        Assert.Equal(level == Level.Ask, finding.Note?.Contains("climate here suggests −20 °C: it could be 44.5 V", StringComparison.Ordinal) ?? false);
    }

    [Fact]
    public void Thin_film_without_a_coefficient_takes_the_largest_factor_and_says_so()
    {
        // 22.9 × 1.25 = 28.625 V at any cold.
        Panel film = Shed.WithoutCoefficient() with { Technology = Sourced.Given(Technology.Cigs) };
        Finding finding = One("shed-120").On(Input(60), film).Says("cold_voltage_table");
        Assert.Equal(28.625, finding.Value, 1e-9);
        Assert.Contains("no table for thin film", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Below_the_table_its_slope_is_carried_on()
    {
        // -45 °C: 1 + 0.0040 × 70 = 1.28; 22.9 × 1.28 = 29.312 V.
        Finding finding = One("shed-120").On(Input(60), Shed.WithoutCoefficient()).Coldest(-45).Says("cold_voltage_table");
        Assert.Equal(29.312, finding.Value, 1e-9);
        Assert.Contains("Colder than the code's table", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warm_coldest_lowers_nothing()
    {
        Assert.Equal(22.9, One("shed-120").On(Input(60)).Coldest(35).Says("cold_voltage_label").Value, 1e-12);
        Assert.Equal(22.9 * 1.02, One("shed-120").On(Input(60), Shed.WithoutCoefficient()).Coldest(35).Says("cold_voltage_table").Value, 1e-12);
    }

    [Fact]
    public void An_assumed_coldest_is_said_to_be_assumed()
    {
        RuleContext context = One("shed-120").On(Input(60));
        context = context with { Temperatures = context.Temperatures with { ColdestCellC = Sourced.Assumed(-10.0, "no place is stated") } };
        Assert.Equal("The coldest is assumed: no place is stated.", context.Says("cold_voltage_label").Note);
    }

    [Fact]
    public void What_the_search_adds_up_a_panel_is_what_the_rule_says_of_a_string()
    {
        RuleContext context = Row(One("round"), One("shed-120"), One("round")).On(Input(90), Round, Shed.WithoutCoefficient() with { ToleranceFraction = Sourced.Given(0.03) });
        double codeV = context.Wiring.Panels.Sum(name => ColdVoltage.PerPanel(context.Stock[name].Panel, -14, context.Physics).CodeV);
        double modelV = context.Wiring.Panels.Sum(name => ColdVoltage.PerPanel(context.Stock[name].Panel, -14, context.Physics).ModelV);
        Assert.Equal(context.Says("cold_voltage_label").Value, codeV, 1e-12);
        Assert.Equal(context.Says("cold_voltage_model").Value, modelV, 1e-12);
    }

    [Theory]
    [InlineData(-10, 1.14)]
    [InlineData(-10.5, 1.16)]
    [InlineData(0, 1.10)]
    [InlineData(-0.1, 1.12)]
    public void A_fraction_of_a_degree_belongs_to_the_colder_band(double coldestC, double factor) =>
        Assert.Equal(factor, ColdFactors.For(Technology.Multicrystalline, coldestC));
}

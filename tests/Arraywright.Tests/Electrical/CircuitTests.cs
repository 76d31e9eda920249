using Arraywright.Electrical;
using static Arraywright.Electrical.Wiring;
using Single = Arraywright.Electrical.Wiring.Single;

namespace Arraywright.Tests.Electrical;

public sealed class CircuitTests
{
    /// <summary>The De Soto fit of a 54-cell, 200 W handbook module: 32.9 V, 8.21 A, 26.3 V, 7.61 A (Villalva 2009; fit recomputed with scipy).</summary>
    private static readonly DiodeParameters Handbook = new(8.2271404, 4.372225e-10, 0.3351005, 1 / 160.50792, 1.3921337);

    private static readonly Wiring Pair = InSeries([new Single("a"), new Single("b")]);

    private static PanelAtWork Panel(double sun = 1, int groups = 3) => new(
        [.. Enumerable.Repeat(Handbook.OneOf(groups) with { LightCurrentA = Handbook.LightCurrentA * sun }, groups)],
        BypassDiode.Schottky(8.21));

    private static Circuit Circuit(Wiring wiring, Func<string, PanelAtWork> panels) =>
        new(CircuitTree.Of(wiring, panels, WireResistances.None));

    [Fact]
    public void One_panel_has_the_open_and_short_circuit_and_maximum_power_of_its_label()
    {
        Circuit one = Circuit(new Single("a"), _ => Panel());

        // Parameters are printed to 7 digits, so the label comes back to about 1e-6.
        Assert.Equal(32.9, one.OpenCircuitV, 32.9e-5);
        Assert.Equal(8.21, one.ShortCircuitA, 8.21e-5);
        Assert.Equal(200.143, one.MaximumPower().PowerW, 200e-5);
        Assert.Equal(26.3, one.MaximumPower().VoltageV, 26.3e-3);
    }

    [Fact]
    public void The_current_of_a_panel_satisfies_the_diode_equation()
    {
        Circuit one = Circuit(new Single("a"), _ => Panel(groups: 1));
        for (double v = 0.5; v < 33; v += 0.5)
        {
            double i = one.CurrentAt(v);
            double cellsA = i + 1e-6; // the bypass diode, across the whole, takes its reverse current
            double junctionV = v + (cellsA * Handbook.SeriesOhm);
            double right = Handbook.LightCurrentA
                - (Handbook.SaturationCurrentA * (Math.Exp(junctionV / Handbook.IdealityV) - 1))
                - (junctionV * Handbook.ShuntSiemens);
            Assert.Equal(right, cellsA, 1e-9);
        }
    }

    [Fact]
    public void Equal_panels_double_volts_in_series_and_amps_in_parallel()
    {
        Circuit one = Circuit(new Single("a"), _ => Panel());
        Circuit series = Circuit(Pair, _ => Panel());
        Circuit parallel = Circuit(InParallel([new Single("a"), new Single("b")]), _ => Panel());

        Assert.Equal(2 * one.OpenCircuitV, series.OpenCircuitV, 1e-9);
        Assert.Equal(2 * one.CurrentAt(25), parallel.CurrentAt(25), 1e-9);
        Assert.Equal(one.CurrentAt(25), series.CurrentAt(50), 1e-9);
    }

    [Fact]
    public void A_dark_panel_in_a_string_is_bypassed_and_costs_its_diodes_drop()
    {
        Circuit string2 = Circuit(Pair, name => Panel(sun: name == "a" ? 1 : 0));
        Circuit alone = Circuit(new Single("a"), _ => Panel());

        // At the lit panel's maximum the dark one carries 7.6 A through three diodes of 0.5 V at 8.21 A: 0.031·ln(7.6/1e-6) V each.
        double dropV = 3 * (0.5 / Math.Log((8.21 / 1e-6) + 1)) * Math.Log((7.61 / 1e-6) + 1);
        CurvePoint best = string2.MaximumPower();
        Assert.Equal(alone.MaximumPower().PowerW - (dropV * 7.61), best.PowerW, 0.05);
    }

    [Fact]
    public void A_half_shaded_panel_makes_two_hills_and_a_simple_tracker_stops_at_the_first()
    {
        Circuit string2 = Circuit(Pair, name => Panel(sun: name == "a" ? 1 : 0.3));
        OperatingPoint taken = string2.TakenBy(InputWindow.Open);

        Assert.Equal(2, string2.LocalMaxima().Length);
        Assert.Equal(string2.LocalMaxima()[^1].PowerW, taken.FirstHillPowerW, 1e-6);
        Assert.Equal(string2.LocalMaxima().Max(top => top.PowerW), taken.PowerW, 1e-6);
        Assert.True(taken.FirstHillPowerW < taken.PowerW);
    }

    [Fact]
    public void A_current_limit_holds_the_input_on_the_high_voltage_side()
    {
        Circuit one = Circuit(new Single("a"), _ => Panel());
        OperatingPoint taken = one.TakenBy(InputWindow.Open with { MaxA = 5 });

        Assert.Equal(LimitedBy.Current, taken.LimitedBy);
        Assert.Equal(5, taken.CurrentA, 1e-9);
        Assert.True(taken.VoltageV > one.MaximumPower().VoltageV);
        Assert.Equal(5, one.CurrentAt(taken.VoltageV), 1e-9);
        Assert.Equal(one.MaximumPower().PowerW, taken.UnlimitedPowerW, 1e-9);
    }

    [Fact]
    public void A_power_limit_holds_the_input_on_the_high_voltage_side()
    {
        Circuit one = Circuit(new Single("a"), _ => Panel());
        OperatingPoint taken = one.TakenBy(InputWindow.Open with { MaxW = 150 });

        Assert.Equal(LimitedBy.Power, taken.LimitedBy);
        Assert.Equal(150, taken.PowerW, 1e-9);
        Assert.Equal(150, taken.VoltageV * one.CurrentAt(taken.VoltageV), 1e-6);
        Assert.True(taken.VoltageV > one.MaximumPower().VoltageV);
    }

    [Theory]
    [InlineData(0, 20, 0, LimitedBy.Voltage)] // the window ends below the maximum power voltage
    [InlineData(30, 60, 0, LimitedBy.Voltage)] // it begins above
    [InlineData(12, 60, 0, LimitedBy.None)]
    [InlineData(12, 60, 40, LimitedBy.Off)] // the array never reaches the start voltage
    [InlineData(40, 60, 0, LimitedBy.Off)] // nor this window
    public void The_voltage_window_holds_or_stops_the_input(double minV, double maxV, double startV, LimitedBy expected)
    {
        OperatingPoint taken = Circuit(new Single("a"), _ => Panel()).TakenBy(new InputWindow(minV, maxV, startV, double.PositiveInfinity, double.PositiveInfinity));
        Assert.Equal(expected, taken.LimitedBy);
        Assert.Equal(expected == LimitedBy.Off, taken.PowerW == 0);
    }

    [Fact]
    public void In_the_dark_there_is_no_voltage_and_no_power()
    {
        Circuit dark = Circuit(Pair, _ => Panel(sun: 0));
        Assert.Equal(0, dark.OpenCircuitV, 1e-6);
        Assert.Empty(dark.LocalMaxima());
        Assert.Equal(LimitedBy.Off, dark.TakenBy(InputWindow.Open).LimitedBy);
    }

    [Fact]
    public void Cable_resistance_takes_current_squared_times_ohms_at_the_same_cell_voltage()
    {
        Circuit bare = Circuit(new Single("a"), _ => Panel());
        Circuit wired = new(CircuitTree.Of(new Single("a"), _ => Panel(), new WireResistances(0.2, 0.1, 0.05)));

        // One panel, alone: run 0.2, string 0.1, contacts at the panel and at the input 0.05 each: 0.4 Ω.
        double i = bare.CurrentAt(25);
        Assert.Equal(i, wired.CurrentAt(25 - (0.4 * i)), 1e-9);
    }

    [Fact]
    public void A_sweep_agrees_with_single_solutions()
    {
        Circuit array = new(Arraywright.Testing.RandomArrays.Tree(new Random(5), 9));
        double[] currentsA = new double[501];
        array.Sweep(currentsA);
        for (int i = 0; i < currentsA.Length; i++)
        {
            Assert.Equal(array.CurrentAt(array.OpenCircuitV * i / 500), currentsA[i], 1e-8);
        }
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        Circuit array = new(Arraywright.Testing.RandomArrays.Tree(new Random(5), 8));
        InputWindow window = new(5, 200, 5, 6, 300);
        array.TakenBy(window);
        long before = GC.GetAllocatedBytesForCurrentThread();
        array.TakenBy(window);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void An_updated_circuit_is_the_same_as_a_new_one()
    {
        static PanelAtWork OfKind(int kind, double sun) => Panel(sun) with { Kind = kind };
        Circuit updated = new(CircuitTree.Of(Pair, name => OfKind(name == "a" ? 0 : 1, 1), WireResistances.None));
        Circuit fresh = new(CircuitTree.Of(Pair, name => OfKind(name == "a" ? 0 : 1, name == "a" ? 0.9 : 0.4), WireResistances.None));
        updated.Update([.. OfKind(0, 0.9).Groups, .. OfKind(1, 0.4).Groups], stride: 3);

        Assert.Equal(fresh.OpenCircuitV, updated.OpenCircuitV, 1e-9);
        Assert.Equal(fresh.CurrentAt(30), updated.CurrentAt(30), 1e-9);
        Assert.Equal(fresh.MaximumPower().PowerW, updated.MaximumPower().PowerW, 1e-6);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_voltage_that_is_no_number_is_refused(double voltageV)
    {
        Circuit one = Circuit(new Single("a"), _ => Panel());
        Assert.Throws<ArgumentOutOfRangeException>(() => one.CurrentAt(voltageV));
        Assert.Throws<ArgumentOutOfRangeException>(() => one.VoltageAt(voltageV));
    }
}

using Arraywright.Electrical;

namespace Arraywright.Tests.Electrical;

public sealed class DiodeCurveTests
{
    [Fact]
    public void Without_diode_current_the_curve_is_that_of_a_source_with_two_resistors()
    {
        // By hand: 1 A into 1 S beside 1 Ω in series; at 0.25 V the junction is at (0.25 + 1)/2 = 0.625 V, the current 0.375 A.
        DiodeParameters p = new(1, 1e-300, 1, 1, 1);
        Assert.Equal(0.375, DiodeCurve.CurrentA(p, 0.25), 1e-15);
        Assert.Equal(-0.5, DiodeCurve.SlopeSiemens(p, 0.25), 1e-15);
        Assert.Equal(1, DiodeCurve.OpenCircuitV(p), 1e-15);

        // Linear source of 1 V and 2 Ω inside: most power at half the voltage, 0.5 V and 0.25 A.
        (double voltageV, double currentA) = DiodeCurve.MaximumPower(p);
        Assert.Equal(0.5, voltageV, 1e-12);
        Assert.Equal(0.25, currentA, 1e-12);
    }

    [Fact]
    public void Without_shunt_the_open_circuit_voltage_is_the_logarithm_of_the_textbooks()
    {
        DiodeParameters p = new(8, 1e-9, 0.3, 0, 1.4);
        Assert.Equal(1.4 * Math.Log((8 / 1e-9) + 1), DiodeCurve.OpenCircuitV(p), 1e-13);
    }

    [Fact]
    public void In_the_dark_there_is_no_voltage_and_no_power_but_a_defined_current()
    {
        DiodeParameters p = new(0, 1e-9, 0.3, 1e-8, 1.4);
        Assert.Equal(0, DiodeCurve.OpenCircuitV(p));
        Assert.Equal((0, 0), DiodeCurve.MaximumPower(p));

        // By hand: at −10 V the diode lets its saturation current through, the shunt 10 V·1e-8 S.
        Assert.Equal(1e-9 + 1e-7, DiodeCurve.CurrentA(p, -10), 1e-12);
        Assert.True(DiodeCurve.CurrentA(p, 30) < 0);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1)]
    [InlineData(1e4)]
    public void Voltages_far_beyond_the_open_circuit_give_finite_currents(double voltageV)
    {
        double currentA = DiodeCurve.CurrentA(new DiodeParameters(8, 1e-9, 0.3, 0.005, 1.4), voltageV);
        Assert.True(double.IsFinite(currentA));

        // Beyond Voc the series resistance carries nearly all: I is no more than V/Rs backwards.
        Assert.InRange(currentA, -voltageV / 0.3, 8);
    }
}

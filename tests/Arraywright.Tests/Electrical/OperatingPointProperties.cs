using Arraywright.Electrical;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Electrical;

/// <summary>What an input takes, against a scan of a curve that was added up point by point. An early solver stayed on a small hill: 31 W where 123 W are right.</summary>
public sealed class OperatingPointProperties
{
    private static readonly Gen<(int Seed, int Panels)> Small = Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 5]);

    [Fact]
    public void The_highest_power_is_that_of_a_scan_of_the_curve() =>
        Small.Sample(
            array =>
            {
                CircuitTree tree = RandomArrays.Tree(new Random(array.Seed), array.Panels);
                double scannedW = SampledCurve.Of(tree).MostW(0, double.PositiveInfinity);
                Circuit circuit = new(tree);

                Assert.Equal(scannedW, circuit.MaximumPower().PowerW, 1e-4 * scannedW);
                Assert.Equal(scannedW, circuit.TakenBy(InputWindow.Open).PowerW, 1e-4 * scannedW);
            },
            iter: 400);

    [Fact]
    public void What_a_limited_input_takes_is_that_of_a_scan_of_the_curve() =>
        Gen.Select(Small, Gen.Double[0, 0.8], Gen.Double[0.2, 1.1], Gen.Double[0.3, 1.2]).Sample(
            (array, minShare, currentShare, powerShare) =>
            {
                CircuitTree tree = RandomArrays.Tree(new Random(array.Seed), array.Panels);
                SampledCurve curve = SampledCurve.Of(tree);
                Circuit circuit = new(tree);
                double unlimitedW = curve.MostW(0, double.PositiveInfinity);
                InputWindow window = new(minShare * circuit.OpenCircuitV, double.PositiveInfinity, 0, currentShare * circuit.ShortCircuitA, powerShare * unlimitedW);
                double scannedW = Math.Min(curve.MostW(window.MinV, window.MaxA), window.MaxW);

                Assert.Equal(scannedW, circuit.TakenBy(window).PowerW, 1e-4 * unlimitedW);
                Assert.Equal(scannedW, circuit.PowerTakenW(window), 1e-4 * unlimitedW);
            },
            iter: 400);
}

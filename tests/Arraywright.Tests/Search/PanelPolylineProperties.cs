using Arraywright.Electrical;
using Arraywright.Search;
using CsCheck;

namespace Arraywright.Tests.Search;

/// <summary>The lines that bound panels: nowhere below the curve, and no power that is not there.</summary>
public sealed class PanelPolylineProperties
{
    /// <summary>Sharp knees too: a shunt of 50 Ω to 1 MΩ, as fits to labels give.</summary>
    private static readonly Gen<PanelAtWork> Panels =
        from cells in Gen.Int[20, 72]
        from lightA in Gen.Double[0.2, 12]
        from seriesOhm in Gen.Double[0, 0.5]
        from shunt in Gen.Double[1.7, 6]
        from ideality in Gen.Double[0.9, 1.4]
        from shade in Gen.Double[0, 0.6]
        from diode in Gen.Bool
        let whole = new DiodeParameters(lightA, lightA * Math.Exp(-22 / ideality), seriesOhm * cells / 54, Math.Pow(10, -shunt), ideality * 0.0257 * cells)
        let half = whole.OneOf(2)
        select new PanelAtWork([half, half with { LightCurrentA = half.LightCurrentA * (1 - shade) }], diode ? BypassDiode.Schottky(lightA) : BypassDiode.None);

    /// <summary>Where the voltage drops away a line falls only after the next shared current, 0.8 % on, and it may come from one that does the same.</summary>
    private const double FewSteps = 0.02;

    /// <summary>Side by side once for each group's drop and once for the sum's: a dozen steps. Lifting both ends of a piece promised 70 %.</summary>
    private const double DozenSteps = 0.1;

    /// <summary>As the search spaces them: 0.8 % apart down to half the weakest light.</summary>
    private static double[] Currents(double topA)
    {
        double[] falling = [.. Enumerable.Range(0, 400).Select(i => topA / Math.Pow(1.008, i))];
        return [-topA, -0.5 * topA, -0.1 * topA, -0.01 * topA, 0, .. falling.Reverse()];
    }

    [Fact]
    public void A_line_lies_above_its_panel_and_promises_no_more_power() => Panels.Sample(
        panel =>
        {
            double[] currentsA = Currents(panel.Groups[0].LightCurrentA * 1.001);
            double[] lineV = new double[currentsA.Length];
            PanelPolyline.Above(panel, currentsA, 0, lineV);
            Agrees(new Circuit(CircuitTree.Of(new Wiring.Single("it"), _ => panel, WireResistances.None)), currentsA, lineV, FewSteps);
        },
        iter: 300);

    [Fact]
    public void A_line_of_two_side_by_side_does_the_same() => Gen.Select(Panels, Panels).Sample(
        (first, second) =>
        {
            double[] currentsA = Currents((first.Groups[0].LightCurrentA + second.Groups[0].LightCurrentA) * 1.001);
            double[][] linesV = [new double[currentsA.Length], new double[currentsA.Length], new double[currentsA.Length]];
            PanelPolyline.Above(first, currentsA, 0, linesV[0]);
            PanelPolyline.Above(second, currentsA, 0, linesV[1]);
            PanelPolyline.AboveParallel(linesV[0], linesV[1], currentsA, linesV[2]);
            Wiring both = Wiring.InParallel([new Wiring.Single("first"), new Wiring.Single("second")]);
            Agrees(new Circuit(CircuitTree.Of(both, name => name == "first" ? first : second, WireResistances.None)), currentsA, linesV[2], DozenSteps);
        },
        iter: 300);

    private static void Agrees(Circuit circuit, double[] currentsA, double[] lineV, double spare)
    {
        double promisedW = 0;
        for (int k = 1; k < currentsA.Length; k++)
        {
            promisedW = Math.Max(promisedW, currentsA[k] * lineV[k]);
            for (int part = 0; part <= 4; part++)
            {
                double share = part / 4.0;
                double amps = currentsA[k - 1] + (share * (currentsA[k] - currentsA[k - 1]));
                double volts = lineV[k - 1] + (share * (lineV[k] - lineV[k - 1]));
                if (volts > 0)
                {
                    Assert.InRange(circuit.CurrentAt(volts), double.NegativeInfinity, amps + (1e-7 * currentsA[^1]));
                }
            }
        }

        Assert.InRange(promisedW, 0, circuit.MaximumPower().PowerW * (1 + spare));
    }
}

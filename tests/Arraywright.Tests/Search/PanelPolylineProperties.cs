using Arraywright.Electrical;
using Arraywright.Search;
using CsCheck;

namespace Arraywright.Tests.Search;

/// <summary>The lines that bound panels: nowhere below the curve, and above it by no more than the shared currents are apart.</summary>
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

    /// <summary>A piece's both ends may be lifted by a thousandth of each group's voltage, the sum's once more.</summary>
    private const double Lifts = 4e-3;

    /// <summary>As the search spaces them for panels of that light.</summary>
    private static double[] Currents(params PanelAtWork[] panels)
    {
        double[] lightA = [.. panels.Select(panel => panel.Groups[0].LightCurrentA)];
        double topA = lightA.Sum() * 1.001;
        return CurveLines.Currents(topA, Math.Max(2, topA / Math.Max(lightA.Min() * 0.6, topA / 60)));
    }

    /// <summary>Where the voltage drops away within a piece, only its low end is lifted, at most as high as its start: the line falls one shared current too late.</summary>
    [Fact]
    public void A_line_lies_above_its_panel_and_lags_by_one_current_at_most() => Panels.Sample(
        panel =>
        {
            double[] currentsA = Currents(panel);
            double[] lineV = new double[currentsA.Length];
            PanelPolyline.Above(panel, currentsA, 0, lineV);
            Circuit circuit = Alone(panel);
            LiesAbove(circuit, currentsA, lineV);
            LagsBy(circuit, currentsA, lineV, _ => 0);
        },
        iter: 300);

    /// <summary>Side by side the lags add: what each line promises past its own panel at that voltage, and one shared current for the sum.</summary>
    [Fact]
    public void A_line_of_two_side_by_side_lags_by_both_and_one_current_at_most() => Gen.Select(Panels, Panels).Sample(
        (first, second) =>
        {
            double[] currentsA = Currents(first, second);
            double[][] linesV = [new double[currentsA.Length], new double[currentsA.Length], new double[currentsA.Length]];
            PanelPolyline.Above(first, currentsA, 0, linesV[0]);
            PanelPolyline.Above(second, currentsA, 0, linesV[1]);
            PanelPolyline.AboveParallel(linesV[0], linesV[1], currentsA, linesV[2]);
            Wiring both = Wiring.InParallel([new Wiring.Single("first"), new Wiring.Single("second")]);
            Circuit circuit = new(CircuitTree.Of(both, name => name == "first" ? first : second, WireResistances.None));
            Circuit[] alone = [Alone(first), Alone(second)];
            LiesAbove(circuit, currentsA, linesV[2]);
            LagsBy(circuit, currentsA, linesV[2], volts => alone.Sum(one => ToTheNextButOne(currentsA, one.CurrentAt(volts))));
        },
        iter: 300);

    private static Circuit Alone(PanelAtWork panel) => new(CircuitTree.Of(new Wiring.Single("it"), _ => panel, WireResistances.None));

    private static void LiesAbove(Circuit circuit, double[] currentsA, double[] lineV)
    {
        for (int k = 1; k < currentsA.Length; k++)
        {
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
    }

    /// <summary>At the voltage of each corner of positive power, less the small lifts, the curve has the current of the corner before, less what the lines beneath lag.</summary>
    private static void LagsBy(Circuit circuit, double[] currentsA, double[] lineV, Func<double, double> beneathA)
    {
        for (int k = 1; k < currentsA.Length; k++)
        {
            double volts = lineV[k] - (Lifts * lineV[k - 1]);
            if (volts > 0 && currentsA[k] > 0)
            {
                Assert.InRange(circuit.CurrentAt(volts), currentsA[k - 1] - beneathA(volts) - (1e-7 * currentsA[^1]), double.PositiveInfinity);
            }
        }
    }

    /// <summary>From a current to the second shared current above it, A: between two corners a line that lags by one may come from either.</summary>
    private static double ToTheNextButOne(double[] currentsA, double currentA)
    {
        int next = Array.FindIndex(currentsA, shared => shared >= currentA);
        return next < 0 ? 0 : currentsA[next == 0 ? 0 : Math.Min(next + 1, currentsA.Length - 1)] - currentA;
    }
}

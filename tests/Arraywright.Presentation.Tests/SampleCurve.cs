using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Presentation.Tests;

/// <summary>A curve made by hand: two knees as a shaded string has them, 13 A down to 6 A at 18 V, open circuit at 44 V.</summary>
internal static class SampleCurve
{
    public static CurveResult TwoHills { get; } = Make();

    private static CurveResult Make()
    {
        ImmutableArray<double> volts = [.. Enumerable.Range(0, 201).Select(i => 44 * i / 200.0)];
        ImmutableArray<double> amps = [.. volts.Select(Amps)];
        ImmutableArray<double> watts = [.. volts.Zip(amps, (v, i) => v * i)];
        CurvePoint[] hills = [Hill(volts, 0, 18), Hill(volts, 20, 44)];
        Assignment best = SampleResults.Go.Designs[0].Assignments[0];
        CurvePoint top = hills[1];
        return new CurveResult
        {
            Plan = SampleResults.Go.Plan,
            Input = SampleGear.StoreA,
            Assignment = best with { Operating = new OperatingPoint(top.VoltageV, top.CurrentA, top.PowerW, LimitedBy.None, top.PowerW, top.PowerW) },
            Circuit = CircuitTree.Of(SampleResults.Shed, _ => new PanelAtWork([new DiodeParameters(6.73, 1e-9, 0.3, 0.005, 0.97)], BypassDiode.None), new WireResistances(0, 0, 0)),
            VoltageV = volts,
            CurrentA = amps,
            PowerW = watts,
            MaximumPower = top,
            LocalMaxima = [.. hills],
            Assumed = SampleResults.Go.Assumed,
            Cautions = SampleResults.Go.Cautions,
        };
    }

    private static CurvePoint Hill(IEnumerable<double> volts, double from, double to)
    {
        double best = volts.Where(v => v >= from && v <= to).MaxBy(v => v * Amps(v));
        return new CurvePoint(best, Amps(best));
    }

    private static double Amps(double volts) => Math.Max(0, (6.6 * (1 - Math.Pow(volts / 44, 12))) + (6.6 * (1 - Math.Pow(Math.Min(volts, 20) / 20, 10))));
}

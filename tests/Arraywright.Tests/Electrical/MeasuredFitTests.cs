using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class MeasuredFitTests
{
    [Theory]
    [InlineData(CurrentError.Explicit)]
    [InlineData(CurrentError.TrueCurrent)]
    public void A_curve_without_noise_gives_back_its_parameters(CurrentError error)
    {
        DiodeParameters p = new(8.2271404, 4.372225e-10, 0.3351005, 1 / 160.50792, 1.3921337);
        MeasuredFit fit = MeasuredFit.Of(Sampled(p, 40), error);
        Assert.Equal(1, fit.Parameters.LightCurrentA / p.LightCurrentA, 1e-7);
        Assert.Equal(1, fit.Parameters.SaturationCurrentA / p.SaturationCurrentA, 1e-4);
        Assert.Equal(1, fit.Parameters.SeriesOhm / p.SeriesOhm, 1e-6);
        Assert.Equal(1, fit.Parameters.ShuntSiemens / p.ShuntSiemens, 1e-5);
        Assert.Equal(1, fit.Parameters.IdealityV / p.IdealityV, 1e-6);
    }

    [Fact]
    public void Any_plausible_panel_is_found_again_from_its_curve() =>
        Labels.Plausible.Sample(
            label =>
            {
                DiodeParameters p = LabelFit.To(label).Parameters;
                MeasuredFit fit = MeasuredFit.Of(Sampled(p, 40), CurrentError.TrueCurrent);
                Assert.True(fit.RmsA < 1e-6 * label.ShortCircuitA, $"{fit} for {p}");
            },
            iter: 200);

    [Fact]
    public void No_other_parameters_nearby_do_better()
    {
        // Rounded to the milliampere, as a meter does.
        DiodeParameters p = new(5.75, 2e-10, 0.24, 0.006, 0.84);
        CurvePoint[] points = [.. Sampled(p, 30).Select(point => point with { CurrentA = Math.Round(point.CurrentA, 3) })];
        MeasuredFit fit = MeasuredFit.Of(points, CurrentError.TrueCurrent);
        DiodeParameters best = fit.Parameters;
        Assert.InRange(fit.RmsA, 1e-4, 5e-4);
        Assert.Equal(fit.RmsA, RmsA(points, best), 1e-12);
        foreach (double change in new[] { 0.999, 1.001 })
        {
            Assert.True(RmsA(points, best with { LightCurrentA = best.LightCurrentA * change }) > fit.RmsA);
            Assert.True(RmsA(points, best with { SaturationCurrentA = best.SaturationCurrentA * change }) > fit.RmsA);
            Assert.True(RmsA(points, best with { SeriesOhm = best.SeriesOhm * change }) > fit.RmsA);
            Assert.True(RmsA(points, best with { ShuntSiemens = best.ShuntSiemens * change }) > fit.RmsA);
            Assert.True(RmsA(points, best with { IdealityV = best.IdealityV * change }) > fit.RmsA);
        }
    }

    [Fact]
    public void A_curve_that_rises_towards_short_circuit_the_wrong_way_is_held_at_no_shunt()
    {
        // A current that grows with voltage on the flat part would need a negative shunt.
        DiodeParameters p = new(5.75, 2e-10, 0.24, 1e-9, 0.84);
        CurvePoint[] points = [.. Sampled(p, 30).Select(point => point with { CurrentA = point.CurrentA + (0.002 * point.VoltageV) })];
        MeasuredFit fit = MeasuredFit.Of(points, CurrentError.TrueCurrent);
        Assert.Equal(0, fit.Parameters.ShuntSiemens);
        Assert.True(fit.Parameters.SeriesOhm >= 0 && fit.Parameters.SaturationCurrentA > 0);
        Assert.True(double.IsFinite(fit.RmsA));
    }

    [Fact]
    public void Too_few_or_senseless_points_are_the_callers_fault()
    {
        CurvePoint[] good = Sampled(new DiodeParameters(5.75, 2e-10, 0.24, 0.006, 0.84), 20);
        Assert.Throws<ArgumentException>(() => MeasuredFit.Of(good[..5], CurrentError.Explicit));
        Assert.Throws<ArgumentException>(() => MeasuredFit.Of([.. good, new CurvePoint(1, double.NaN)], CurrentError.Explicit));
        Assert.Throws<ArgumentException>(() => MeasuredFit.Of([.. good.Select(point => point with { CurrentA = -1 })], CurrentError.Explicit));
    }

    private static CurvePoint[] Sampled(DiodeParameters p, int count)
    {
        double openV = DiodeCurve.OpenCircuitV(p);
        return [.. Enumerable.Range(0, count).Select(i => 1.02 * openV * i / (count - 1)).Select(v => new CurvePoint(v, DiodeCurve.CurrentA(p, v)))];
    }

    private static double RmsA(CurvePoint[] points, DiodeParameters p) =>
        Math.Sqrt(points.Average(point => Math.Pow(DiodeCurve.CurrentA(p, point.VoltageV) - point.CurrentA, 2)));
}

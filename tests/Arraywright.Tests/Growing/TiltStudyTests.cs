using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Growing;
using Arraywright.Sky;
using static Arraywright.Tests.Growing.GrowingPlans;

namespace Arraywright.Tests.Growing;

public sealed class TiltStudyTests
{
    private static Plan At(double latitudeDeg, double longitudeDeg, DcInput? input = null) =>
        With(input ?? Open, new Place(latitudeDeg, longitudeDeg, 100, -14, null), Stock("a", 1));

    private static FacingRuns Runs(Plan plan, WeatherYear weather) =>
        new(new PlanPhysics(plan), [new Wiring.Single("a")], weather, EnergyOptions.Default, CancellationToken.None);

    private static TiltResult Tilt(Plan plan, DateOnly? date = null) =>
        TiltStudy.Run(plan, SyntheticYear.For(plan)!, date, EnergyOptions.Default, null, CancellationToken.None);

    /// <summary>Against every whole degree of tilt and every second of azimuth, over twelve days, with and without limits that clip.</summary>
    [Theory]
    [InlineData(54.6, 5000)]
    [InlineData(-33.9, 45)]
    public void The_search_finds_what_brute_force_finds(double latitudeDeg, double maxW)
    {
        Plan plan = At(latitudeDeg, 18, Open with { MaxPower = new Limit(maxW, Manual) });
        FacingRuns days = Runs(plan, SyntheticYear.For(plan)!).Only((day, _) => day % 30 == 7);
        Facing found = FacingSearch.Best(days, days)!;
        Facing best = new(0, 0, 0);
        for (int tilt = 0; tilt <= 90; tilt++)
        {
            // Brute force round the whole sky in steps of 6°, and to 2° where anything near the best is.
            for (int azimuth = 0; azimuth < 360; azimuth += 6)
            {
                best = Better(best, days.Of(tilt, azimuth));
            }
        }

        Facing middle = best;
        for (int tilt = (int)middle.TiltDeg - 8; tilt <= middle.TiltDeg + 8; tilt++)
        {
            for (int side = -12; side <= 12; side += 2)
            {
                best = Better(best, days.Of(tilt, (middle.AzimuthDeg + side + 360) % 360));
            }
        }

        Assert.Equal((best.TiltDeg, best.AzimuthDeg), (found.TiltDeg, found.AzimuthDeg));
    }

    private static Facing Better(Facing one, Facing other) => other.DeliveredKWh > one.DeliveredKWh ? other : one;

    /// <summary>
    /// Beam alone at one moment: panels face the sun, but for the light of the ground. By hand: cos(β − z) + 0.1·cos z·(1 − cos β) is largest where
    /// tan β = sin z / (cos z − 0.1·cos z), with z the sun's angle from the zenith and 20 % given back by the ground.
    /// </summary>
    [Theory]
    [InlineData(9)]
    [InlineData(12)]
    [InlineData(15)]
    public void In_beam_alone_panels_face_the_sun(int endsAt)
    {
        Plan plan = At(30, 0);
        DateTime ends = new(2025, 4, 10, endsAt, 0, 0);
        SunPosition sun = SunPosition.At(SunClock.JulianDay(ends.AddHours(-0.5)), Site.Of(30, 0, 100));
        double zenith = (90 - sun.ElevationDeg) * Math.PI / 180;
        WeatherYear moment = new(new WeatherPlace(30, 0, 100), [new WeatherStep(ends, 800 * Math.Cos(zenith), 800, 0, 15, 2)], 1, 0, "one hour of beam", []);
        FacingRuns runs = Runs(plan, moment);
        Facing found = FacingSearch.Best(runs, runs)!;
        double tilt = Math.Atan2(Math.Sin(zenith), 0.9 * Math.Cos(zenith)) * 180 / Math.PI;
        Assert.InRange(found.TiltDeg, tilt - 1, tilt + 1);
        Assert.InRange(found.AzimuthDeg, sun.AzimuthDeg - 2, sun.AzimuthDeg + 2);
    }

    /// <summary>Under a wholly clouded sky, equally bright all over, a tilted plane sees less of it (Liu and Jordan 1963): flat is best, and nearly flat no worse than its glass makes it.</summary>
    [Fact]
    public void Under_cloud_alone_flat_is_best()
    {
        Plan plan = At(54.6, -3.1);
        WeatherYear real = SyntheticYear.For(plan)!;
        WeatherYear clouded = new(real.Place, [.. real.Steps.Select(step => step with { BeamNormalWPerM2 = 0, DiffuseWPerM2 = step.GlobalWPerM2 * 0.3, GlobalWPerM2 = step.GlobalWPerM2 * 0.3 })], real.StepH, real.UtcOffsetH, "clouded", []);
        FacingRuns runs = Runs(plan, clouded).Only((day, _) => day % 15 == 0);
        Assert.InRange(FacingSearch.Best(runs, runs)!.TiltDeg, 0, 12);
        Assert.True(runs.Of(0, 0).DeliveredKWh > 0.995 * FacingSearch.Best(runs, runs)!.DeliveredKWh);
        Assert.True(runs.Of(0, 0).DeliveredKWh > 1.1 * runs.Of(60, 180).DeliveredKWh);
    }

    /// <summary>
    /// Best fixed tilt by latitude, the fit to a published energy model over the world: M. Z. Jacobson and V. Jadhav, Solar Energy 169 (2018) 55,
    /// north 1.3793 + φ·(1.2011 + φ·(−0.014404 + φ·0.000080509)), south −0.41657 + φ·(1.4216 + φ·(0.024051 + φ·0.00021828)) with φ and the result
    /// negative. Single places of that paper lie up to 6° off its fit.
    /// </summary>
    [Theory]
    [InlineData(54.6, -3.1)] // northern England
    [InlineData(42.1, 1.8)] // Catalonia
    [InlineData(33.4, -112.0)] // Arizona
    [InlineData(-33.9, 18.6)] // the Cape
    [InlineData(-43.5, 172.6)] // Canterbury plains
    public void The_best_tilt_is_that_of_the_latitude_and_faces_the_equator(double latitudeDeg, double longitudeDeg)
    {
        double fit = latitudeDeg >= 0
            ? 1.3793 + (latitudeDeg * (1.2011 + (latitudeDeg * (-0.014404 + (latitudeDeg * 0.000080509)))))
            : -(-0.41657 + (latitudeDeg * (1.4216 + (latitudeDeg * (0.024051 + (latitudeDeg * 0.00021828))))));
        Plan plan = At(latitudeDeg, longitudeDeg);
        FacingRuns year = Runs(plan, SyntheticYear.For(plan)!);
        FacingRuns days = year.Only((day, _) => day % 6 == 0);
        Assert.InRange(FacingSearch.BestTilt(year, days, latitudeDeg > 0 ? 180 : 0)!.TiltDeg, fit - 6, fit + 6);
        Facing best = FacingSearch.Best(days, days)!;
        double fromEquator = Math.Abs((((best.AzimuthDeg - (latitudeDeg > 0 ? 180 : 0)) + 540) % 360) - 180);
        Assert.InRange(fromEquator, 0, 20);
    }

    /// <summary>NASA Surface Meteorology and Solar Energy, 42.075° N 1.821° E, optimal angle facing the equator: year 37°, November to January 61°, 66°, 64°.</summary>
    [Fact]
    public void Year_and_winter_agree_with_a_published_table_of_one_place()
    {
        Plan plan = At(42.075, 1.821) with { Mount = new Mount(60, 180, MountKind.OpenRack) };
        TiltResult result = Tilt(plan, new DateOnly(2024, 6, 21));
        Assert.Equal(["the year", "November to January", "15 days about June 21"], result.Spans.Select(span => span.Span));
        Assert.InRange(result.Spans[0].BestTilt!.TiltDeg, 37 - 4, 37 + 4);
        Assert.InRange(result.Spans[1].BestTilt!.TiltDeg, 63.7 - 5, 63.7 + 5);

        // NASA, June: 4°; the fifteen days have weather of their own.
        Assert.InRange(result.Spans[2].BestTilt!.TiltDeg, 0, 14);
        Assert.All(result.Spans, span => Assert.True(span.Best!.DeliveredKWh >= span.BestTilt!.DeliveredKWh * (1 - 1e-6) && span.BestTilt.DeliveredKWh >= span.Own.DeliveredKWh));
        Assert.InRange(result.Spans[0].LossShare, 0.02, 0.10);

        (double least, double most) = result.NearlyBest!.Value;
        Assert.InRange(least, 20, result.Spans[0].Best!.TiltDeg);
        Assert.InRange(most, result.Spans[0].Best!.TiltDeg, 60);

        TwoTilts two = result.Two!;
        Assert.True(two.FlatDeg < result.Spans[0].Best!.TiltDeg && two.SteepDeg > result.Spans[0].Best!.TiltDeg);
        Assert.InRange(two.DeliveredKWh / result.Spans[0].Best!.DeliveredKWh, 1.02, 1.06);
        Assert.InRange(two.FlatFrom.DayOfYear, 60, 130);
        Assert.InRange(two.SteepFrom.DayOfYear, 220, 290);
        Assert.InRange(two.TwoWeeksOffShare, 0, 0.02);
    }

    [Fact]
    public void In_polar_night_no_tilt_is_best_and_the_year_still_has_one()
    {
        Plan plan = At(69.65, 18.96);
        FacingRuns year = Runs(plan, SyntheticYear.For(plan)!);
        FacingRuns night = year.Only((_, at) => at is { Month: 12, Day: > 5 });
        Assert.Null(FacingSearch.Best(night, night));
        Assert.Null(FacingSearch.BestTilt(night, night, 180));
        FacingRuns days = year.Only((day, _) => day % 12 == 0);
        Assert.InRange(FacingSearch.Best(days, days)!.TiltDeg, 30, 70);
    }

    [Fact]
    public void At_the_equator_nearly_flat_is_best_and_the_direction_hardly_matters()
    {
        Plan plan = At(0.5, 36.8);
        FacingRuns days = Runs(plan, SyntheticYear.For(plan)!).Only((day, _) => day % 5 == 0);
        Assert.InRange(FacingSearch.Best(days, days)!.TiltDeg, 0, 12);
        Assert.Equal(1, days.Of(10, 0).DeliveredKWh / days.Of(10, 180).DeliveredKWh, 0.03);
    }

    [Fact]
    public void Panels_with_a_facing_of_their_own_keep_it()
    {
        Plan plan = With(Open, Farm, Stock("a", 1), Stock("b", 1) with { Mount = new Mount(90, 90, MountKind.OpenRack) });
        Assert.True(TiltStudy.Turns(plan));
        Assert.False(TiltStudy.Turns(plan with { Panels = [plan.Panels[1]] }));
        FacingRuns fixedOnly = new(new PlanPhysics(plan), [new Wiring.Single("b")], SyntheticYear.For(plan)!, EnergyOptions.Default, CancellationToken.None);
        FacingRuns few = fixedOnly.Only((day, _) => day % 90 == 0);
        Assert.Null(FacingSearch.Best(few, few));
    }

    [Theory]
    [InlineData(new[] { 0.5, -1, 2, 3, -4, -1 }, 2, 2, 5)] // 2 + 3
    [InlineData(new[] { 1.0, -1, 2, 3, -4, 1 }, 5, 5, 6)] // 1 + 1 - 1 + 2 + 3
    [InlineData(new[] { 3.0, -1, -5, 1, 2 }, 3, 3, 6)] // round the turn: 1 + 2 + 3
    [InlineData(new[] { -1.0, -2 }, 0, 0, 0)]
    [InlineData(new[] { 1.0, 2 }, 0, 2, 3)]
    public void The_richest_stretch_of_a_circle_is_found(double[] gain, int from, int days, double sum) =>
        Assert.Equal((new TwoTiltSearch.Stretch(from, days), sum), TwoTiltSearch.Richest(gain));
}

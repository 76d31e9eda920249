using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Energy;

/// <summary>Laws that hold for any plan in any weather.</summary>
public sealed class EnergyRunProperties
{
    private static readonly EnergyOptions NoSpread = new() { SpreadWithinStep = false };

    [Fact]
    public void The_ladder_closes_and_no_stage_after_heat_gives_energy_back() =>
        Gen.Select(EnergyScene.Any, Gen.Bool).Sample((scene, spread) =>
        {
            EnergyResult result = Run(scene, new EnergyOptions { SpreadWithinStep = spread });
            foreach (EnergySpan span in result.Spans.Append(result.Total))
            {
                double labelKWh = span.LevelsKWh[(int)Stage.Label];
                Assert.All(span.LevelsKWh, level => Assert.True(double.IsFinite(level) && level >= -1e-9 * labelKWh));
                for (int stage = (int)Stage.Shade; stage < span.LevelsKWh.Length; stage++)
                {
                    Assert.True(span.LevelsKWh[stage] <= span.LevelsKWh[stage - 1] + (1e-9 * labelKWh), $"{(Stage)stage} of {span.Name}: {span.LevelsKWh[stage - 1]} to {span.LevelsKWh[stage]}");
                }
            }

            double label = result.Losses[0].KWh;
            double lost = result.Losses.Where(step => step.Stage is not ("label" or "into the unit" or "used or stored")).Sum(step => step.KWh);
            Assert.Equal(result.Losses[^1].KWh, label - lost, 1e-9 * label);
            for (int stage = 0; stage < result.Total.LevelsKWh.Length; stage++)
            {
                Assert.Equal(result.Total.LevelsKWh[stage], result.Spans.Sum(span => span.LevelsKWh[stage]), 1e-9 * label);
            }
        }, iter: 150);

    [Fact]
    public void A_tighter_limit_never_gives_more_energy() =>
        Gen.Select(EnergyScene.Any, Gen.Double[0.05, 1], Gen.Int[0, 4]).Sample((scene, share, which) =>
        {
            // Where a limit would lift the input above its window, nothing is counted; a lower window may then end where the power is still within the limit.
            DcInput input = which switch
            {
                1 => scene.Input with { TrackingMaxV = null },
                2 => scene.Input with { MaxPower = null, MaxCurrent = null, RatedCurrent = null },
                _ => scene.Input,
            };
            double freeW = scene.Plan.Panels.Sum(stock => stock.Count * stock.Panel.PowerW.Value);
            double freeA = scene.Plan.Panels.Sum(stock => stock.Count * stock.Panel.ShortCircuitA);
            double freeV = scene.Plan.Panels.Sum(stock => stock.Count * stock.Panel.OpenCircuitV);
            DcInput tight = which switch
            {
                0 => input with { MaxPower = new Limit(share * (input.MaxPower?.Figure ?? freeW), Evidence.Nothing) },
                1 => input with { RatedCurrent = new Limit(share * (input.DrawLimitA ?? freeA), Evidence.Nothing) },
                2 => input with { TrackingMaxV = (input.TrackingMinV ?? 0) + (share * ((input.TrackingMaxV ?? input.MaxVoltageV) - (input.TrackingMinV ?? 0))) },
                3 => input with { TrackingMinV = (input.TrackingMinV ?? 0) + ((1 - share) * ((input.TrackingMaxV ?? freeV) - (input.TrackingMinV ?? 0))) },
                _ => input with { StartVoltageV = (input.StartVoltageV ?? 0) + (share * freeV) },
            };
            EnergySpan loose = Run(scene.With(input), NoSpread).Total;
            Assert.True(Run(scene.With(tight), NoSpread).Total.DeliveredKWh <= loose.DeliveredKWh + (1e-9 * loose.LevelsKWh[(int)Stage.Label]));
        }, iter: 150);

    [Fact]
    public void What_comes_in_is_stored_served_or_turned_away() =>
        Gen.Select(EnergyScene.Any, Gen.Bool).Sample((scene, spread) =>
        {
            Battery battery = scene.Input.Battery!;
            EnergyResult result = Run(scene, new EnergyOptions { SpreadWithinStep = spread, KeepMoments = true });
            double inKWh = result.Total.LevelsKWh[(int)Stage.Conversion];
            double storedKWh = battery.CapacityWh * (result.Moments[^1].StateOfCharge!.Value - battery.FromFraction) / 1000;
            BatteryReport report = result.Battery!;
            Assert.Equal(inKWh, storedKWh + report.ServedKWh + report.TurnedAwayKWh, 1e-9 * (inKWh + battery.CapacityWh));
            Assert.InRange(report.TurnedAwayKWh, -1e-12, inKWh);
            Assert.InRange(report.ServedKWh, 0, report.LoadKWh * (1 + 1e-12));
            Assert.Equal(battery.LoadW * scene.Series.StepH * scene.Series.Count / 1000, report.LoadKWh, 1e-9 * (1 + report.LoadKWh));
        }, iter: 150);

    [Fact]
    public void A_battery_is_never_drawn_below_its_reserve_nor_charged_above_its_end() =>
        EnergyScene.Any.Sample(scene =>
        {
            Battery battery = scene.Input.Battery!;
            EnergyResult result = Run(scene, new EnergyOptions { KeepMoments = true });
            double low = Math.Min(battery.FromFraction, battery.ReserveFraction) - 1e-12;
            double high = Math.Max(battery.FromFraction, battery.ToFraction) + 1e-12;
            Assert.All(result.Moments, moment => Assert.InRange(moment.StateOfCharge!.Value, low, high));
            Assert.Equal(Math.Min(battery.FromFraction, result.Moments.Min(moment => moment.StateOfCharge!.Value)), result.Battery!.LowestStateOfCharge, 1e-12);
        }, iter: 150);

    [Fact]
    public void Minutes_within_a_step_count_only_where_they_are_asked_for_and_a_limit_holds() =>
        EnergyScene.Any.Sample(scene =>
        {
            Assert.Equal(0, Run(scene, NoSpread).WithinStepKWh);
            Assert.Equal(0, Run(scene.With(scene.Input with { RatedCurrent = null, MaxPower = null }), EnergyOptions.Default).WithinStepKWh);
            EnergyResult spread = Run(scene, EnergyOptions.Default);
            Assert.Equal(Run(scene, NoSpread).Total.DeliveredKWh - spread.Total.DeliveredKWh, spread.WithinStepKWh, 1e-9 * spread.Total.LevelsKWh[(int)Stage.Label]);
        }, iter: 150);

    /// <summary>The light's centre of a year in a plane facing the equator is solar noon: the clock's zone may be half an hour off it, the equation of time cancels but for its winter.</summary>
    [Fact]
    public void Years_have_their_noon_at_noon_and_their_nights_dark_anywhere() =>
        Gen.Select(Gen.Double[-56, 75], Gen.Double[-180, 180]).Sample((latitude, longitude) =>
        {
            Plan plan = At(latitude, longitude);
            if (SyntheticYear.For(plan) is not { } weather)
            {
                return;
            }

            SunSeries series = SunOnPanels.Of(plan, weather, SunOptions.Default);
            StockSun sun = series.Stocks[0];
            double sum = 0;
            double moment = 0;
            for (int i = 0; i < series.Count; i++)
            {
                sum += sun.PlaneWPerM2[i];
                moment += sun.PlaneWPerM2[i] * (series.EndHour[i] - 0.5);
            }

            double noonHour = 12 + weather.UtcOffsetH - (longitude / 15);
            Assert.InRange((moment / sum) - noonHour, -0.4, 0.4);
            Assert.InRange(sum / 1000, 500, 2700);
            EnergyResult year = EnergyRun.Of(new PlanPhysics(plan), [plan.Inputs[0].StatedWiring], series, EnergyOptions.Default);
            Assert.All(year.Total.LevelsKWh, level => Assert.True(double.IsFinite(level) && level >= 0));
            int winter = latitude > 0 ? 11 : 5;
            Assert.True(Math.Abs(latitude) < 68 || year.Spans[winter].DeliveredKWh < 0.02 * year.Total.DeliveredKWh);
        }, iter: 12);

    [Fact]
    public void Both_sides_of_the_date_line_have_the_same_year()
    {
        double Year(double longitude)
        {
            Plan plan = At(67.2, longitude);
            return EnergyRun.Of(new PlanPhysics(plan), [plan.Inputs[0].StatedWiring], SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Default), EnergyOptions.Default).Total.DeliveredKWh;
        }

        Assert.Equal(1, Year(-179.99) / Year(179.99), 0.01);
    }

    private static EnergyResult Run(EnergyScene scene, EnergyOptions options) =>
        EnergyRun.Of(new PlanPhysics(scene.Plan), [scene.Plan.Inputs[0].StatedWiring], scene.Series, options);

    private static Plan At(double latitude, double longitude) => new()
    {
        Name = "anywhere",
        Goal = Goal.Year,
        Place = new Place(latitude, longitude, 100, null, null),
        Mount = new Mount(Math.Min(60, Math.Abs(latitude)), latitude > 0 ? 180 : 0, MountKind.OpenRack),
        Panels = [new PanelStock(LimitsScene.Shed, 1, Shade.None, null)],
        Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 60 }, LimitsScene.One(LimitsScene.Shed.Name))],
        Units = [],
        Cable = new Cable(Sourced.Given(5.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
        Assumed = [],
        Doubts = [],
    };
}

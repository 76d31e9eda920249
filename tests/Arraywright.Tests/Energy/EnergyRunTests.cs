using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Tests.Energy;

public sealed class EnergyRunTests
{
    private static readonly ImmutableArray<Wiring?> Pairs = [TryRead("a + a | b + b")];

    private static Wiring TryRead(string text) => WiringText.TryParse(text, out Wiring? wiring, out _) ? wiring : throw new FormatException(text);

    private static Plan Farm(DcInput? input = null, Place? place = null, params ChargingUnit[] units)
    {
        PanelStock Stock(string name, double isc) => new(
            PanelReader.Read(new PanelLabel { Name = name, PowerW = 18.9 * isc * 0.945, OpenCircuitV = 22.9, ShortCircuitA = isc, MaximumPowerV = 18.9, MaximumPowerA = isc * 0.945, Cells = 36 }).Panel!,
            2,
            Shade.None,
            null);
        return new Plan
        {
            Name = "farm",
            Goal = Goal.Year,
            Place = place ?? new Place(54.6, -3.1, 200, null, null),
            Mount = new Mount(40, 180, MountKind.OpenRack),
            Panels = [Stock("a", 6.72), Stock("b", 5.1)],
            Inputs = [new PlannedInput(input ?? new DcInput { Name = "store", MaxVoltageV = 60 }, null)],
            Units = [.. units],
            Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
            Assumed = [],
            Doubts = [],
        };
    }

    private static EnergyResult Run(Plan plan, ImmutableArray<Wiring?>? wirings = null, EnergyOptions? options = null) =>
        EnergyRun.Of(new PlanPhysics(plan), wirings ?? Pairs, SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Default), options ?? EnergyOptions.Default);

    [Fact]
    public void The_ladder_closes_and_months_add_up()
    {
        EnergyResult year = Run(Farm(new DcInput { Name = "store", MaxVoltageV = 60, RatedCurrent = new Limit(8, Evidence.Nothing), MaxPower = new Limit(260, Evidence.Nothing), Battery = new Battery(900, 0.5, 1, 30) }));
        double label = year.Losses[0].KWh;
        double losses = year.Losses.Where(step => step.Stage is not ("label" or "into the unit" or "used or stored")).Sum(step => step.KWh);
        Assert.Equal(year.Losses[^1].KWh, label - losses, 1e-9 * label);
        Assert.Equal(year.Total.DeliveredKWh, year.Spans.Sum(month => month.DeliveredKWh), 1e-9 * label);
        Assert.True(year.Total.ClippedKWh > 1);
        Assert.True(year.HoursLimited.Power > 0);
        Assert.Equal(12, year.Spans.Length);
    }

    /// <summary>Two routes: the year's sum against a new circuit built and solved for each hour.</summary>
    [Fact]
    public void Every_hour_is_what_a_circuit_of_its_own_gives()
    {
        Plan plan = Farm(new DcInput { Name = "store", MaxVoltageV = 60, RatedCurrent = new Limit(9, Evidence.Nothing) });
        PlanPhysics physics = new(plan);
        SunSeries series = SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Default);
        EnergyResult year = EnergyRun.Of(physics, Pairs, series, new EnergyOptions { SpreadWithinStep = false, KeepMoments = true });
        for (int hour = 5; hour < 8760; hour += 41)
        {
            ImmutableArray<Conditions> seen = [.. series.Stocks.Select(sun => new Conditions(sun.UsefulWPerM2[hour], sun.CellC[hour]))];
            double takenW = seen[0].IrradianceWPerM2 < 1 ? 0 : new Circuit(physics.Tree(Pairs[0]!, seen)).PowerTakenW(PlanPhysics.Window(plan.Inputs[0].Input));
            Assert.Equal(takenW, year.Moments[hour].TakenW, 1e-6 * (1 + takenW));
        }
    }

    /// <summary>Two routes to why an input takes nothing: the run's own, and the operating point of a circuit built for that hour. What it takes nothing of is charged to the voltage window.</summary>
    [Theory]
    [InlineData(0, 60, 41, 60)] // starts on bright, cold hours alone
    [InlineData(0, 20, 0, 1)] // its current limit would hold it above its window
    [InlineData(40, 60, 0, 60)]
    public void Hours_off_are_told_from_hours_above_the_window(double minV, double maxV, double startV, double maxA)
    {
        DcInput input = new() { Name = "store", MaxVoltageV = 60, TrackingMinV = minV, TrackingMaxV = maxV, StartVoltageV = startV, RatedCurrent = new Limit(maxA, Evidence.Nothing) };
        Plan plan = Farm(input);
        PlanPhysics physics = new(plan);
        SunSeries series = SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Default);
        EnergyResult year = EnergyRun.Of(physics, Pairs, series, new EnergyOptions { SpreadWithinStep = false, KeepMoments = true });
        int[] lit = [.. Enumerable.Range(0, series.Count).Where(hour => series.Stocks.Any(sun => sun.UsefulWPerM2[hour] >= 1))];
        int off = 0;
        int above = 0;
        foreach (int hour in lit)
        {
            ImmutableArray<Conditions> seen = [.. series.Stocks.Select(sun => new Conditions(sun.UsefulWPerM2[hour], sun.CellC[hour]))];
            LimitedBy held = new Circuit(physics.Tree(Pairs[0]!, seen)).TakenBy(PlanPhysics.Window(input)).LimitedBy;
            (off, above) = (off + (held == LimitedBy.Off ? 1 : 0), above + (held == LimitedBy.AboveWindow ? 1 : 0));
            if (held is LimitedBy.Off or LimitedBy.AboveWindow)
            {
                Assert.Equal(held, year.Moments[hour].LimitedBy);
                Assert.Equal(0, year.Moments[hour].TakenW);
            }
        }

        Assert.True(off + above > 10);
        Assert.Equal(off, year.HoursLimited.Off);
        Assert.True(year.HoursLimited.Voltage >= above);
        double offKWh = lit.Where(hour => year.Moments[hour].LimitedBy == LimitedBy.Off).Sum(hour => year.Moments[hour].UnlimitedW) / 1000;
        Assert.True(year.Losses.Single(step => step.Stage == "voltage window and start").KWh >= offKWh - 1e-9);
    }

    [Fact]
    public void The_minutes_within_an_hour_only_take_away_where_a_limit_cuts()
    {
        DcInput tight = new() { Name = "store", MaxVoltageV = 60, MaxPower = new Limit(150, Evidence.Nothing) };
        EnergyResult spread = Run(Farm(tight));
        EnergyResult plain = Run(Farm(tight), options: new EnergyOptions { SpreadWithinStep = false });
        Assert.True(spread.WithinStepKWh > 0);
        Assert.Equal(plain.Total.DeliveredKWh - spread.Total.DeliveredKWh, spread.WithinStepKWh, 1e-9);
        Assert.Equal(0, Run(Farm()).WithinStepKWh);
    }

    [Fact]
    public void A_unit_takes_no_more_than_it_may_from_all_its_inputs()
    {
        DcInput left = new() { Name = "left", MaxVoltageV = 60, Unit = "box" };
        Plan plan = Farm(left, null, new ChargingUnit("box", new Limit(150, Evidence.Nothing), null)) with
        {
            Inputs = [new PlannedInput(left, null), new PlannedInput(left with { Name = "right" }, null)],
        };
        EnergyResult year = Run(plan, [TryRead("a + a"), TryRead("b + b")], new EnergyOptions { KeepMoments = true });
        Assert.True(year.Moments.Max(moment => moment.TakenW) <= 150 + 1e-9);
        Assert.True(year.Moments.Max(moment => moment.UnlimitedW) > 200);
        Assert.True(year.HoursLimited.Power > 100);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bits()
    {
        Assert.Equal(Run(Farm()).Total.LevelsKWh, Run(Farm()).Total.LevelsKWh);
    }

    /// <summary>Sane years anywhere: the sum over the year between what the darkest and the sunniest inhabited places see (700 to 2600 kWh/m² in a good plane; common knowledge), the sun in the right half of the year.</summary>
    [Theory]
    [InlineData(69.65, 18.96, 180, 6, 12)] // polar night
    [InlineData(-0.2, -78.5, 0, 0, 0)] // equator
    [InlineData(-33.9, 151.2, 0, 1, 6)] // southern summer
    [InlineData(-17.8, 178.0, 0, 1, 6)] // by the date line
    [InlineData(64.1, -21.9, 180, 6, 12)]
    public void Years_are_sane_everywhere(double latitude, double longitude, double azimuth, int bestMonth, int worstMonth)
    {
        Plan plan = Farm(place: new Place(latitude, longitude, 50, null, null)) with { Mount = new Mount(Math.Min(40, Math.Abs(latitude)), azimuth, MountKind.OpenRack) };
        EnergyResult year = Run(plan);
        Assert.InRange(year.Total.PlaneKWhPerM2, 600, 2600);
        Assert.All(year.Total.LevelsKWh, level => Assert.True(double.IsFinite(level) && level >= 0));
        if (bestMonth > 0)
        {
            Assert.True(year.Spans[bestMonth - 1].DeliveredKWh > year.Spans[worstMonth - 1].DeliveredKWh);
        }

        if (latitude > 69)
        {
            Assert.Equal(0, year.Spans[11].DeliveredKWh, 0.05);
        }
    }
}
